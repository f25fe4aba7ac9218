package leafturn.records.table;

import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/** The XML of a workbook's part, element by element; it may declare and bring in nothing. */
final class PartXml {
  private static final XMLInputFactory XML = factory();

  private final XMLStreamReader reader;

  PartXml(InputStream part) throws XMLStreamException {
    // As text, since the JDK writes of bytes that are none to the terminal before it throws.
    this.reader =
        XML.createXMLStreamReader(new InputStreamReader(part, StandardCharsets.UTF_8.newDecoder()));
  }

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    return factory;
  }

  /** Goes to the next start of an element; false at the end of the part. */
  boolean nextElement() throws XMLStreamException {
    while (reader.hasNext()) {
      int event = next();
      if (event == XMLStreamReader.START_ELEMENT) {
        return true;
      }
    }
    return false;
  }

  /** Goes to the next start of an element within one; false at that one's end. */
  boolean nextWithin(String element) throws XMLStreamException {
    while (reader.hasNext()) {
      int event = next();
      if (event == XMLStreamReader.START_ELEMENT) {
        return true;
      }
      if (event == XMLStreamReader.END_ELEMENT && reader.getLocalName().equals(element)) {
        return false;
      }
    }
    return false;
  }

  private int next() throws XMLStreamException {
    int event = reader.next();
    if (event == XMLStreamReader.DTD || event == XMLStreamReader.ENTITY_REFERENCE) {
      throw new XMLStreamException("a workbook declares no entities");
    }
    return event;
  }

  /** Name of the element without its prefix. */
  String name() {
    return reader.getLocalName();
  }

  boolean is(String element) {
    return reader.getLocalName().equals(element);
  }

  /** An attribute by its name without prefix, or null. */
  @Nullable String attribute(String name) {
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      if (reader.getAttributeLocalName(i).equals(name)) {
        return reader.getAttributeValue(i);
      }
    }
    return null;
  }

  /** The text in the element, without that of elements in it, and goes to its end. */
  String text() throws XMLStreamException {
    StringBuilder text = new StringBuilder();
    int depth = 1;
    while (depth > 0 && reader.hasNext()) {
      switch (next()) {
        case XMLStreamReader.START_ELEMENT -> depth++;
        case XMLStreamReader.END_ELEMENT -> depth--;
        case XMLStreamReader.CHARACTERS, XMLStreamReader.CDATA, XMLStreamReader.SPACE ->
            append(text, depth);
        default -> {
          // comments and instructions say nothing
        }
      }
    }
    return text.toString();
  }

  /** The text of a shared or inline string: its runs, without hints on their pronunciation. */
  String richText(String element) throws XMLStreamException {
    StringBuilder text = new StringBuilder();
    while (nextWithin(element)) {
      if (is("t")) {
        text.append(text());
        checkLength(text);
      } else if (is("rPh")) {
        text();
      }
    }
    return text.toString();
  }

  private void append(StringBuilder text, int depth) throws XMLStreamException {
    if (depth == 1) {
      text.append(reader.getTextCharacters(), reader.getTextStart(), reader.getTextLength());
      checkLength(text);
    }
  }

  private static void checkLength(StringBuilder text) throws XMLStreamException {
    if (text.length() > TableFile.LONGEST_CELL) {
      throw new XMLStreamException(
          new PartStream.TooMuchException("it holds a text that is longer than a cell may be"));
    }
  }
}
