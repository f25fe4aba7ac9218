package leafturn.records.archive;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.DigestOutputStream;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import leafturn.records.Sha256;

/** Writes the files of an archive one after the other; equal files give equal bytes. */
final class ZipWriting {
  /** The first moment that zip can tell: when a member was made is no part of the book. */
  private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private final ZipOutputStream zip;
  private final List<ArchiveMember> members = new ArrayList<>();

  ZipWriting(OutputStream out) {
    this.zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
  }

  /** Writes the bytes of a member. */
  @FunctionalInterface
  interface Body {
    /** Writes them all and tells how many things they hold. */
    long writeTo(OutputStream out) throws IOException;
  }

  /** Writes a member that an import reads. */
  void member(String name, Body body) throws IOException {
    member(name, false, body);
  }

  /** Writes a member that only repeats others, for other programs. */
  void derived(String name, Body body) throws IOException {
    member(name, true, body);
  }

  private void member(String name, boolean derived, Body body) throws IOException {
    begin(name);
    Counting counting = new Counting(zip);
    DigestOutputStream out = new DigestOutputStream(counting, Sha256.begin());
    long count = body.writeTo(out);
    zip.closeEntry();
    String digest = HexFormat.of().formatHex(out.getMessageDigest().digest());
    members.add(new ArchiveMember(name, derived, count, counting.bytes, digest));
  }

  /** What was written so far. */
  List<ArchiveMember> members() {
    return members;
  }

  /** Writes the manifest as the last member and ends the archive. */
  void finish(Manifest manifest) throws IOException {
    begin(Members.MANIFEST);
    zip.write(manifest.write().getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
    zip.finish();
  }

  private void begin(String name) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(TIME);
    zip.putNextEntry(entry);
  }

  private static final class Counting extends FilterOutputStream {
    private long bytes;

    Counting(OutputStream out) {
      super(out);
    }

    @Override
    public void write(int value) throws IOException {
      out.write(value);
      bytes++;
    }

    @Override
    public void write(byte[] block, int from, int length) throws IOException {
      out.write(block, from, length);
      bytes += length;
    }
  }
}
