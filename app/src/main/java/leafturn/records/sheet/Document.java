package leafturn.records.sheet;

import com.fasterxml.jackson.annotation.JsonAutoDetect;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializerBase;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import leafturn.model.lawn.CalendarDay;
import leafturn.records.Choice;

/** Writes records as JSON by their components; what is null or empty is left out. */
final class Document {
  private static final ObjectMapper WRITER =
      JsonMapper.builder()
          .addModule(
              new SimpleModule()
                  .addSerializer(LocalDate.class, ToStringSerializer.instance)
                  .addSerializer(LocalTime.class, ToStringSerializer.instance)
                  .addSerializer(new Words())
                  .addSerializer(new Days()))
          .serializationInclusion(JsonInclude.Include.NON_EMPTY)
          .visibility(PropertyAccessor.GETTER, JsonAutoDetect.Visibility.NONE)
          .visibility(PropertyAccessor.IS_GETTER, JsonAutoDetect.Visibility.NONE)
          .visibility(PropertyAccessor.FIELD, JsonAutoDetect.Visibility.ANY)
          .disable(SerializationFeature.FAIL_ON_EMPTY_BEANS)
          .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
          .build();

  private Document() {}

  /** The document of a record, always in the same way. */
  static String of(Record content) {
    try {
      return WRITER.writeValueAsString(content);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(
          content.getClass().getSimpleName() + " could not be written as JSON", e);
    }
  }

  /** Constants by their words. */
  private static final class Words extends ToStringSerializerBase {
    private static final long serialVersionUID = 1L;

    Words() {
      super(Enum.class);
    }

    @Override
    public String valueToString(Object value) {
      return Choice.word((Enum<?>) value);
    }
  }

  /** Days that come back every year, as a lawn description has them. */
  private static final class Days extends StdSerializer<CalendarDay> {
    private static final long serialVersionUID = 1L;
    private static final DateTimeFormatter MONTH_DAY = DateTimeFormatter.ofPattern("MM-dd");

    Days() {
      super(CalendarDay.class);
    }

    @Override
    public void serialize(CalendarDay day, JsonGenerator out, SerializerProvider provider)
        throws IOException {
      MonthDay date = day.monthDay();
      if (date == null) {
        out.writeNumber(day.dayOfYear());
      } else {
        out.writeString(date.format(MONTH_DAY));
      }
    }
  }
}
