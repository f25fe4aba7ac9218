package leafturn.records.archive;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import leafturn.records.InputException;
import leafturn.records.MeasuredWeather;
import leafturn.records.WeatherFile;
import leafturn.records.book.Book;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;
import leafturn.records.book.StationDay;
import leafturn.records.book.StationDays;
import leafturn.records.people.People;
import leafturn.records.people.Person;
import leafturn.records.sheet.PhotographSheet;

/**
 * Reads an archive into an empty book: everything is checked first, and then all of it is written
 * or nothing.
 */
public final class BookImport {
  private final ZipReading archive;
  private final BookWriting book;

  private BookImport(ZipReading archive, BookWriting book) {
    this.archive = archive;
    this.book = book;
  }

  /**
   * Reads an archive of any version of the format up to ours.
   *
   * @param opening opens an empty book; asked only when the archive is sound, and closed then
   * @throws InputException with every fault of the archive, or when the book is not empty; nothing
   *     is written then
   * @throws leafturn.records.book.BookUnavailableException when the book cannot be opened or
   *     written
   */
  public static Manifest read(Supplier<Book> opening, Path file) {
    try (ZipReading archive = ZipReading.open(file)) {
      ArchiveCheck.run(archive);
      try (Book book = opening.get()) {
        refuseIfNotEmpty(book);
        return book.write(
            "Import",
            writing -> {
              new BookImport(archive, writing).write();
              return archive.manifest();
            });
      }
    }
  }

  /**
   * Reads an archive whole and says what is wrong with it, without writing anywhere.
   *
   * @throws InputException with every fault
   */
  public static Manifest check(Path file) {
    try (ZipReading archive = ZipReading.open(file)) {
      ArchiveCheck.run(archive);
      return archive.manifest();
    }
  }

  /** What an archive says of itself, without reading the rest. */
  static Manifest look(Path file) {
    try (ZipReading archive = ZipReading.open(file)) {
      return archive.manifest();
    }
  }

  private static void refuseIfNotEmpty(Book book) {
    if (!book.<Boolean>read(BookImport::isEmpty)) {
      throw notEmpty(book.place().shown());
    }
  }

  private static InputException notEmpty(String book) {
    return new InputException(
        "The book %s is not empty; an archive is imported into a new book only, so give a new folder or database."
            .formatted(book));
  }

  /** True when nothing was entered and nobody added since it was begun. */
  private static boolean isEmpty(BookReading book) {
    long sheets = book.handle().createQuery("select count(*) from sheet").mapTo(Long.class).one();
    return sheets == 0
        && People.all(book).stream()
            .allMatch(person -> person.id().equals(Person.LOCAL_OWNER) && !person.hasPassword());
  }

  private void write() {
    if (!isEmpty(book)) {
      throw new InputException("The book is not empty any more; somebody wrote to it meanwhile.");
    }
    if (archive.manifest().member(Members.BOOK) != null) {
      BookRow.read(archive.text(Members.BOOK, ArchiveCheck.SMALL_BYTES)).put(book);
    }
    SheetRows rows = new SheetRows(book);
    SheetMerge.forEach(archive, placed -> rows.add(placed.sheet()))
        .forEach(faults -> faults.throwIfAny());
    rows.finish();
    if (archive.manifest().member(Members.PEOPLE) != null) {
      people();
    }
    for (ArchiveMember member : archive.manifest().members()) {
      if (member.name().startsWith("weather/")) {
        weather(member.name());
      } else if (member.name().startsWith("photographs/")) {
        byte[] picture = archive.bytes(member.name(), PhotographSheet.MOST_BYTES);
        StoredPhotographs.put(book, Members.idIn(member.name()), picture);
      }
    }
    book.raise("register");
    book.raise("rules");
  }

  private void people() {
    book.handle().execute("delete from person");
    PersonLine.forEach(archive, (person, faults) -> person.put(book)).throwIfAny();
  }

  private void weather(String name) {
    List<StationDay> days =
        MeasuredWeather.read(archive.text(name, WeatherFile.LIMIT_BYTES)).stream()
            .map(day -> new StationDay(day.day(), day.values()))
            .toList();
    StationDays.put(book, Members.idIn(name), days);
  }
}
