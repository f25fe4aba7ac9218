package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.zip.GZIPOutputStream;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.LawnWithoutCall;
import leafturn.advice.call.RoundOfLawns;
import leafturn.quantity.Units;
import leafturn.records.people.Person;
import leafturn.records.people.Role;
import leafturn.records.people.Visitor;
import org.junit.jupiter.api.Test;

/** A round of many lawns: what is shown in full, and what the first page weighs. */
class RoundWeightTest {
  private static final int LAWNS = 200;
  private static final int MOST_BYTES = 200_000;
  private static final Pattern ASSET = Pattern.compile("/assets/([0-9a-f]+)/([\\w.-]+)");

  private final Assets assets = new Assets();

  @Test
  void theFirstPageOfTwoHundredLawnsStaysUnderTwoHundredKilobytesWithAllItNeeds() {
    String page = page(round(LAWNS, List.of()));
    long bytes = onTheWire("text/html", page.getBytes(StandardCharsets.UTF_8));
    Matcher asset = ASSET.matcher(page);
    List<String> counted = new ArrayList<>();
    while (asset.find()) {
      if (!counted.contains(asset.group(2))) {
        counted.add(asset.group(2));
        Assets.Asset file = assets.find(asset.group(1), asset.group(2)).orElseThrow();
        bytes += onTheWire(file.type, file.content);
      }
    }
    assertThat(counted)
        .containsAll(Styles.of("round"))
        .contains("literata.woff2")
        .doesNotContain("forms.css", "sheets.css");
    assertThat(bytes).isLessThan(MOST_BYTES);
  }

  @Test
  void theMostUrgentStandInFullAndEveryOtherInALine() {
    RoundOfLawns round = round(LAWNS, List.of());
    RoundPage shown = new RoundPage(round);
    assertThat(shown.toDecide()).hasSize(12);
    assertThat(shown.toDecide().size() + shown.toDecideToo().size() + shown.toLeave().size())
        .isEqualTo(LAWNS);
    String page = page(round);
    assertThat(round.lawns()).allMatch(lawn -> page.contains("/lawns/" + lawn.slug() + "\""));
  }

  @Test
  void callsThatAreUnderWayAreCountedAndTheHeadlineSaysSoFar() {
    LawnWithoutCall soon = new LawnWithoutCall("soon", "Mill", "Green", "soon", true);
    LawnWithoutCall never = new LawnWithoutCall("never", "Mill", "Bank", "No weather.", false);
    String page = page(round(0, List.of(soon, never)));
    assertThat(page)
        .contains("Nothing needs a decision today so far.", "The advice for one lawn is being")
        .contains("Bank, Mill</a>: No weather.");
  }

  private String page(RoundOfLawns round) {
    Person maud = new Person(Person.LOCAL_OWNER, "Maud", Role.OWNER, Units.METRIC, false, false, 1);
    Guest guest = new Guest(new Visitor(maud, true, Set.of()), "token");
    Frame frame = new Frame("Round", "", "made up", round.today(), guest, assets);
    return new Pages()
        .filled("round.jte", frame, Map.of("page", new RoundPage(round), "warnings", List.of()));
  }

  private static RoundOfLawns round(int lawns, List<LawnWithoutCall> withoutCall) {
    RoundOfLawns sample = SampleRound.get();
    List<LawnOnRound> many =
        IntStream.range(0, lawns)
            .mapToObj(i -> another(sample.lawns().get(i % sample.lawns().size()), i))
            .toList();
    return new RoundOfLawns("Maud", sample.today(), "made up", "", many, withoutCall);
  }

  private static LawnOnRound another(LawnOnRound lawn, int number) {
    return new LawnOnRound(
        lawn.slug() + "-" + number,
        lawn.propertyName() + " " + number,
        lawn.lawnName(),
        lawn.description(),
        lawn.lastEntry(),
        lawn.call());
  }

  /** Bytes as sent: text is compressed on the way, fonts are compressed already. */
  private static long onTheWire(String type, byte[] content) {
    if (type.startsWith("font/") || type.startsWith("image/png")) {
      return content.length;
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream compressed = new GZIPOutputStream(bytes)) {
      compressed.write(content);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.size();
  }
}
