package leafturn.reports.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.records.InputException;
import leafturn.records.shape.Anchor;
import leafturn.records.shape.Corner;
import leafturn.records.shape.GeoJsonText;
import leafturn.records.shape.GeoJsonText.Feature;
import leafturn.records.shape.Patch;
import leafturn.trials.design.TrialLawn;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.layout.Core;
import leafturn.trials.design.layout.DroppedPlot;
import leafturn.trials.design.layout.LaidLawn;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.Peg;
import leafturn.trials.design.layout.TrialLayout;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * A layout as GeoJSON (RFC 7946): each lawn with its holes, what is kept out of its plots, plots,
 * their measured parts, corners and cores.
 */
public final class LayoutGeoJson {
  private final TrialLayout layout;
  private final List<Feature> features = new ArrayList<>();

  private LayoutGeoJson(TrialLayout layout) {
    this.layout = layout;
  }

  /** The lawns of a plan whose place on the earth nobody has said. */
  public static List<String> nowhere(TrialPlan plan) {
    return plan.lawns().stream()
        .filter(lawn -> lawn.origin() == null)
        .map(TrialLawn::name)
        .toList();
  }

  /**
   * The text of the file.
   *
   * @throws InputException naming the lawns whose place on the earth nobody has said
   */
  public static String of(TrialLayout layout) {
    List<String> nowhere = nowhere(layout.plan());
    if (!nowhere.isEmpty()) {
      throw new InputException(
          "These lawns have no place on the earth: %s.".formatted(String.join("; ", nowhere)));
    }
    LayoutGeoJson file = new LayoutGeoJson(layout);
    layout.lawns().forEach(file::lawn);
    return GeoJsonText.features(file.features);
  }

  private void lawn(LaidLawn lawn) {
    TrialLawn.Origin origin = lawn.lawn().origin();
    if (origin == null) {
      return;
    }
    Anchor anchor = new Anchor(origin.longitudeDeg(), origin.latitudeDeg());
    add(said("lawn", lawn), anchor, Patch.allOf(lawn.lawn().turf()), null);
    for (Geometry bed : lawn.lawn().keepOut()) {
      add(said("kept out", lawn), anchor, Patch.allOf(bed), null);
    }
    for (LaidPlot plot : lawn.plots()) {
      Map<String, Object> said = said("plot", lawn);
      said.put("plot", plot.code());
      said.put("block", plot.unit().block());
      said.put("arm", plot.unit().arm());
      if (plot.unit().secondArm() != null) {
        said.put("secondArm", plot.unit().secondArm());
      }
      add(said, anchor, Patch.allOf(plot.place().plot()), null);
      Map<String, Object> measured = said("measured", lawn);
      measured.put("plot", plot.code());
      add(measured, anchor, Patch.allOf(plot.place().measured()), null);
      layout.cores().stream()
          .filter(core -> core.plot().equals(plot.code()))
          .forEach(core -> core(lawn, anchor, core));
    }
    for (DroppedPlot dropped : lawn.dropped()) {
      Map<String, Object> said = said("dropped", lawn);
      said.put("mark", dropped.mark());
      said.put("why", dropped.why());
      add(said, anchor, Patch.allOf(dropped.place().plot()), null);
    }
    lawn.pegs().forEach(peg -> peg(lawn, anchor, peg));
    fixed(lawn, anchor, "A", lawn.fixed().a());
    fixed(lawn, anchor, "B", lawn.fixed().b());
  }

  private static Map<String, Object> said(String kind, LaidLawn lawn) {
    Map<String, Object> said = new LinkedHashMap<>();
    said.put("kind", kind);
    said.put("lawn", lawn.lawn().name());
    return said;
  }

  private void core(LaidLawn lawn, Anchor anchor, Core core) {
    Map<String, Object> said = said("core", lawn);
    said.put("plot", core.plot());
    said.put("date", core.date());
    said.put("core", core.number());
    said.put("bag", core.bag());
    add(said, anchor, List.of(), new Corner(core.xM(), core.yM()));
  }

  private void peg(LaidLawn lawn, Anchor anchor, Peg peg) {
    Map<String, Object> said = said("corner", lawn);
    said.put("corner", peg.number());
    said.put("fromAM", peg.at().fromAM());
    said.put("fromBM", peg.at().fromBM());
    add(said, anchor, List.of(), new Corner(peg.at().xM(), peg.at().yM()));
  }

  private void fixed(LaidLawn lawn, Anchor anchor, String name, Coordinate place) {
    Map<String, Object> said = said("fixed corner", lawn);
    said.put("corner", name);
    add(said, anchor, List.of(), new Corner(place.x, place.y));
  }

  private void add(
      Map<String, Object> said, Anchor anchor, List<Patch> patches, @Nullable Corner place) {
    features.add(new Feature(said, anchor, patches, place));
  }
}
