package leafturn.records.archive;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.Sha256;
import leafturn.records.SourceText;
import org.jspecify.annotations.Nullable;

/**
 * An archive that lies open for reading. Nothing is ever unpacked to disk; a member is read only
 * when its name is one of ours, and only as far as its stated size.
 */
final class ZipReading implements Closeable {
  private static final int MOST_MEMBERS = 200_000;
  private static final long MOST_BYTES = 4_000_000_000L;
  private static final int MOST_MANIFEST_BYTES = 50_000_000;
  private static final int MOST_LINE_BYTES = 50_000_000;
  private static final int BLOCK = 65_536;

  private final String name;
  private final ZipFile zip;
  private final Map<String, ZipEntry> entries;
  private final Manifest manifest;

  private ZipReading(String name, ZipFile zip) {
    this.name = name;
    this.zip = zip;
    this.entries = entries(name, zip);
    if (!entries.containsKey(Members.MANIFEST)) {
      throw new InputException(
          "%s: this is no archive of a book: it holds no %s.".formatted(name, Members.MANIFEST));
    }
    this.manifest =
        Manifest.read(
            SourceText.of(
                place(Members.MANIFEST),
                bytes(Members.MANIFEST, MOST_MANIFEST_BYTES),
                MOST_MANIFEST_BYTES));
  }

  /**
   * Opens an archive.
   *
   * @throws InputException when it is none, is cut short, or holds what no archive holds
   */
  static ZipReading open(Path file) {
    String name = file.toString();
    if (!Files.isRegularFile(file)) {
      throw new InputException(name + ": there is no such file; check the path.");
    }
    ZipFile zip;
    try {
      zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8);
    } catch (IOException | IllegalArgumentException e) {
      throw new InputException(
          name + ": it cannot be read as a zip file; it is another kind of file or was cut short.");
    }
    try {
      return new ZipReading(name, zip);
    } catch (InputException e) {
      close(zip);
      throw e;
    }
  }

  private static void close(ZipFile zip) {
    try {
      zip.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, ZipEntry> entries(String name, ZipFile zip) {
    Faults faults = new Faults(name);
    if (zip.size() > MOST_MEMBERS) {
      throw new InputException(
          "%s: it holds %d files; an archive has up to %d."
              .formatted(name, zip.size(), MOST_MEMBERS));
    }
    Map<String, ZipEntry> entries = new LinkedHashMap<>();
    zip.stream()
        .forEach(
            entry -> {
              if (!Members.mayBe(entry.getName())) {
                faults.add(Faults.quoted(entry.getName()) + " does not belong in an archive.");
              } else if (entries.putIfAbsent(entry.getName(), entry) != null) {
                faults.add(entry.getName() + " stands in the archive twice.");
              }
            });
    faults.throwIfAny();
    return entries;
  }

  /** The name of the archive and of a member, for messages. */
  String place(String member) {
    return name + ", " + member;
  }

  /** The archive's name as the user gave it. */
  String name() {
    return name;
  }

  Manifest manifest() {
    return manifest;
  }

  /**
   * Reads every member once and compares it with what the manifest says of it.
   *
   * @throws InputException with every difference
   */
  void checkWhole() {
    Faults faults = new Faults(name);
    long total = 0;
    Map<String, ArchiveMember> stated = new LinkedHashMap<>();
    for (ArchiveMember member : manifest.members()) {
      total += member.bytes();
      if (stated.put(member.name(), member) != null) {
        faults.add(Members.MANIFEST + " names " + Faults.quoted(member.name()) + " twice.");
      } else if (!entries.containsKey(member.name())) {
        faults.add(Faults.quoted(member.name()) + " is missing from the archive.");
      }
    }
    for (String entry : entries.keySet()) {
      if (!entry.equals(Members.MANIFEST) && !stated.containsKey(entry)) {
        faults.add("%s is not named in %s.".formatted(entry, Members.MANIFEST));
      }
    }
    if (total > MOST_BYTES) {
      faults.add("unpacked it is larger than 4 GB, the most that is read.");
    }
    faults.throwIfAny();
    stated.values().forEach(member -> checkMember(member, faults));
    faults.throwIfAny();
  }

  private void checkMember(ArchiveMember member, Faults faults) {
    MessageDigest digest = Sha256.begin();
    long bytes = 0;
    byte[] block = new byte[BLOCK];
    try (InputStream in = open(member.name())) {
      for (int read = in.read(block); read > 0 && bytes <= member.bytes(); read = in.read(block)) {
        digest.update(block, 0, read);
        bytes += read;
      }
    } catch (IOException e) {
      faults.add(member.name() + " cannot be unpacked; the archive is damaged, take another.");
      return;
    }
    boolean same =
        bytes == member.bytes()
            && HexFormat.of().formatHex(digest.digest()).equals(member.sha256());
    if (!same) {
      faults.add(
          "%s is not what %s says of it; the archive is damaged or was changed, take another."
              .formatted(member.name(), Members.MANIFEST));
    }
  }

  /** The bytes of a member that is not larger than a limit. */
  byte[] bytes(String member, int limitBytes) {
    try (InputStream in = open(member)) {
      byte[] bytes = in.readNBytes(limitBytes + 1);
      if (bytes.length > limitBytes) {
        throw new InputException(
            "%s: it is larger than %d MB.".formatted(place(member), limitBytes / 1_000_000));
      }
      return bytes;
    } catch (IOException e) {
      throw unreadable(member);
    }
  }

  /** The text of a member that is not larger than a limit. */
  SourceText text(String member, int limitBytes) {
    return SourceText.of(place(member), bytes(member, limitBytes), limitBytes);
  }

  /** The lines of a member, one at a time. */
  Lines lines(String member) {
    try {
      return new Lines(member, new BufferedInputStream(open(member), BLOCK));
    } catch (IOException e) {
      throw unreadable(member);
    }
  }

  private InputStream open(String member) throws IOException {
    ZipEntry entry = entries.get(member);
    InputStream in = entry == null ? null : zip.getInputStream(entry);
    if (in == null) {
      throw new InputException("%s: there is no such member.".formatted(place(member)));
    }
    return in;
  }

  private InputException unreadable(String member) {
    return new InputException(
        place(member) + ": it cannot be unpacked; the archive is damaged, take another.");
  }

  @Override
  public void close() {
    close(zip);
  }

  /** Reads a member line by line, holding one line at a time. */
  final class Lines implements Closeable {
    private final String member;
    private final InputStream in;
    private long number;

    private Lines(String member, InputStream in) {
      this.member = member;
      this.in = in;
    }

    /** The next line that is not blank, or null after the last. */
    @Nullable String next() {
      try {
        String line = read();
        while (line != null && line.isBlank()) {
          line = read();
        }
        return line;
      } catch (IOException e) {
        throw unreadable(member);
      }
    }

    private @Nullable String read() throws IOException {
      ByteArrayOutputStream line = new ByteArrayOutputStream();
      int value = in.read();
      if (value < 0) {
        return null;
      }
      number++;
      while (value >= 0 && value != '\n') {
        line.write(value);
        if (line.size() > MOST_LINE_BYTES) {
          throw new InputException(
              "%s, line %d: the line is longer than 50 MB.".formatted(place(member), number));
        }
        value = in.read();
      }
      return SourceText.of(
              "%s, line %d".formatted(place(member), number), line.toByteArray(), MOST_LINE_BYTES)
          .text();
    }

    /** Number of the line read last, from 1. */
    long number() {
      return number;
    }

    /** The member's name. */
    String member() {
      return member;
    }

    @Override
    public void close() {
      try {
        in.close();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
