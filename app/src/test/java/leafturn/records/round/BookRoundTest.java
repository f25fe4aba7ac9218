package leafturn.records.round;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;
import leafturn.advice.call.Call;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.LawnWithoutCall;
import leafturn.advice.call.MowingCall;
import leafturn.advice.call.RoundOfLawns;
import leafturn.model.lawn.SiteClimate;
import leafturn.quantity.Units;
import leafturn.records.ExampleWeather;
import leafturn.records.Examples;
import leafturn.records.LawnFile;
import leafturn.records.LawnReading;
import leafturn.records.LogFile;
import leafturn.records.RoundFile;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.BookTitle;
import leafturn.records.book.BookUnavailableException;
import leafturn.records.book.BookWriting;
import leafturn.records.book.Engine;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.Property;
import leafturn.records.sheet.WeatherStation;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The round of a book: the same calls as from files, and none that is out of date. */
class BookRoundTest {
  private static final String LAWN = "linden-house-back";
  private static final Duration PATIENCE = Duration.ofMinutes(1);
  private static final LocalDate ON = LocalDate.of(2015, 5, 28);
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2015-06-01T11:00:00Z"), ZoneOffset.UTC);

  @TempDir private Path folder;

  @Test
  void theCallsAreThoseOfTheFiles() {
    try (Book book = demo(Engine.H2);
        BookRound rounds = new BookRound(book, CLOCK)) {
      RoundOfLawns round = rounds.today();
      assertThat(round.adviserName()).isEqualTo("Wren Ashdown");
      assertThat(round.today()).isEqualTo(ON);
      assertThat(round.withoutCall()).isEmpty();
      for (RoundFile.Entry entry : RoundFile.read(Examples.file("round.json")).lawns()) {
        Call called = round.lawn(entry.slug()).orElseThrow().call();
        assertThat(called.noting(List.of())).isEqualTo(fromFiles(entry, called));
      }
      assertThat(round.lawns()).hasSize(6);
    }
  }

  private static Call fromFiles(RoundFile.Entry entry, Call called) {
    LawnReading lawn = LawnFile.read(Examples.file(entry.description()));
    SiteClimate climate = new SiteClimate(ExampleWeather.newYork(), lawn.lawn().site());
    Call call =
        MowingCall.of(
            lawn.lawn(),
            climate,
            LogFile.read(Examples.file(entry.log())).entries(),
            ON,
            CallRules.standard());
    int own = called.notes().size() - call.notes().size();
    return call.noting(called.notes().subList(0, own));
  }

  @Test
  void aLawnIsToldInWords() {
    try (Book book = demo(Engine.H2);
        BookRound rounds = new BookRound(book, CLOCK)) {
      LawnOnRound front = rounds.today().lawn("linden-house-front").orElseThrow();
      assertThat(front.lastEntry()).isEqualTo("Mown on 21 May, collected");
      assertThat(front.propertyName()).isEqualTo("Linden House");
      assertThat(front.description().soil())
          .isEqualTo("holds 130 mm of water for plants in a metre, 5 % organic matter");
    }
  }

  @Test
  void aLawnWithoutWeatherSaysSoAndTheOthersKeepTheirCalls() {
    try (Book book = demo(Engine.H2);
        BookRound rounds = new BookRound(book, CLOCK)) {
      book.write("test", writing -> follow(writing, "linden-house", null));
      RoundOfLawns round = rounds.today();
      assertThat(round.lawns()).hasSize(4);
      assertThat(round.withoutCall())
          .extracting(LawnWithoutCall::slug)
          .containsExactly("linden-house-front", "linden-house-back");
      assertThat(round.withoutCall().get(0).why()).startsWith("There is no weather");
    }
  }

  @Test
  void aStationWithoutADayIsToldByItsName() {
    try (Book book = demo(Engine.H2);
        BookRound rounds = new BookRound(book, CLOCK)) {
      book.write(
          "test",
          writing -> {
            WeatherStation bare = new WeatherStation("Roof", "own", 2, null, null, null, false);
            writing.add(Kind.STATION, id(1), bare);
            return follow(writing, "linden-house", id(1));
          });
      assertThat(rounds.today().withoutCall().get(0).why())
          .isEqualTo("Roof: no day has temperatures and rain; add its record.");
    }
  }

  @Test
  void whereTheRecordEndsEarlierDaysStandInAndThatIsSaid() {
    Clock later = Clock.fixed(Instant.parse("2017-05-28T16:00:00Z"), ZoneOffset.UTC);
    try (Book book = demo(Engine.H2);
        BookRound rounds = new BookRound(book, later)) {
      book.write("test", writing -> title(writing, null));
      Call call = call(rounds);
      assertThat(call.on()).isEqualTo(LocalDate.of(2017, 5, 28));
      assertThat(call.outlook().measured()).isFalse();
      assertThat(call.notes())
          .contains(
              "No weather since 31 December 2015: the same days of earlier years stand in.",
              "Nobody measured yesterday's weather: heights rest on days that stand in, and today's"
                  + " weather is that of the possible seasons.");
      assertThat(call.possibleSeasons().madeFrom())
          .startsWith("the days from around 28 May in each year from 2012 to 2015");
    }
  }

  @Test
  void eachPropertyHasTheDayOfItsTimeZone() {
    Clock evening = Clock.fixed(Instant.parse("2015-05-28T11:00:00Z"), ZoneId.of("UTC"));
    try (Book book = demo(Engine.H2);
        BookRound rounds = new BookRound(book, evening)) {
      book.write(
          "test",
          writing -> {
            title(writing, null);
            moveTo(writing, "linden-house", "Pacific/Kiritimati");
            return moveTo(writing, "heron-bank", "Pacific/Pago_Pago");
          });
      RoundOfLawns round = rounds.today();
      assertThat(round.lawn(LAWN).orElseThrow().call().on()).isEqualTo(ON.plusDays(1));
      assertThat(round.lawn("mill-race-orchard").orElseThrow().call().on()).isEqualTo(ON);
    }
  }

  @Test
  void someLawnsAloneMakeARoundToo() {
    try (Book book = demo(Engine.H2);
        BookRound rounds = new BookRound(book, CLOCK)) {
      String property = rounds.register().property("heron-bank").orElseThrow().id();
      RoundOfLawns round =
          rounds.today(register -> register.only(property::equals), Units.METRIC, PATIENCE);
      assertThat(round.lawns())
          .extracting(LawnOnRound::slug)
          .containsExactly("heron-bank-play", "heron-bank-verge");
    }
  }

  @Test
  void aBookThatIsGoneIsTold() {
    BookPlace place = Engine.H2.newPlace(folder);
    Book book = Book.open(place, CLOCK);
    DemoBook.write(book);
    try (BookRound rounds = new BookRound(book, CLOCK)) {
      book.close();
      assertThatThrownBy(rounds::today)
          .isInstanceOf(BookUnavailableException.class)
          .hasMessageContaining("cannot be read now");
    }
  }

  private Book demo(Engine engine) {
    Book book = Book.open(engine.newPlace(folder), CLOCK);
    DemoBook.write(book);
    return book;
  }

  private static Call call(BookRound rounds) {
    return rounds
        .today(register -> register.onlyLawn(LAWN), Units.METRIC, PATIENCE)
        .lawns()
        .get(0)
        .call();
  }

  private static BookTitle title(BookWriting writing, @Nullable LocalDate day) {
    BookTitle title = new BookTitle("Wren Ashdown", "", day);
    BookTitle.put(writing, title);
    return title;
  }

  private static Sheet<Property> follow(
      BookWriting writing, String address, @Nullable String station) {
    return revise(writing, address, old -> changed(old, old.timeZone(), station));
  }

  private static Sheet<Property> moveTo(BookWriting writing, String address, String zone) {
    return revise(writing, address, old -> changed(old, zone, old.station()));
  }

  private static Sheet<Property> revise(
      BookWriting writing, String address, UnaryOperator<Property> change) {
    Sheet<Property> sheet = writing.at(Kind.PROPERTY, address).orElseThrow();
    Property changed = change.apply(sheet.content());
    return writing.revise(Kind.PROPERTY, sheet.id(), sheet.version(), changed);
  }

  private static Property changed(Property old, String zone, @Nullable String station) {
    return new Property(
        old.name(),
        old.address(),
        old.latitudeDeg(),
        old.longitudeDeg(),
        old.elevationM(),
        zone,
        station,
        old.note());
  }

  private static String id(int number) {
    return new UUID(0x4000, 0x8000000000000000L + number).toString();
  }
}
