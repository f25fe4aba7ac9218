package leafturn.records.sheet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leafturn.records.Amounts;
import leafturn.records.Choice;
import leafturn.records.JsonObject;
import leafturn.records.Numbers;
import org.jspecify.annotations.Nullable;

/** Reads what an entry of the log tells; a field that belongs to something else is a fault. */
final class DoneReader {
  private static final Map<What, List<String>> FIELDS = new EnumMap<>(What.class);

  static {
    FIELDS.put(
        What.MOWN,
        List.of(
            "heightBeforeMm",
            "heightAfterMm",
            "returnedShare",
            "bags",
            "weightKg",
            "wentTo",
            "minutes",
            "twoPasses"));
    FIELDS.put(
        What.FED,
        List.of(
            "fastNGPerM2",
            "slowNGPerM2",
            "pGPerM2",
            "kGPerM2",
            "product",
            "wateredIn",
            "feedForm",
            "waterInMm"));
    FIELDS.put(What.WATERED, List.of("waterMm"));
    FIELDS.put(
        What.TREATED,
        List.of(
            "product",
            "productKind",
            "ingredientGroup",
            "clippingsIntervalDays",
            "mowingsBeforeUse",
            "neverUse",
            "labelSaysNone",
            "waitBeforeMowingDays"));
    FIELDS.put(What.SEEDED, List.of("seed", "gPerM2"));
    FIELDS.put(What.AERATED, List.of("depthMm"));
    FIELDS.put(What.SCARIFIED, List.of("depthMm"));
    FIELDS.put(What.TOPDRESSED, List.of("depthMm"));
    FIELDS.put(What.LIMED, List.of("gPerM2", "product"));
    FIELDS.put(What.OBSERVED, List.of("things", "notThere", "leafCoverFraction", "heightMm"));
  }

  private static final List<String> AMOUNTS =
      List.of("fastNGPerM2", "slowNGPerM2", "pGPerM2", "kGPerM2");
  private static final double MOST_SEED_G_PER_M2 = 500;

  /** No blade of a mower or trimmer is held higher over a lawn, mm; our judgement. */
  private static final double HIGHEST_CUT_MM = 500;

  private static final double MOST_LIME_G_PER_M2 = 1000;
  private static final double MOST_TO_WASH_IN_MM = 50;

  private final JsonObject json;

  private DoneReader(JsonObject json) {
    this.json = json;
  }

  /** Reads the fields that go with the field {@code what}. */
  static Done read(JsonObject json) {
    DoneReader reader = new DoneReader(json);
    What what = Choice.readRequired(json, "what", What.class);
    if (what == null) {
      FIELDS.values().forEach(names -> names.forEach(json::has));
      return new Done.Worked(What.AERATED, null);
    }
    reader.refuseFieldsOfOthers(what);
    return reader.done(what);
  }

  private void refuseFieldsOfOthers(What what) {
    FIELDS.values().stream()
        .flatMap(List::stream)
        .distinct()
        .filter(name -> !fieldsOf(what).contains(name) && json.has(name))
        .forEach(
            name ->
                json.fault(
                    name,
                    "it belongs to %s, but this entry is %s; leave it out."
                        .formatted(owners(name), Choice.word(what))));
  }

  private static String owners(String name) {
    return FIELDS.keySet().stream()
        .filter(what -> fieldsOf(what).contains(name))
        .map(Choice::word)
        .collect(Collectors.joining(" or "));
  }

  private static List<String> fieldsOf(What what) {
    return FIELDS.getOrDefault(what, List.of());
  }

  private Done done(What what) {
    return switch (what) {
      case MOWN -> mown();
      case FED -> fed();
      case WATERED ->
          new Done.Watered(json.requiredNumber("waterMm", 0, Amounts.MOST_WATER_MM, "mm"));
      case TREATED -> treated();
      case SEEDED -> new Done.Seeded(json.text("seed", Limits.NAME), rate(MOST_SEED_G_PER_M2));
      case AERATED, SCARIFIED, TOPDRESSED ->
          new Done.Worked(what, json.number("depthMm", 0.5, 300, "mm"));
      case LIMED -> limed();
      case OBSERVED -> observed();
    };
  }

  private Done mown() {
    Double before = Amounts.grassMm(json, "heightBeforeMm");
    Double after = json.number("heightAfterMm", Amounts.LOWEST_GRASS_MM, HIGHEST_CUT_MM, "mm");
    if (before != null && after != null && after > before) {
      json.fault(
          "heightAfterMm",
          "%s mm is above the height before, %s mm; give a lower one."
              .formatted(Numbers.plain(after), Numbers.plain(before)));
    }
    double returned = json.requiredNumber("returnedShare", 0, 1, "1 for all returned");
    Double bags = json.number("bags", 0, 10_000, "bags");
    Double weight = json.number("weightKg", 0, 100_000, "kg");
    String wentTo = json.text("wentTo", Limits.NAME);
    Double minutes = json.number("minutes", 0, 1440, "minutes");
    return new Done.Mown(before, after, returned, bags, weight, wentTo, minutes, flag("twoPasses"));
  }

  private Done fed() {
    Done.Fed fed =
        new Done.Fed(
            Amounts.gPerM2(json, "fastNGPerM2"),
            Amounts.gPerM2(json, "slowNGPerM2"),
            Amounts.gPerM2(json, "pGPerM2"),
            Amounts.gPerM2(json, "kGPerM2"),
            json.text("product", Limits.NAME),
            json.flag("wateredIn"),
            Choice.read(json, "feedForm", FeedForm.class),
            json.number("waterInMm", 0, MOST_TO_WASH_IN_MM, "mm"));
    if (AMOUNTS.stream().noneMatch(json::has)) {
      json.missing(
          "fastNGPerM2", "at least one of %s in g/m²".formatted(String.join(", ", AMOUNTS)));
    }
    return fed;
  }

  private Done treated() {
    Done.Treated treated =
        new Done.Treated(
            json.requiredText("product", Limits.NAME, "its name on the label"),
            Choice.required(json, "productKind", ProductKind.class),
            Choice.read(json, "ingredientGroup", IngredientGroup.class),
            json.wholeNumber("clippingsIntervalDays", 0, 1100, "days"),
            json.wholeNumber("mowingsBeforeUse", 0, 20, "mowings"),
            flag("neverUse"),
            flag("labelSaysNone"),
            json.wholeNumber("waitBeforeMowingDays", 0, 60, "days"));
    checkOnClippings(treated);
    return treated;
  }

  /** A label that gives days or mowings neither says nothing nor forbids the use for good. */
  private void checkOnClippings(Done.Treated treated) {
    List<String> said = new ArrayList<>();
    Stream.of("clippingsIntervalDays", "mowingsBeforeUse").filter(json::has).forEach(said::add);
    if (treated.neverUse()) {
      said.add("neverUse");
    }
    if (treated.labelSaysNone()) {
      said.add("labelSaysNone");
    }
    if (said.isEmpty()) {
      json.missing(
          "clippingsIntervalDays",
          "the days the label asks for before clippings are used, mowingsBeforeUse, neverUse, or"
              + " set labelSaysNone");
    }
    String last = said.isEmpty() ? "" : said.get(said.size() - 1);
    if (said.size() > 1 && !last.equals("mowingsBeforeUse")) {
      json.fault(last, "it stands beside %s; keep one of them.".formatted(said.get(0)));
    }
  }

  private Done observed() {
    List<Sight> there = json.list("things").choices(Sight.class);
    List<Sight> notThere = json.list("notThere").choices(Sight.class);
    there.stream()
        .filter(notThere::contains)
        .forEach(
            sight ->
                json.fault(
                    "notThere",
                    "%s stands among what was seen too; keep it in one of the two."
                        .formatted(Choice.word(sight))));
    return new Done.Observed(
        there,
        notThere,
        json.number("leafCoverFraction", 0, 1, "1 for all of it"),
        Amounts.grassMm(json, "heightMm"));
  }

  private Done limed() {
    Double amount = rate(MOST_LIME_G_PER_M2);
    if (!json.has("gPerM2")) {
      json.missing("gPerM2", "the product given, g/m²");
    }
    return new Done.Limed(amount == null ? Double.NaN : amount, json.text("product", Limits.NAME));
  }

  private @Nullable Double rate(double most) {
    return json.number("gPerM2", 0.1, most, "g/m²");
  }

  private boolean flag(String name) {
    return Boolean.TRUE.equals(json.flag(name));
  }
}
