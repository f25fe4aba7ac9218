package leafturn.records.exchange;

import java.time.LocalDate;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.ProgrammeSheet;
import org.jspecify.annotations.Nullable;

/**
 * What a row of a table of properties tells of a lawn.
 *
 * @param id id of its sheet, always the same for a property and an address
 * @param lawn its sheet, or null after faults
 * @param programme its programme, or null after faults and where the row tells none
 */
record ImportedLawn(String id, @Nullable LawnSheet lawn, @Nullable ProgrammeSheet programme) {
  /**
   * Reads a row's lawn and programme; what is wrong is told of its cells.
   *
   * @param from the day from which a programme holds that names none
   */
  static ImportedLawn read(
      String propertyId, String address, RowDocument lawn, RowDocument programme, LocalDate from) {
    String id = Arrivals.idOf("lawn " + propertyId + " " + address);
    lawn.put("property", propertyId);
    lawn.put("address", address);
    LawnSheet sheet = lawn.read(Kind.LAWN::read);
    if (programme.isEmpty()) {
      return new ImportedLawn(id, sheet, null);
    }
    programme.put("lawn", id);
    if (!programme.has("from")) {
      programme.put("from", from.toString());
    }
    return new ImportedLawn(id, sheet, programme.read(Kind.PROGRAMME::read));
  }
}
