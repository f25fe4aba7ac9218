package leafturn.reports;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import java.io.IOException;
import java.io.Serial;
import java.time.LocalDate;

/**
 * A result as one JSON document. Records and maps give objects with their fields in order; a number
 * that is not known (NaN) is null; dates are ISO 8601.
 */
public final class JsonReport {
  private static final ObjectMapper MAPPER = mapper();

  private JsonReport() {}

  /** The document as indented text without a line end. */
  public static String of(Object document) {
    try {
      return MAPPER.writer(printer()).writeValueAsString(document);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a result cannot be written as JSON", e);
    }
  }

  private static ObjectMapper mapper() {
    SimpleModule module = new SimpleModule();
    KnownNumber numbers = new KnownNumber();
    module.addSerializer(Double.class, numbers);
    module.addSerializer(double.class, numbers);
    module.addSerializer(LocalDate.class, new ToStringSerializer());
    return new ObjectMapper().registerModule(module);
  }

  private static DefaultPrettyPrinter printer() {
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    return new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
  }

  private static final class KnownNumber extends StdSerializer<Double> {
    @Serial private static final long serialVersionUID = 1L;

    KnownNumber() {
      super(Double.class);
    }

    @Override
    public void serialize(Double value, JsonGenerator json, SerializerProvider provider)
        throws IOException {
      if (Double.isFinite(value)) {
        json.writeNumber(value);
      } else {
        json.writeNull();
      }
    }
  }
}
