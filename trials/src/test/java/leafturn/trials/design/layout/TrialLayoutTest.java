package leafturn.trials.design.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leafturn.trials.design.Arrangement;
import leafturn.trials.design.Design;
import leafturn.trials.design.NoRoomException;
import leafturn.trials.design.Plans;
import leafturn.trials.design.PlotRule;
import leafturn.trials.design.TrialLawn;
import leafturn.trials.design.TrialMower;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.ground.EqualCells;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Plots, cores and pegs of whole layouts. */
class TrialLayoutTest {
  private static final Geometry L_SHAPE = Plans.polygon(0, 0, 24, 0, 24, 9, 10, 9, 10, 18, 0, 18);

  private static TrialLawn holed() {
    return Plans.lawn(
        "holed",
        Plans.rectangle(0, 0, 24, 16).difference(Plans.rectangle(9, 6, 3, 3)),
        List.of(Plans.rectangle(17, 2, 2, 2)),
        null);
  }

  private static TrialPlan yards(long seed) {
    List<TrialLawn> lawns =
        List.of(
            Plans.lawn("rectangle", Plans.rectangle(0, 0, 20, 10), null),
            Plans.lawn("l", L_SHAPE, null),
            holed());
    return Plans.withCores(Plans.plan(Design.SPLIT_YARD, 2, 3, lawns, seed), 15, 5);
  }

  @Test
  void coresLieInTheirPlotAndFarFromOldHoles() {
    for (long seed = 0; seed < 12; seed++) {
      TrialLayout layout = TrialLayout.of(yards(seed));
      Map<String, Geometry> measured = new HashMap<>();
      layout.plots().forEach(plot -> measured.put(plot.code(), plot.place().measured()));
      Map<String, List<Core>> before = new HashMap<>();
      assertThat(layout.cores()).hasSize(6 * 15 * 5);
      for (Core core : layout.cores()) {
        Coordinate place = new Coordinate(core.xM(), core.yM());
        Geometry plot = Objects.requireNonNull(measured.get(core.plot()));
        assertThat(plot.covers(plot.getFactory().createPoint(place))).isTrue();
        for (Core old : before.getOrDefault(core.plot(), List.of())) {
          boolean earlier = old.date().isBefore(core.date());
          assertThat(!earlier || place.distance(new Coordinate(old.xM(), old.yM())) >= 0.3)
              .as("seed %d, %s and %s", seed, old, core)
              .isTrue();
        }
        before.computeIfAbsent(core.plot(), key -> new ArrayList<>()).add(core);
      }
    }
  }

  @Test
  void everyCellHasOneCoreOfEachDate() {
    TrialLayout layout = TrialLayout.of(yards(3));
    LaidLawn lawn = layout.lawns().get(2);
    LaidPlot plot = lawn.plots().get(0);
    List<Geometry> cells = EqualCells.of(plot.place().measured(), lawn.frame(), 15);
    double share = plot.place().measured().getArea() / 15;
    assertThat(cells).allSatisfy(cell -> assertThat(cell.getArea()).isCloseTo(share, within(1e-6)));
    for (Core core : layout.cores()) {
      if (core.plot().equals(plot.code())) {
        Geometry cell = cells.get(core.number() - 1);
        Coordinate place = new Coordinate(core.xM(), core.yM());
        assertThat(cell.covers(cell.getFactory().createPoint(place))).isTrue();
      }
    }
  }

  /** A lawn with two pairs of strips to the east. */
  private static LaidLawn strips(Geometry turf) {
    List<TrialLawn> lawns = List.of(Plans.lawn("front", turf, 90.0));
    return TrialLayout.of(Plans.plan(Design.PAIRED_STRIPS, 2, 2, lawns, 3)).lawns().get(0);
  }

  @Test
  void whatABedCutsOffAStripIsTold() {
    Geometry turf = Plans.rectangle(0, 0, 30, 12).difference(Plans.rectangle(8, 1, 2, 10));
    LaidLawn lawn = strips(turf);
    for (LaidPlot plot : lawn.plots()) {
      double lostM2 = plot.place().lostM2();
      assertThat(lostM2).isGreaterThan(1);
      assertThat(lawn.notes())
          .anySatisfy(
              note ->
                  assertThat(note)
                      .contains(
                          "Plot " + plot.code() + " is cut",
                          "%.1f m²".formatted(lostM2),
                          "to the "));
      assertThat(plot.place().plot().intersects(plot.place().lost())).isFalse();
    }
  }

  @Test
  void aDroppedPlotIsToldWithItsPlaceAndItsCause() {
    // Passes to the east; a bed spoils the second strip from the north.
    Geometry turf = Plans.rectangle(0, 0, 30, 12).difference(Plans.rectangle(3, 5.5, 13, 1));
    LaidLawn lawn = strips(turf);
    assertThat(lawn.dropped()).isNotEmpty();
    for (DroppedPlot dropped : lawn.dropped()) {
      TapedPlace middle = dropped.middle();
      Geometry at = turf.getFactory().createPoint(new Coordinate(middle.xM(), middle.yM()));
      assertThat(dropped.place().plot().covers(at)).isTrue();
      assertThat(middle.fromAM())
          .isCloseTo(at.getCoordinate().distance(lawn.fixed().a()), within(0.0051));
      assertThat(dropped.beside()).matches("(north|south)[a-z-]* of B[12]-[12]");
      assertThat(dropped.why()).contains("a bed lies in it or too near it");
    }
    assertThat(lawn.dropped().get(0).mark()).isEqualTo("X1");
    assertThat(lawn.notes()).anySatisfy(note -> assertThat(note).contains("marks", "X1"));
  }

  @Test
  void partsOfAHalfAreToldAndAllBelongToIt() {
    Geometry turf = Plans.rectangle(0, 0, 20, 10).difference(Plans.rectangle(-1, 4, 15, 2));
    TrialPlan plan = Plans.plan(Design.SPLIT_YARD, 2, 1, List.of(Plans.lawn("u", turf, 0.0)), 3);
    LaidLawn lawn = TrialLayout.of(plan).lawns().get(0);
    assertThat(lawn.plots().get(0).place().plot().getNumGeometries()).isEqualTo(2);
    assertThat(lawn.notes())
        .anySatisfy(note -> assertThat(note).contains("lies in 2 parts", "belong to it"));
  }

  @Test
  void theWalkGoesBlockByBlockAndTakesThePlotsOfABlockInAnyOrder() {
    TrialLayout layout = TrialLayout.of(yards(3));
    assertThat(layout.walk()).hasSize(5 * 3);
    assertThat(layout.walk().get(0).date()).isEqualTo(LocalDate.of(2026, 4, 1));
    HashSet<List<String>> orders = new HashSet<>();
    for (Stop stop : layout.walk()) {
      if (stop.block() == 1) {
        assertThat(stop.plots()).containsExactlyInAnyOrder("B1-1", "B1-2");
        orders.add(stop.plots());
      }
    }
    assertThat(orders).hasSize(2);
  }

  @Test
  void pegsAreFoundWithTwoTapes() {
    TrialLawn lawn = Plans.lawn("rectangle", Plans.rectangle(0, 0, 20, 10), 0.0);
    LaidLawn laid =
        TrialLayout.of(Plans.plan(Design.SPLIT_YARD, 2, 1, List.of(lawn), 1)).lawns().get(0);
    // Half a metre of guard about x = 10.
    assertThat(laid.pegs()).hasSize(4);
    for (Peg peg : laid.pegs()) {
      TapedPlace at = peg.at();
      assertThat(Math.abs(at.xM() - 10)).isCloseTo(0.25, within(1e-6));
      assertThat(at.fromAM()).isEqualTo(tape(at, laid.fixed().a()));
      assertThat(at.fromBM()).isEqualTo(tape(at, laid.fixed().b()));
    }
  }

  /** To the centimetre. */
  private static double tape(TapedPlace at, Coordinate from) {
    return Math.round(100 * Math.hypot(at.xM() - from.x, at.yM() - from.y)) / 100.0;
  }

  @Test
  void theMowerThrowsAwayFromTheCollectedHalf() {
    for (TrialMower.Discharge discharge :
        List.of(TrialMower.Discharge.LEFT, TrialMower.Discharge.RIGHT)) {
      for (long seed = 0; seed < 8; seed++) {
        TrialLawn lawn =
            new TrialLawn("l", L_SHAPE, List.of(), null, new TrialMower(500, discharge), 30.0);
        LaidLawn laid = TrialLayout.of(Plans.returnedAndCollected(lawn, seed)).lawns().get(0);
        LaidPlot returned = plotOf(laid, "returned");
        LaidPlot collected = plotOf(laid, "collected");
        String sentence = laid.notes().get(2);
        assertThat(sentence).contains("on " + returned.code(), "away from " + collected.code());
        String after = sentence.substring(sentence.indexOf("towards ") + "towards ".length());
        double heading = Double.parseDouble(after.substring(0, after.indexOf('°')));
        double thrown =
            Math.toRadians(heading + (discharge == TrialMower.Discharge.LEFT ? -90 : 90));
        Coordinate from = collected.place().plot().getCentroid().getCoordinate();
        Coordinate to = returned.place().plot().getCentroid().getCoordinate();
        assertThat((to.x - from.x) * Math.sin(thrown) + (to.y - from.y) * Math.cos(thrown))
            .isPositive();
      }
    }
  }

  private static LaidPlot plotOf(LaidLawn lawn, String arm) {
    return lawn.plots().stream()
        .filter(plot -> plot.unit().arm().equals(arm))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void directionsAreToldInWords() {
    assertThat(Compass.name(0)).isEqualTo("north");
    assertThat(Compass.name(-90)).isEqualTo("west");
    assertThat(Compass.words(359.96)).isEqualTo("0° (north)");
  }

  @Test
  void tooManyCoresForAPlotAreRefusedByName() {
    TrialLawn small = Plans.lawn("small", Plans.rectangle(0, 0, 7, 5), 0.0);
    TrialPlan plan =
        Plans.withCores(Plans.plan(Design.SPLIT_YARD, 2, 1, List.of(small), 1), 15, 10);
    assertThatExceptionOfType(NoRoomException.class)
        .isThrownBy(() -> TrialLayout.of(plan))
        .withMessageContaining("small: on 2026-")
        .withMessageContaining("no place is left for core")
        .withMessageContaining("fewer dates of cores");
  }

  @Test
  void whatDoesNotFitIsRefusedByName() {
    TrialLawn small = Plans.lawn("small", Plans.rectangle(0, 0, 8, 6), null);
    assertThatExceptionOfType(NoRoomException.class)
        .isThrownBy(
            () -> TrialLayout.of(Plans.plan(Design.RANDOMISED_BLOCK, 8, 4, List.of(small), 1)))
        .withMessageContaining("small: there is no room for 4 blocks of 8 plots")
        .withMessageContaining("1.50 m wide");
    TrialLawn tiny = Plans.lawn("tiny", Plans.rectangle(0, 0, 2.2, 2.2), null);
    assertThatExceptionOfType(NoRoomException.class)
        .isThrownBy(() -> TrialLayout.of(Plans.plan(Design.SPLIT_YARD, 2, 1, List.of(tiny), 1)))
        .withMessageContaining("tiny: nothing of the");
  }

  @Test
  void everyDesignIsLaidOnARealShape() {
    for (Design design : Design.values()) {
      List<List<String>> allowed =
          design == Design.LISTED
              ? List.of(List.of("t1", "t2", "t2", "t1"), List.of("t2", "t1", "t1", "t2"))
              : List.of();
      int arms = design == Design.LATIN_SQUARE ? 3 : 2;
      int blocks = design == Design.SPLIT_YARD ? 1 : arms;
      TrialPlan base = Plans.plan(Design.RANDOMISED_BLOCK, arms, 2, List.of(holed()), 11);
      PlotRule rule = new PlotRule(3, 1, null, 1, 1);
      if (design.hasSecondFactor()) {
        base = Plans.plan(design, arms, 2, List.of(holed()), 11);
      }
      TrialPlan plan =
          Plans.with(base, new Arrangement(design, blocks, Arrangement.Sides.COIN, allowed, rule));
      TrialLayout layout = TrialLayout.of(plan);
      Geometry turf = layout.lawns().get(0).surface().turf();
      Geometry measurable = layout.lawns().get(0).surface().measurable();
      List<LaidPlot> plots = layout.plots();
      assertThat(plots).as("%s", design).isNotEmpty();
      for (int i = 0; i < plots.size(); i++) {
        Geometry plot = plots.get(i).place().plot();
        assertThat(plot.difference(turf).getArea()).as("%s", design).isLessThan(1e-6);
        Geometry inner = plots.get(i).place().measured();
        assertThat(inner.difference(measurable).getArea()).isLessThan(1e-6);
        assertThat(inner.difference(plot).getArea()).isLessThan(1e-6);
        for (int j = 0; j < i; j++) {
          assertThat(plot.intersection(plots.get(j).place().plot()).getArea()).isLessThan(1e-6);
        }
      }
    }
  }
}
