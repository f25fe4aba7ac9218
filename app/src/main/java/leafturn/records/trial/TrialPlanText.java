package leafturn.records.trial;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import leafturn.records.Sha256;
import leafturn.records.shape.Anchor;
import leafturn.records.shape.Corner;
import leafturn.records.shape.Outline;
import leafturn.records.shape.Patch;
import leafturn.records.shape.Ring;
import leafturn.trials.design.Arm;
import leafturn.trials.design.Arrangement;
import leafturn.trials.design.CoreRule;
import leafturn.trials.design.Design;
import leafturn.trials.design.Observing;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.PlotRule;
import leafturn.trials.design.Protocol;
import leafturn.trials.design.Treatments;
import leafturn.trials.design.TrialLawn;
import leafturn.trials.design.TrialPlan;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/**
 * Writes the plan of a trial as {@link TrialPlanFile} reads it, with everything filled in that was
 * left out, outlines in m, and always in the same way, so that equal plans have equal digests.
 */
public final class TrialPlanText {
  private static final int DECIMALS = 9;
  private static final JsonMapper CANONICAL =
      JsonMapper.builder()
          .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
          .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
          .build();

  private TrialPlanText() {}

  /**
   * The document as maps, lists, texts, numbers and flags, its fields in the order of the schema.
   */
  public static Map<String, Object> tree(TrialPlan plan) {
    Map<String, Object> tree = new LinkedHashMap<>();
    tree.put("name", plan.name());
    tree.put("question", plan.question());
    arrangement(tree, plan.arrangement());
    treatments(tree, plan.treatments());
    tree.put("lawns", plan.lawns().stream().map(TrialPlanText::lawn).toList());
    tree.put("plots", plots(plan.arrangement().plots()));
    observing(tree, plan.observing());
    tree.put("protocol", protocol(plan.protocol()));
    tree.put("seed", plan.seed());
    return tree;
  }

  /** The document in one line, its fields by name: the form of which {@link #sha256} is made. */
  public static String canonical(TrialPlan plan) {
    try {
      return CANONICAL.writeValueAsString(tree(plan));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a plan could not be written as JSON", e);
    }
  }

  /** SHA-256 of the canonical document in UTF-8, in hexadecimal. */
  public static String sha256(TrialPlan plan) {
    return Sha256.of(canonical(plan));
  }

  private static void arrangement(Map<String, Object> tree, Arrangement arrangement) {
    Design design = arrangement.design();
    tree.put("design", design.word());
    if (design == Design.SPLIT_YARD) {
      tree.put("sides", arrangement.sides().word());
    } else if (design == Design.PAIRED_STRIPS) {
      tree.put("pairs", arrangement.blocks());
    } else if (design != Design.LATIN_SQUARE) {
      tree.put("blocks", arrangement.blocks());
    }
    if (design == Design.LISTED) {
      tree.put("allowedLayouts", arrangement.allowedLayouts());
    }
  }

  private static void treatments(Map<String, Object> tree, Treatments treatments) {
    tree.put("factor", treatments.factor());
    tree.put("arms", treatments.arms().stream().map(TrialPlanText::arm).toList());
    if (treatments.secondFactor() != null) {
      tree.put("secondFactor", treatments.secondFactor());
      tree.put("secondArms", treatments.secondArms().stream().map(TrialPlanText::arm).toList());
    }
    tree.put(
        "contrasts",
        treatments.contrasts().stream()
            .map(contrast -> List.of(contrast.first(), contrast.second()))
            .toList());
  }

  private static Map<String, Object> arm(Arm arm) {
    Map<String, Object> tree = new LinkedHashMap<>();
    tree.put("name", arm.name());
    if (arm.clippings() != null) {
      tree.put("clippings", arm.clippings().word());
    }
    tree.put("feedShare", number(arm.feedShare()));
    putIfThere(tree, "note", arm.note());
    return tree;
  }

  private static Map<String, Object> lawn(TrialLawn lawn) {
    TrialLawn.Origin origin = lawn.origin();
    Anchor anchor = origin == null ? null : new Anchor(origin.longitudeDeg(), origin.latitudeDeg());
    Map<String, Object> tree = new LinkedHashMap<>();
    tree.put("name", lawn.name());
    tree.put("outline", outline(lawn.turf(), anchor));
    if (!lawn.keepOut().isEmpty()) {
      tree.put("keepOut", lawn.keepOut().stream().map(place -> outline(place, null)).toList());
    }
    Map<String, Object> mower = new LinkedHashMap<>();
    mower.put("deckWidthMm", number(lawn.mower().deckWidthMm()));
    mower.put("discharge", lawn.mower().discharge().word());
    if (lawn.mower().assumed()) {
      mower.put("dischargeAssumed", true);
    }
    tree.put("mower", mower);
    putIfThere(tree, "bearingDeg", orNull(lawn.bearingDeg()));
    return tree;
  }

  private static Map<String, Object> outline(Geometry geometry, @Nullable Anchor anchor) {
    List<Object> patches = new ArrayList<>();
    for (Patch patch : Outline.of(geometry, anchor).patches()) {
      Map<String, Object> tree = new LinkedHashMap<>();
      tree.put("edge", ring(patch.edge()));
      if (!patch.holes().isEmpty()) {
        tree.put("holes", patch.holes().stream().map(TrialPlanText::ring).toList());
      }
      patches.add(tree);
    }
    Map<String, Object> tree = new LinkedHashMap<>();
    tree.put("patches", patches);
    if (anchor != null) {
      Map<String, Object> place = new LinkedHashMap<>();
      place.put("longitudeDeg", number(anchor.longitudeDeg()));
      place.put("latitudeDeg", number(anchor.latitudeDeg()));
      tree.put("anchor", place);
    }
    return tree;
  }

  private static List<List<BigDecimal>> ring(Ring ring) {
    return ring.corners().stream().map(TrialPlanText::corner).toList();
  }

  private static List<BigDecimal> corner(Corner corner) {
    return List.of(number(corner.xM()), number(corner.yM()));
  }

  private static Map<String, Object> plots(PlotRule plots) {
    Map<String, Object> tree = new LinkedHashMap<>();
    tree.put("passes", plots.passes());
    tree.put("guardPasses", plots.guardPasses());
    putIfThere(tree, "lengthM", orNull(plots.lengthM()));
    tree.put("edgeM", number(plots.edgeM()));
    tree.put("bedM", number(plots.bedM()));
    return tree;
  }

  private static void observing(Map<String, Object> tree, Observing observing) {
    CoreRule rule = observing.cores();
    Map<String, Object> cores = new LinkedHashMap<>();
    cores.put("perPlot", rule.perPlot());
    cores.put("depthCm", number(rule.depthCm()));
    cores.put("composites", rule.composites());
    if (rule.blindDuplicateFraction() != CoreRule.USUAL_BLIND_DUPLICATES) {
      // Only another than the usual share: plans from before there was one keep their digest.
      cores.put("blindDuplicates", number(rule.blindDuplicateFraction()));
    }
    cores.put("fromOldHolesM", number(rule.fromOldHolesM()));
    cores.put("dates", texts(rule.dates()));
    tree.put("cores", cores);
    Map<String, Object> season = new LinkedHashMap<>();
    season.put("from", observing.from().toString());
    season.put("to", observing.to().toString());
    tree.put("season", season);
    tree.put("dates", texts(observing.dates()));
    tree.put("outcomes", observing.outcomes().stream().map(TrialPlanText::outcome).toList());
    tree.put("exclusions", observing.exclusions());
  }

  private static List<String> texts(List<?> values) {
    return values.stream().map(Object::toString).toList();
  }

  private static Map<String, Object> outcome(Outcome outcome) {
    Map<String, Object> tree = new LinkedHashMap<>();
    tree.put("name", outcome.name());
    tree.put("kind", outcome.kind().word());
    tree.put("unit", outcome.unit());
    putIfThere(tree, "low", orNull(outcome.low()));
    putIfThere(tree, "high", orNull(outcome.high()));
    tree.put("scale", outcome.scale().word());
    tree.put("summary", outcome.summary().word());
    putIfThere(tree, "margin", orNull(outcome.margin()));
    tree.put("primary", outcome.primary());
    return tree;
  }

  private static Map<String, Object> protocol(Protocol protocol) {
    Map<String, Object> tree = new LinkedHashMap<>();
    if (protocol.mowingDay() != null) {
      tree.put("mowingDay", protocol.mowingDay().name().toLowerCase(Locale.ROOT));
    }
    putIfThere(tree, "heightMm", orNull(protocol.heightMm()));
    tree.put("bothHalvesSameDay", protocol.bothHalvesSameDay());
    tree.put("collectedFirst", protocol.collectedFirst());
    tree.put("deckCleaned", protocol.deckCleaned());
    tree.put("ratersBlind", protocol.ratersBlind());
    tree.put("feed", protocol.feed().word());
    return tree;
  }

  private static void putIfThere(Map<String, Object> tree, String name, @Nullable Object value) {
    if (value != null) {
      tree.put(name, value);
    }
  }

  private static @Nullable BigDecimal orNull(@Nullable Double value) {
    return value == null ? null : number(value);
  }

  /** A number to nine decimals, without exponent or needless zeros, the same on every Java. */
  private static BigDecimal number(double value) {
    BigDecimal rounded =
        new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
  }
}
