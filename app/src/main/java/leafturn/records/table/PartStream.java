package leafturn.records.table;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * The unpacked bytes of a workbook's part. A small archive can hold a part that never ends, or one
 * that is a single endless name; both are refused while they are read, not after.
 */
final class PartStream extends FilterInputStream {
  /** Most bytes of all parts together, unpacked. */
  static final long MOST_BYTES = 200_000_000;

  /** Most bytes from one tag's end to the next: the longest cell in four bytes a character. */
  private static final int MOST_BETWEEN_TAGS = 4 * TableFile.LONGEST_CELL + 10_000;

  private final long before;
  private long read;
  private int sinceTag;

  /** A part that holds more than it may. */
  static final class TooMuchException extends IOException {
    private static final long serialVersionUID = 1L;

    TooMuchException(String message) {
      super(message);
    }
  }

  /**
   * @param before bytes of the parts read before this one
   */
  PartStream(InputStream in, long before) {
    super(in);
    this.before = before;
  }

  /** Bytes of all parts so far, this one included. */
  long total() {
    return before + read;
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] buffer, int offset, int length) throws IOException {
    int count = super.read(buffer, offset, length);
    if (count > 0) {
      read += count;
      if (total() > MOST_BYTES) {
        throw new TooMuchException("it unpacks to more than 200 MB");
      }
      checkTags(buffer, offset, count);
    }
    return count;
  }

  private void checkTags(byte[] buffer, int offset, int count) throws IOException {
    for (int i = offset; i < offset + count; i++) {
      sinceTag = buffer[i] == '>' ? 0 : sinceTag + 1;
      if (sinceTag > MOST_BETWEEN_TAGS) {
        throw new TooMuchException("it holds a text that is longer than a cell may be");
      }
    }
  }
}
