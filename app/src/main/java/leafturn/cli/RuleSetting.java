package leafturn.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.quantity.DisplayNumber;
import leafturn.records.Faults;
import leafturn.records.InputException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A threshold set on the command line.
 *
 * @param name name of the rule or figure, as given
 * @param threshold its new value, in the rule's unit
 */
record RuleSetting(String name, double threshold) {

  /** Reads {@code NAME=VALUE}. */
  static final class Reader implements ITypeConverter<RuleSetting> {
    @Override
    public RuleSetting convert(String text) {
      int equals = text.indexOf('=');
      if (equals < 0) {
        throw new TypeConversionException(
            Faults.quoted(text) + " is not NAME=VALUE, for instance clump-limit-dry=35");
      }
      String value = text.substring(equals + 1);
      return new RuleSetting(text.substring(0, equals), LeafturnCommand.number(value));
    }
  }

  /**
   * The thresholds by name.
   *
   * @throws InputException when one is set twice: neither value is taken silently
   */
  static Map<String, Double> thresholds(List<RuleSetting> settings) {
    Map<String, Double> thresholds = new LinkedHashMap<>();
    for (RuleSetting setting : settings) {
      Double before = thresholds.put(setting.name(), setting.threshold());
      if (before != null) {
        throw new InputException(
            "--rule: %s is set twice, to %s and to %s; give it once."
                .formatted(
                    setting.name(),
                    DisplayNumber.plain(before),
                    DisplayNumber.plain(setting.threshold())));
      }
    }
    return thresholds;
  }
}
