package leafturn.web;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;
import leafturn.records.Sha256;
import org.jspecify.annotations.Nullable;

/**
 * The files the pages need, held in memory. Their address contains a hash of them all, so a browser
 * may keep each for good: a changed file has another address.
 */
final class Assets {
  private static final List<String> OTHERS =
      List.of(
          "again.js",
          "atkinson-hyperlegible-next-OFL.txt",
          "atkinson-hyperlegible-next.woff2",
          "faults.js",
          "findings.js",
          "hours.js",
          "kept.js",
          "leaf-192.png",
          "leaf-512.png",
          "leaf-maskable-512.png",
          "leaf.svg",
          "literata-OFL.txt",
          "literata.woff2",
          "log.js",
          "outline-draft.js",
          "outline-drawing.js",
          "outline-ground.js",
          "outline-shape.js",
          "outline.js",
          "phone.js",
          "picture.js",
          "plan.js",
          "queue.js",
          "readout.js",
          "season.js",
          "send.js",
          "unsent.js",
          "words.js",
          "worker.js");

  private static final Map<String, String> TYPES =
      Map.of(
          "css", "text/css; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "png", "image/png",
          "svg", "image/svg+xml",
          "txt", "text/plain; charset=utf-8",
          "woff2", "font/woff2");

  private static final String HTMX = "htmx.min.js";
  private static final String HTMX_JAR = "/META-INF/maven/org.webjars.npm/htmx.org/pom.properties";
  private static final String HTMX_FILE =
      "/META-INF/resources/webjars/htmx.org/%s/dist/htmx.min.js";

  private final Map<String, Asset> assets = new LinkedHashMap<>();
  private final String version;

  Assets() {
    MessageDigest all = Sha256.begin();
    Stream.concat(Styles.IN_ORDER.stream(), OTHERS.stream())
        .forEach(name -> add(name, read("assets/" + name), all));
    add(HTMX, read(HTMX_FILE.formatted(htmxVersion())), all);
    version = HexFormat.of().formatHex(all.digest(), 0, 6);
  }

  /** The address of a file, for templates. */
  String address(String name) {
    if (!assets.containsKey(name)) {
      throw new IllegalArgumentException("no asset is named " + name);
    }
    return "/assets/" + version + "/" + name;
  }

  /** A file by the two parts of its address; empty for a file or version that is not there. */
  Optional<Asset> find(String askedVersion, String name) {
    return version.equals(askedVersion) ? Optional.ofNullable(assets.get(name)) : Optional.empty();
  }

  /** A short hash of some content, for an entity tag. */
  static String tagOf(byte[] content) {
    return "\"" + HexFormat.of().formatHex(Sha256.begin().digest(content), 0, 12) + "\"";
  }

  private static String type(String name) {
    return TYPES.getOrDefault(name.substring(name.lastIndexOf('.') + 1), "");
  }

  private void add(String name, byte[] content, MessageDigest all) {
    all.update(content);
    assets.put(name, new Asset(type(name), content));
  }

  private static String htmxVersion() {
    Properties about = new Properties();
    try {
      about.load(new ByteArrayInputStream(read(HTMX_JAR)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return about.getProperty("version");
  }

  private static byte[] read(String path) {
    try (@Nullable InputStream stream = Assets.class.getResourceAsStream(path)) {
      if (stream == null) {
        throw new IllegalStateException("the file " + path + " is missing from the program");
      }
      return stream.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One file and its media type. */
  static final class Asset {
    final String type;
    final byte[] content;
    final String tag;

    Asset(String type, byte[] content) {
      this.type = type;
      this.content = content;
      this.tag = tagOf(content);
    }
  }
}
