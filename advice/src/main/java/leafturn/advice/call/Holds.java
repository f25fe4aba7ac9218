package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * Everything that keeps clippings on the lawn on a day, in words: each product and each condition
 * counts until it is over.
 *
 * @param today day of the call, from which days are counted
 * @param on that day
 * @param all the treatments that hold, the one that does longest first
 */
record Holds(LocalDate today, LocalDate on, List<Hold> all) {
  private static final String LASTING =
      "It lasts in clippings, compost and manure: they leave the lawn for no heap, bed or animal.";

  Holds {
    all = List.copyOf(all);
  }

  boolean any() {
    return !all.isEmpty();
  }

  boolean none() {
    return all.isEmpty();
  }

  /** "clopyralid and an insecticide", each product once. */
  String products() {
    return Words.list(names());
  }

  /** The products with what they do: "clopyralid and an insecticide keep". */
  String that(String one, String several) {
    return products() + " " + (names().size() == 1 ? one : several);
  }

  private List<String> names() {
    return all.stream().map(hold -> hold.treatment().product()).distinct().toList();
  }

  /** What is asked for before the clippings may be used elsewhere. */
  String until() {
    if (all.size() == 1) {
      Hold hold = all.get(0);
      return say(
          "applied on %s. %s",
          applied(hold),
          hold.lasting()
              ? LASTING
              : open(hold)
                  + " before clippings may be used elsewhere: collected ones have nowhere to go.");
    }
    StringBuilder until = new StringBuilder();
    for (Hold hold : all) {
      until.append(
          say(
              "%s, applied on %s: %s ",
              hold.treatment().product(),
              applied(hold),
              hold.lasting() ? LASTING : open(hold) + " first."));
    }
    return until + "Collected clippings have nowhere to go before all of that is over.";
  }

  private static String applied(Hold hold) {
    return DayNames.date(hold.treatment().on());
  }

  /** "1 more mowing has to be returned and 11 more days have to pass (until 31 May)". */
  private String open(Hold hold) {
    List<String> open = new ArrayList<>();
    if (hold.mowingsLeft() > 0) {
      open.add(
          say(
              "%d more %s to be returned",
              hold.mowingsLeft(), hold.mowingsLeft() == 1 ? "mowing has" : "mowings have"));
    }
    if (hold.daysLeft() > 0) {
      LocalDate end = on.plusDays(hold.daysLeft());
      long days = ChronoUnit.DAYS.between(today, end);
      open.add(
          say(
              "%d more %s to pass (until %s)",
              days, days == 1 ? "day has" : "days have", DayNames.date(end)));
    }
    return String.join(" and ", open);
  }

  /** Who asks for that. */
  String basis() {
    long byLabel = all.stream().filter(Hold::byLabel).count();
    if (byLabel == all.size()) {
      return "the label";
    }
    return (byLabel > 0 ? "label and practice" : "practice") + "; the label comes first";
  }
}
