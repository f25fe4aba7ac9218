package leafturn.records.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import leafturn.records.InputException;
import leafturn.records.Mutations;
import leafturn.records.SourceText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GeoJsonFileTest {
  private static final long SEED = 20_150_530;
  private static final String RING =
      "[[-20.001,40],[-20,40],[-20,40.001],[-20.001,40.001],[-20.001,40]]";

  @Test
  void aPolygonMayComeAloneInAFeatureOrInACollection() {
    String polygon = "{\"type\":\"Polygon\",\"coordinates\":[" + RING + "]}";
    String feature =
        "{\"type\":\"Feature\",\"properties\":{\"name\":\"Back lawn\",\"height\":null},"
            + "\"geometry\":"
            + polygon
            + "}";
    String bare = "{\"type\":\"Feature\",\"properties\":null,\"geometry\":" + polygon + "}";
    String collection =
        "{\"type\":\"FeatureCollection\",\"features\":[" + feature + "," + bare + "]}";
    Outline outline = read(polygon).get(0).outline();
    assertThat(outline.anchor()).isEqualTo(new Anchor(-20.001, 40));
    assertThat(read(polygon)).containsExactly(new NamedOutline(null, outline));
    assertThat(read(feature)).containsExactly(new NamedOutline("Back lawn", outline));
    assertThat(read(collection))
        .containsExactly(new NamedOutline("Back lawn", outline), new NamedOutline(null, outline));
    assertThatThrownBy(() -> GeoJsonFile.readOne(new SourceText("lawn", collection)))
        .hasMessage("lawn: it holds 2 outlines; give a file with one.");
  }

  @Test
  void altitudesClockwiseEdgesAndOpenRingsAreTaken() {
    String other =
        "{\"type\":\"MultiPolygon\",\"coordinates\":[[["
            + "[-20.001,40,12],[-20.001,40.001,12],[-20,40.001,12.5],[-20,40,12]]]]}";
    String usual = "{\"type\":\"Polygon\",\"coordinates\":[" + RING + "]}";
    assertThat(read(other)).isEqualTo(read(usual));
  }

  @Test
  void theNameOfTheSameSystemIsTaken() {
    String old =
        "{\"type\":\"Polygon\",\"crs\":{\"type\":\"name\",\"properties\":"
            + "{\"name\":\"urn:ogc:def:crs:OGC:1.3:CRS84\"}},\"coordinates\":["
            + RING
            + "]}";
    assertThat(read(old)).hasSize(1);
  }

  @Test
  void whatIsWrittenIsReadAgain() {
    RandomOutlines outlines = new RandomOutlines(74);
    for (int i = 0; i < 300; i++) {
      NamedOutline outline = new NamedOutline("Lawn \"" + i + "\"", anchored(outlines.next()));
      assertThat(read(GeoJsonText.of(List.of(outline)))).containsExactly(outline);
    }
  }

  @Test
  void withoutOurAnchorTheShapeIsTheSameOnAnotherGrid() {
    RandomOutlines outlines = new RandomOutlines(75);
    for (int i = 0; i < 100; i++) {
      Outline outline = anchored(outlines.next());
      String text = GeoJsonText.of(List.of(new NamedOutline(null, outline)));
      Outline other = read(text.replace("anchorL", "l")).get(0).outline();
      assertThat(other.areaM2()).isCloseTo(outline.areaM2(), within(2e-4 * outline.areaM2()));
      assertThat(other.bounds().westM()).isBetween(-0.1, 0.2);
      assertThat(other.bounds().southM()).isBetween(-0.1, 0.2);
    }
  }

  @Test
  void edgesAreWrittenAnticlockwiseHolesClockwiseAndBothClosed() {
    Ring edge = Ring.of(0, 0, 0, 8, 12, 8, 12, 0);
    Ring hole = Ring.of(2, 2, 5, 2, 5, 4);
    Outline outline = new Outline(List.of(new Patch(edge, List.of(hole))), new Anchor(0, 0));
    String text = GeoJsonText.of(List.of(new NamedOutline(null, outline)));
    assertThat(text)
        .contains("\"coordinates\":[[[0.0,0.0],[1.07798E-4,0.0],")
        .contains("[0.0,0.0]],[[");
    List<Ring> rings = read(text).get(0).outline().rings();
    assertThat(rings.get(0).signedAreaM2()).isPositive();
    assertThat(rings.get(1).signedAreaM2()).isNegative();
  }

  @Test
  void anOutlineWithoutPlaceIsNotWritten() {
    NamedOutline outline = new NamedOutline("Back lawn", Outline.rectangle(4, 4));
    assertThatThrownBy(() -> GeoJsonText.of(List.of(outline)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Back lawn");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[] | it holds a list; a JSON object is expected",
        "{'type':'Point','coordinates':[1,2]} | type: \"Point\" is no outline; valid names are",
        "{'type':'polygon'} | did you mean Polygon?",
        "{} | type: it is missing; give Polygon or MultiPolygon or Feature or FeatureCollection",
        "{'type':'Feature','geometry':null} | geometry: there is no geometry",
        "{'type':'FeatureCollection','features':[]} | features: there are none",
        "{'type':'FeatureCollection','features':[{'type':'Polygon'}]} | valid names are Feature.",
        "{'type':'Polygon'} | coordinates: it is missing",
        "{'type':'Polygon','coordinates':[]} | coordinates: there is no ring",
        "{'type':'MultiPolygon','coordinates':[]} | coordinates: it has no corners",
        "{'type':'Polygon','coordinates':[[[0,0],[1,1]]]} | coordinates: it reaches over more than",
        "{'type':'Polygon','coordinates':[[[0,0],[0.001,0.001]]]} | coordinates[0]: it has 2 corners",
        "{'type':'Polygon','coordinates':[[[0,0],['a',1]]]} | coordinates[0][1]: a list is no pos",
        "{'type':'Polygon','coordinates':[[[0,0],[1e999,1]]]} | coordinates[0][1]: a list is no pos",
        "{'type':'Polygon','coordinates':[[[40,-100]]]} | the two seem to be swapped",
        "{'type':'Polygon','coordinates':[[[120,-100]]]} | then a latitude from -85 to 85",
        "{'type':'Polygon','coordinates':[[[500000,4649776]]]} | are no degrees; GeoJSON gives WGS84",
        "{'type':'Polygon','coordinates':[[[10,89]]]} | too near to a pole",
        "{'type':'Polygon','coordinates':[[[179.999,0],[-179.999,0],[-179.999,0.001]]]}"
            + " | an outline across the 180th meridian cannot be read",
        "{'type':'Polygon','coordinates':[[[0,0],[0.001,0.001],[0.001,0],[0,0.001]]]}"
            + " | coordinates[0]: its line crosses or touches itself near longitude 0.0005, latitude",
        "{'type':'Polygon','coordinates':[[[0,0],[0.001,0],[0.001,0.001]],[[0,1e-3],[0,1.1e-3],"
            + "[1e-4,1e-3]]]} | coordinates[1]: this hole reaches outside the edge near longitude 0,",
        "{'type':'Polygon','crs':{'properties':{'name':'EPSG:3857'}},'coordinates':[]}"
            + " | crs: another coordinate system is named",
        "{'type':'Polygon','coordinates':[[[0,0],[5e-6,0],[5e-6,5e-6]]]} | its area is 0.154 m²",
      })
  void aFaultNamesItsPlace(String json, String sentence) {
    assertThatThrownBy(() -> read(json.replace('\'', '"')))
        .isInstanceOf(InputException.class)
        .hasMessageStartingWith("lawn.geojson")
        .hasMessageContaining(sentence);
  }

  @Test
  void aSpoiltFileIsReadOrRefused() {
    RandomOutlines outlines = new RandomOutlines(76);
    int refused = 0;
    for (int i = 0; i < 5000; i++) {
      String text = GeoJsonText.of(List.of(new NamedOutline("Lawn", anchored(outlines.next()))));
      String spoilt = new Mutations(SEED + i).spoil(text);
      try {
        assertThat(read(spoilt)).as("seed %d + %d", SEED, i).isNotEmpty();
      } catch (InputException e) {
        assertThat(e.faults())
            .as("seed %d + %d", SEED, i)
            .isNotEmpty()
            .allSatisfy(fault -> assertThat(fault).startsWith("lawn.geojson").hasLineCount(1));
        refused++;
      }
    }
    assertThat(refused).isBetween(1000, 4999);
  }

  @Test
  void numbersAreWrittenTheSameInEveryLanguage() {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.GERMANY);
    try {
      Outline outline = Outline.rectangle(4.5, 4).anchoredAt(new Anchor(10.5, 50.5));
      NamedOutline named = new NamedOutline(null, outline);
      assertThat(read(GeoJsonText.of(List.of(named)))).containsExactly(named);
    } finally {
      Locale.setDefault(before);
    }
  }

  private static Outline anchored(Outline outline) {
    return outline.anchoredAt(
        Objects.requireNonNullElse(outline.anchor(), new Anchor(-20.5, 40.25)));
  }

  private static List<NamedOutline> read(String text) {
    return GeoJsonFile.read(new SourceText("lawn.geojson", text));
  }
}
