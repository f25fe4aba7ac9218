package leafturn.records.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.Units;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.exchange.LogTable;
import leafturn.records.shape.GeoJsonText;
import leafturn.records.shape.NamedOutline;
import leafturn.records.shape.Outline;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.LogSheet;
import org.jspecify.annotations.Nullable;

/** The files of an archive that repeat what its sheets say, in forms that other programs read. */
final class DerivedFiles {
  private final BookReading book;
  private final ZipWriting zip;

  DerivedFiles(BookReading book, ZipWriting zip) {
    this.book = book;
    this.zip = zip;
  }

  /** Writes them all. */
  void write() throws IOException {
    outlines();
    logs();
  }

  private void logs() throws IOException {
    for (Sheet<LawnSheet> lawn : book.all(Kind.LAWN)) {
      List<Sheet<LogSheet>> entries = book.ofLawn(Kind.LOG, lawn.id());
      if (!entries.isEmpty()) {
        String csv = LogTable.of(entries, Units.METRIC).csv();
        zip.derived(Members.log(lawn.content().address()), out -> text(out, csv, entries.size()));
      }
    }
  }

  /** Shapes for maps, where a lawn or bed has one and it is known where it lies. */
  private void outlines() throws IOException {
    List<NamedOutline> lawns = new ArrayList<>();
    book.all(Kind.LAWN)
        .forEach(lawn -> outline(lawns, lawn.content().name(), lawn.content().outline()));
    List<NamedOutline> beds = new ArrayList<>();
    book.all(Kind.BED).forEach(bed -> outline(beds, bed.content().name(), bed.content().outline()));
    outlines(Members.LAWN_OUTLINES, lawns);
    outlines(Members.BED_OUTLINES, beds);
  }

  private static void outline(List<NamedOutline> list, String name, @Nullable Outline outline) {
    if (outline != null && outline.anchor() != null) {
      list.add(new NamedOutline(name, outline));
    }
  }

  private void outlines(String member, List<NamedOutline> outlines) throws IOException {
    if (!outlines.isEmpty()) {
      String json = GeoJsonText.of(outlines) + "\n";
      zip.derived(member, out -> text(out, json, outlines.size()));
    }
  }

  private static long text(OutputStream out, String text, long count) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
    return count;
  }
}
