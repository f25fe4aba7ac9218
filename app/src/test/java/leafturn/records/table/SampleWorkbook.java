package leafturn.records.table;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Workbooks made part by part, also such as no program would save. */
public final class SampleWorkbook {
  private final Map<String, byte[]> parts = new LinkedHashMap<>();
  private final Map<String, byte[]> endings = new LinkedHashMap<>();
  private int times;

  public SampleWorkbook() {
    part(
        "xl/workbook.xml",
        "<workbook><sheets><sheet name=\"Log\" sheetId=\"1\" r:id=\"r1\""
            + " xmlns:r=\"urn:r\"/></sheets></workbook>");
    part(
        "xl/_rels/workbook.xml.rels",
        "<Relationships><Relationship Id=\"r1\" Target=\"worksheets/sheet1.xml\"/></Relationships>");
  }

  /** This workbook with a part. */
  public SampleWorkbook part(String name, String xml) {
    parts.put(name, xml.getBytes(StandardCharsets.UTF_8));
    return this;
  }

  /** This workbook with these rows on its sheet, as XML. */
  public SampleWorkbook rows(String rows) {
    return part(
        "xl/worksheets/sheet1.xml", "<worksheet><sheetData>" + rows + "</sheetData></worksheet>");
  }

  /** This workbook with a part that begins in some way and goes on with the same many times. */
  public SampleWorkbook partOf(String name, String beginning, String repeated, int count) {
    part(name, beginning);
    endings.put(name, repeated.getBytes(StandardCharsets.UTF_8));
    times = count;
    return this;
  }

  /** Its bytes. */
  public byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
        for (int time = 0; time < times && endings.containsKey(part.getKey()); time++) {
          zip.write(endings.get(part.getKey()));
        }
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }
}
