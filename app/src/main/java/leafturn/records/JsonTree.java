package leafturn.records;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Reads a JSON document into values that know their place. A name given twice and a number that is
 * not finite are faults like any other; only text that is not JSON ends the reading.
 */
final class JsonTree {
  /** Deeper than any document of ours, and safe for the stack. */
  private static final int DEEPEST = 50;

  /** The reader's own name of a limit, which says nothing to who wrote the file. */
  private static final Pattern SETTING = Pattern.compile(", from `[^`]*`");

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
          .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
          .build();

  private final JsonParser parser;
  private final Faults faults;

  private JsonTree(JsonParser parser, Faults faults) {
    this.parser = parser;
    this.faults = faults;
  }

  /**
   * The root value of a document.
   *
   * @throws InputException when the text is not JSON, with all faults found before that place
   */
  static JsonValue read(SourceText source, Faults faults) {
    if (source.text().isBlank()) {
      throw new InputException(source.name() + ": it is empty; a JSON object is expected.");
    }
    try (JsonParser parser = FACTORY.createParser(source.text())) {
      JsonTree tree = new JsonTree(parser, faults);
      parser.nextToken();
      JsonValue root = tree.value(JsonPath.ROOT);
      if (parser.nextToken() != null) {
        faults.add(tree.line(), "more text follows after the end of the document; remove it.");
      }
      return root;
    } catch (JsonProcessingException e) {
      var place = e.getLocation();
      faults.add(
          place == null ? 1 : place.getLineNr(),
          "column " + (place == null ? 1 : place.getColumnNr()),
          "this is not valid JSON (" + firstWords(e.getOriginalMessage()) + ").");
      faults.throwIfAny();
      throw new IllegalStateException("a fault was added above", e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private JsonValue value(JsonPath path) throws IOException {
    int line = line();
    JsonToken token = parser.currentToken();
    Object content =
        switch (token) {
          case START_OBJECT -> members(path);
          case START_ARRAY -> items(path);
          case VALUE_STRING -> text(path);
          case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number();
          case VALUE_TRUE -> true;
          case VALUE_FALSE -> false;
          default -> null;
        };
    return new JsonValue(path, line, content);
  }

  /** A text; characters that no database or file can be trusted to give back are a fault. */
  private String text(JsonPath path) throws IOException {
    String text = parser.getText();
    text.codePoints()
        .filter(JsonTree::isNoText)
        .findFirst()
        .ifPresent(
            character ->
                faults.add(
                    line(),
                    path.words(),
                    "it holds the character U+%04X, which is no text; remove it."
                        .formatted(character)));
    return text;
  }

  private static boolean isNoText(int character) {
    boolean control = Character.isISOControl(character) && "\t\n\r".indexOf(character) < 0;
    return control || Character.getType(character) == Character.SURROGATE;
  }

  /** Not finite for NaN, INF and numbers beyond the range of doubles; who asks for it says so. */
  private Double number() throws IOException {
    String text = parser.getText();
    try {
      return Double.valueOf(text);
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }

  private Map<String, JsonValue> members(JsonPath path) throws IOException {
    Map<String, JsonValue> members = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      JsonPath memberPath = path.member(name);
      int line = line();
      parser.nextToken();
      JsonValue before = members.putIfAbsent(name, value(memberPath));
      if (before != null) {
        faults.add(
            line,
            memberPath.words(),
            "the field stands here and on line %d; keep one of them.".formatted(before.line()));
      }
    }
    return members;
  }

  private List<JsonValue> items(JsonPath path) throws IOException {
    List<JsonValue> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(path.item(items.size())));
    }
    return items;
  }

  private int line() {
    return parser.currentTokenLocation().getLineNr();
  }

  private static String firstWords(String message) {
    String first = message.lines().findFirst().orElse("").strip();
    String line = SETTING.matcher(first).replaceAll("");
    int end = line.indexOf(": ");
    return end > 0 ? line.substring(0, end) : line;
  }
}
