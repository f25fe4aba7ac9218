package leafturn.records.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import leafturn.records.Faults.Fault;
import leafturn.records.InputException;
import leafturn.records.SourceText;
import org.jspecify.annotations.Nullable;

/**
 * A further lawn of a property with how it is kept. Its document is that of a lawn's sheet with its
 * mowing under {@code programme.mowing}, and {@code programme.otherwiseAlike} true where all else
 * is done as on another lawn.
 *
 * @param programmeId id of the programme's sheet, always the same for a lawn's id
 */
public record NewLawn(LawnSheet lawn, String programmeId, ProgrammeSheet programme) {
  /** Where the document says that all else is done alike. */
  public static final String ALIKE = "otherwiseAlike";

  private static final String PROGRAMME = "programme";
  private static final List<String> OWN = List.of("name", "note", "lawn", "from");

  /**
   * Reads a document.
   *
   * @param lawnId id of the new lawn's sheet
   * @param from the day from which the programme holds
   * @param other programme of the lawn whose ways may be taken over, or null
   * @throws InputException with every fault, those of the programme after {@code programme}
   */
  public static NewLawn read(
      SourceText document, String lawnId, LocalDate from, @Nullable ProgrammeSheet other) {
    ObjectNode lawn = (ObjectNode) NewProperty.parsed(document);
    JsonNode asked = NewProperty.part(lawn, PROGRAMME);
    lawn.remove(PROGRAMME);
    ObjectNode programme = kept(asked, other);
    programme.put("lawn", lawnId).put("from", from.toString());
    mowing(programme.withObject("/mowing"), asked.path("mowing"));
    NewProperty.usualHeight(programme.withObject("/mowing"), lawn.path("grass").asText());

    List<Fault> faults = new ArrayList<>();
    LawnSheet readLawn = null;
    try {
      readLawn = Kind.LAWN.read(new SourceText(document.name(), lawn.toString()));
    } catch (InputException wrong) {
      faults.addAll(wrong.faultsByField());
    }
    ProgrammeSheet readProgramme = NewProperty.read(Kind.PROGRAMME, programme, faults);
    if (!faults.isEmpty()) {
      throw InputException.of(faults);
    }
    return new NewLawn(
        Objects.requireNonNull(readLawn),
        programmeId(lawnId),
        Objects.requireNonNull(readProgramme));
  }

  /** Made from the lawn's, so that sending the same lawn twice adds one programme. */
  private static String programmeId(String lawnId) {
    byte[] name = ("first programme of " + lawnId).getBytes(StandardCharsets.UTF_8);
    return UUID.nameUUIDFromBytes(name).toString();
  }

  private static ObjectNode kept(JsonNode asked, @Nullable ProgrammeSheet other) {
    ObjectNode kept =
        other == null || !asked.path(ALIKE).asBoolean()
            ? NewProperty.emptyObject()
            : (ObjectNode) NewProperty.parsed(new SourceText("", Kind.PROGRAMME.write(other)));
    return kept.remove(OWN);
  }

  /** Height, days between cuts and share are those of the form, also where they are empty. */
  private static void mowing(ObjectNode mowing, JsonNode asked) {
    mowing.remove(List.of("heightMm", "trigger"));
    for (String own : List.of("heightMm", "trigger", "clippings")) {
      if (asked.has(own)) {
        mowing.set(own, asked.get(own));
      }
    }
  }
}
