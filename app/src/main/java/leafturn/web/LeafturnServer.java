package leafturn.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.HandlerType;
import io.javalin.util.JavalinBindException;
import java.net.URI;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import leafturn.records.InputException;
import leafturn.records.book.Book;
import leafturn.records.people.FrontDoor;
import leafturn.records.people.Owners;
import leafturn.records.people.People;

/** Serves a book as pages. */
public final class LeafturnServer implements AutoCloseable {
  private static final String LOOPBACK = "127.0.0.1";

  private final Listening listening;
  private final Desk desk;
  private final RequestGuard guard;
  private final Door door;
  private List<Routes.Route> routes = List.of();
  private final Javalin javalin;
  private final Preparation preparation;
  private final PlanDesk plans = new PlanDesk();

  private LeafturnServer(Book book, Clock clock, Listening listening) {
    this.listening = listening;
    desk = new Desk(book, clock);
    guard = new RequestGuard(listening);
    door = new Door(book, clock, listening, guard);
    javalin = Javalin.create(this::configure);
    preparation = new Preparation(desk.rounds());
  }

  /**
   * Starts serving and returns at once.
   *
   * @param book the book, which stays open as long as it is served
   * @param clock tells the time, and the time zone of a book without properties
   * @param listening where to listen, and how visitors come
   * @throws CannotListenException if the port is taken or not allowed; its message says what to do
   * @throws InputException if others are to be served and nobody can sign in
   */
  public static LeafturnServer start(Book book, Clock clock, Listening listening) {
    if (!listening.isForThisMachineAlone() && !book.<Boolean>read(People::haveAccounts)) {
      throw Owners.missing();
    }
    LeafturnServer server = new LeafturnServer(book, clock, listening);
    server.preparation.start(); // while the server sets itself up
    try {
      server.javalin.start();
    } catch (JavalinBindException e) {
      server.preparation.close();
      server.desk.close();
      throw listening.taken(e);
    }
    return server;
  }

  /** As {@link #start(Book, Clock, Listening)}, for this machine alone. */
  public static LeafturnServer start(Book book, Clock clock, int port) {
    return start(book, clock, Listening.onLoopback(port));
  }

  /** Where the first page is. */
  public URI address() {
    String host =
        listening.names().stream()
            .filter(name -> !name.startsWith("*") && !listening.isForThisMachineAlone())
            .min(Comparator.comparing(LeafturnServer::isNumbers))
            .orElse(LOOPBACK);
    boolean port = listening.proxy() == null;
    return URI.create(listening.scheme() + "://" + host + (port ? ":" + javalin.port() : "") + "/");
  }

  /** True for a network address, which a certificate may name beside the names people ask for. */
  private static boolean isNumbers(String name) {
    return name.matches("[0-9.]+|\\[.*");
  }

  /** The port it listens on. */
  int port() {
    return javalin.port();
  }

  /** Every address that is answered, with what it asks. */
  List<Routes.Route> routes() {
    return routes;
  }

  /** Every way and path the server beneath answers, for instance "GET /lawns". */
  List<String> answered() {
    return javalin.unsafe.internalRouter.allHttpHandlers().stream()
        .map(handler -> handler.endpoint)
        .filter(endpoint -> !endpoint.method.equals(HandlerType.BEFORE))
        .map(endpoint -> endpoint.method + " " + endpoint.path)
        .toList();
  }

  /** Stops serving; the book stays open. */
  @Override
  public void close() {
    preparation.close();
    plans.close();
    javalin.stop();
    desk.close();
  }

  private void configure(JavalinConfig config) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
    config.jetty.modifyServer(server -> server.setErrorHandler(new QuietErrors()));
    Connectors.set(config, listening);
    config.http.prefer405over404 = true;
    config.http.maxRequestSize = Intake.FORM.mostBytes();
    config.jetty.multipartConfig.maxTotalRequestSize(Intake.IMPORT.mostBytes(), SizeUnit.BYTES);
    config.jetty.multipartConfig.maxFileSize(Intake.IMPORT.mostBytes(), SizeUnit.BYTES);
    config.jetty.multipartConfig.maxInMemoryFileSize(1, SizeUnit.MB);
    config.routes.before(guard::check);
    Routes opened = new Routes(config.routes, door);
    rooms().forEach(room -> room.open(opened));
    routes = opened.all();
    new Faulty(desk).answerIn(config);
  }

  private List<Room> rooms() {
    return Stream.of(ofPeople(), ofLawns(), ofTrials(), ofSheets(), ofTheBook())
        .flatMap(List::stream)
        .toList();
  }

  private List<Room> ofPeople() {
    FrontDoor frontDoor = new FrontDoor(desk.book(), desk.clock());
    return List.of(
        new SignInRoom(desk, door, frontDoor),
        new InvitationRoom(desk, door),
        new PeopleRoom(desk, door),
        new PersonRoom(desk, door),
        new MyRoom(desk, door, frontDoor));
  }

  private List<Room> ofLawns() {
    return List.of(
        new RoundRoom(desk),
        new LawnRoom(desk, new SheetDesk(desk)),
        new PastAdviceRoom(desk),
        new SeasonRoom(desk, plans),
        new PropertyRoom(desk),
        new LogRoom(desk),
        new QueueRoom(desk),
        new PhoneRoom(desk),
        new CalendarRoom(desk, door));
  }

  private List<Room> ofTrials() {
    return List.of(
        new TrialPlanRoom(desk),
        new TrialRoom(desk),
        new TrialSizeRoom(desk),
        new TrialEntryRoom(desk),
        new TrialReadingsRoom(desk),
        new TrialEventRoom(desk),
        new TrialLayoutRoom(desk),
        new TrialFindingsRoom(desk),
        new LaboratoryRoom(desk));
  }

  private List<Room> ofSheets() {
    SheetDesk sheets = new SheetDesk(desk);
    SheetRoom sheetRoom = new SheetRoom(desk, sheets);
    NewSheetRoom newSheetRoom = new NewSheetRoom(desk, sheets);
    return List.of(
        new PhotographRoom(desk),
        new VisitPhotographRoom(desk, sheets),
        newSheetRoom,
        sheetRoom,
        new PlaceRoom(desk, sheets, sheetRoom, newSheetRoom));
  }

  private List<Room> ofTheBook() {
    return List.of(
        new RulesRoom(desk),
        new BookRoom(desk),
        new LogFilesRoom(desk),
        new ImportRoom(desk),
        new WeatherRoom(desk),
        new StationDayRoom(desk),
        new ForecastRoom(desk),
        new SourcesRoom(desk),
        new AssetRoom(desk.assets()));
  }
}
