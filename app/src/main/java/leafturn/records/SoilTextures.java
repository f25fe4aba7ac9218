package leafturn.records;

import java.util.List;

/** The soil textures a lawn description may name. */
public final class SoilTextures {
  private SoilTextures() {}

  /** Their names, from coarse to fine. */
  public static List<String> names() {
    return SoilTexture.all().stream().map(SoilTexture::name).toList();
  }
}
