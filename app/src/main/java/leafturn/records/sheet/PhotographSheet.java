package leafturn.records.sheet;

import java.time.LocalDate;
import java.util.regex.Pattern;
import leafturn.records.Choice;
import leafturn.records.Faults;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * A photograph's description; its bytes are kept apart. It belongs to a property or to a lawn.
 *
 * @param property id of the property, or null
 * @param lawn id of the lawn, or null
 * @param day the day it was taken
 * @param caption what it shows, or null
 * @param mediaType what its bytes are
 * @param sizeBytes number of its bytes, 1 to 20,000,000
 * @param sha256 SHA-256 of its bytes, 64 hexadecimal digits in lower case
 */
public record PhotographSheet(
    @Nullable String property,
    @Nullable String lawn,
    LocalDate day,
    @Nullable String caption,
    MediaType mediaType,
    int sizeBytes,
    String sha256)
    implements Content {
  /** Most bytes of one photograph. */
  public static final int MOST_BYTES = 20_000_000;

  private static final Pattern SHA_256 = Pattern.compile("[0-9a-f]{64}");

  /** Media types of photographs (IANA). */
  public enum MediaType implements Choice.Worded {
    JPEG("image/jpeg"),
    PNG("image/png"),
    WEBP("image/webp");

    private final String word;

    MediaType(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  static PhotographSheet read(JsonObject json) {
    Owner owner = Owner.read(json);
    LocalDate day = json.requiredDate("day");
    String caption = json.text("caption", Limits.SENTENCE);
    MediaType type = Choice.required(json, "mediaType", MediaType.class);
    Integer size = json.wholeNumber("sizeBytes", 1, MOST_BYTES, "bytes");
    if (!json.has("sizeBytes")) {
      json.missing("sizeBytes", "the number of its bytes");
    }
    String sha256 = json.requiredText("sha256", 64, "the SHA-256 of its bytes");
    if (!sha256.isEmpty() && !SHA_256.matcher(sha256).matches()) {
      json.fault(
          "sha256",
          Faults.quoted(sha256) + " is no SHA-256; give 64 hexadecimal digits in lower case.");
    }
    json.end();
    return new PhotographSheet(
        owner.property(), owner.lawn(), day, caption, type, size == null ? 0 : size, sha256);
  }
}
