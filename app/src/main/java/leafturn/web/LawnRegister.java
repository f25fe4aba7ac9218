package leafturn.web;

import java.util.ArrayList;
import java.util.List;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.LawnWithoutCall;
import leafturn.advice.call.RoundOfLawns;
import leafturn.records.round.PlacedLawn;
import leafturn.records.round.Register;

/**
 * The lawns of a round by property.
 *
 * @param properties the properties in the order of the book
 */
public record LawnRegister(List<Entry> properties) {
  /**
   * A property with its lawns.
   *
   * @param name what its people call it
   * @param address its name in addresses
   * @param lawns its lawns with a call
   * @param withoutCall its lawns for which no call could be made
   */
  public record Entry(
      String name, String address, List<LawnOnRound> lawns, List<LawnWithoutCall> withoutCall) {}

  static LawnRegister of(Register register, RoundOfLawns round) {
    List<Entry> entries = new ArrayList<>();
    for (var property : register.properties()) {
      List<String> addresses =
          register.lawns().stream()
              .filter(lawn -> lawn.property().id().equals(property.id()))
              .map(PlacedLawn::address)
              .toList();
      entries.add(
          new Entry(
              property.content().name(),
              property.content().address(),
              round.lawns().stream().filter(lawn -> addresses.contains(lawn.slug())).toList(),
              round.withoutCall().stream()
                  .filter(lawn -> addresses.contains(lawn.slug()))
                  .toList()));
    }
    return new LawnRegister(entries);
  }
}
