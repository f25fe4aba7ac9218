package leafturn.records.sheet;

import com.fasterxml.jackson.annotation.JsonAutoDetect;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.JsonObject;
import leafturn.records.SourceText;

/**
 * A kind of sheet: its name in the database and in archives, and how its content is read and
 * written.
 *
 * @param <C> the content
 */
public final class Kind<C extends Content> {
  private static final List<Kind<?>> ALL = new ArrayList<>();

  /** Somewhere with lawns and beds, and the people who use them. */
  public static final Kind<Property> PROPERTY =
      new Kind<>("property", Property.class, Property::read);

  /** Largest document, characters. */
  public static final int LIMIT_CHARACTERS = 1_000_000;

  private static final ObjectMapper WRITER =
      JsonMapper.builder()
          .addModule(
              new SimpleModule()
                  .addSerializer(LocalDate.class, ToStringSerializer.instance)
                  .addSerializer(LocalTime.class, ToStringSerializer.instance))
          .serializationInclusion(JsonInclude.Include.NON_EMPTY)
          .visibility(PropertyAccessor.GETTER, JsonAutoDetect.Visibility.NONE)
          .visibility(PropertyAccessor.IS_GETTER, JsonAutoDetect.Visibility.NONE)
          .visibility(PropertyAccessor.FIELD, JsonAutoDetect.Visibility.ANY)
          .disable(SerializationFeature.FAIL_ON_EMPTY_BEANS)
          .build();

  private final String name;
  private final Class<C> type;
  private final Function<JsonObject, C> reader;

  private Kind(String name, Class<C> type, Function<JsonObject, C> reader) {
    this.name = name;
    this.type = type;
    this.reader = reader;
    ALL.add(this);
  }

  /** Every kind, those that others rest on first. */
  public static List<Kind<?>> all() {
    return List.copyOf(ALL);
  }

  /** The kind with this name. */
  public static Optional<Kind<?>> named(String name) {
    return all().stream().filter(kind -> kind.name.equals(name)).findFirst();
  }

  /** Its name in the database and in archives. */
  public String name() {
    return name;
  }

  /** The class of its content. */
  public Class<C> type() {
    return type;
  }

  /**
   * Reads a document.
   *
   * @throws InputException with every fault, each naming its field
   */
  public C read(SourceText document) {
    if (document.text().length() > LIMIT_CHARACTERS) {
      throw new InputException(document.name() + ": it is too large; shorten its texts.");
    }
    Faults faults = new Faults(document.name());
    JsonObject root = JsonObject.root(document, faults);
    return reader.apply(root);
  }

  /** Writes the document of a content, always in the same way. */
  public String write(C content) {
    try {
      return WRITER.writeValueAsString(content);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a " + name + " could not be written as JSON", e);
    }
  }

  @Override
  public String toString() {
    return name;
  }
}
