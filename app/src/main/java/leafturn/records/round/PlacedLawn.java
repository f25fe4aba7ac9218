package leafturn.records.round;

import leafturn.records.book.Sheet;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.Property;
import leafturn.records.sheet.WeatherStation;
import org.jspecify.annotations.Nullable;

/**
 * A lawn with what it belongs to.
 *
 * @param property the property it lies on
 * @param lawn the lawn
 * @param station the station whose weather stands for the property, or null when there is none
 */
public record PlacedLawn(
    Sheet<Property> property, Sheet<LawnSheet> lawn, @Nullable Sheet<WeatherStation> station) {

  /** Its name in addresses. */
  public String address() {
    return lawn.content().address();
  }
}
