package leafturn.records.archive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.MeasuredWeather;
import leafturn.records.WeatherFile;
import leafturn.records.people.Person;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.PhotographSheet;

/** Checks all that an archive holds before anything of it is written to a book. */
final class ArchiveCheck {
  static final int SMALL_BYTES = 10_000_000;

  private final ZipReading archive;
  private final Faults faults;
  private final Map<String, Kind<?>> kinds = new HashMap<>();
  private final Set<String> addresses = new HashSet<>();
  private final Map<String, PhotographSheet> pictures = new HashMap<>();
  private final Set<String> personIds = new HashSet<>();
  private final Set<String> personNames = new HashSet<>();
  private final List<Reference> ahead = new ArrayList<>();
  private long sheets;
  private long versions;
  private long weatherDays;
  private long people;
  private long photographs;

  /** A sheet names another that did not come before it. */
  private record Reference(SheetMerge.Placed from, References.Named to) {}

  private ArchiveCheck(ZipReading archive) {
    this.archive = archive;
    this.faults = new Faults(archive.name());
  }

  /**
   * Checks an archive.
   *
   * @throws InputException with all faults
   */
  static void run(ZipReading archive) {
    archive.checkWhole();
    ArchiveCheck check = new ArchiveCheck(archive);
    List<String> all = new ArrayList<>();
    List<Faults> bySheets = SheetMerge.forEach(archive, check::sheet);
    check.ahead.forEach(check::mustBeThere);
    check.others(all);
    bySheets.forEach(faults -> collect(faults::throwIfAny, all));
    if (all.isEmpty()) {
      check.counts();
    }
    collect(check.faults::throwIfAny, all);
    if (!all.isEmpty()) {
      throw new InputException(all);
    }
  }

  private void sheet(SheetMerge.Placed placed) {
    SheetLine<?> sheet = placed.sheet();
    sheets++;
    versions += sheet.versions().size();
    if (sheet.entry() != sheets) {
      placed.fault(
          "entry",
          "the entries of all files must run from 1 without holes; %d is next.".formatted(sheets));
    }
    if (kinds.putIfAbsent(sheet.id(), sheet.kind()) != null) {
      placed.fault("id", Faults.quoted(sheet.id()) + " stands in the archive already.");
    }
    Content content = sheet.content();
    if (content instanceof PhotographSheet photograph) {
      pictures.put(sheet.id(), photograph);
    }
    String address = content.address();
    if (address != null && !addresses.add(address)) {
      placed.fault(
          "address", Faults.quoted(address) + " is taken by another sheet of the archive.");
    }
    for (References.Named named : References.belonging(content)) {
      if (!named.kind().equals(kinds.get(named.id()))) {
        ahead.add(new Reference(placed, named));
      }
    }
  }

  private void mustBeThere(Reference reference) {
    References.Named to = reference.to();
    if (!to.kind().equals(kinds.get(to.id()))) {
      reference
          .from()
          .fault(
              to.field(),
              "there is no %s %s in the archive.".formatted(to.kind(), Faults.quoted(to.id())));
    }
  }

  private void others(List<String> all) {
    for (ArchiveMember member : archive.manifest().members()) {
      String name = member.name();
      if (name.startsWith("weather/")) {
        mustBe(Kind.STATION, name);
        collect(() -> weatherDays += weather(name), all);
      } else if (name.startsWith("photographs/")) {
        photograph(member);
      } else if (name.equals(Members.PEOPLE)) {
        collect(() -> PersonLine.forEach(archive, this::person).throwIfAny(), all);
      } else if (name.equals(Members.BOOK)) {
        collect(() -> BookRow.read(archive.text(name, SMALL_BYTES)), all);
      } else if (name.startsWith("sheets/") && Kind.named(Members.idIn(name)).isEmpty()) {
        faults.add(name + " holds a kind of sheet this program does not know; use a newer one.");
      }
    }
  }

  private void person(PersonLine person, PersonLine.Tell tell) {
    people++;
    if (!personIds.add(person.id())) {
      tell.fault("id", Faults.quoted(person.id()) + " stands in the file already.");
    }
    if (!personNames.add(Person.key(person.name()))) {
      tell.fault("name", Faults.quoted(person.name()) + " stands in the file already.");
    }
    for (String property : person.shares()) {
      if (!Kind.PROPERTY.equals(kinds.get(property))) {
        tell.fault("shares", "there is no property " + property + " in the archive.");
      }
    }
  }

  private void photograph(ArchiveMember member) {
    photographs++;
    String id = Members.idIn(member.name());
    PhotographSheet sheet = pictures.get(id);
    boolean fits =
        sheet != null
            && sheet.sha256().equals(member.sha256())
            && Members.photograph(id, sheet.mediaType()).equals(member.name());
    if (!fits) {
      faults.add(member.name() + " is not the picture of any photograph in the archive.");
    }
  }

  private long weather(String name) {
    return MeasuredWeather.read(archive.text(name, WeatherFile.LIMIT_BYTES)).size();
  }

  private void mustBe(Kind<?> kind, String name) {
    if (!kind.equals(kinds.get(Members.idIn(name)))) {
      faults.add("%s belongs to no %s of the archive.".formatted(name, kind));
    }
  }

  private void counts() {
    count("sheets", sheets);
    count("versions", versions);
    count("weatherDays", weatherDays);
    count("people", people);
    count("photographs", photographs);
  }

  private void count(String word, long found) {
    long stated = archive.manifest().count(word);
    if (stated != found) {
      faults.add(
          "%s says there are %d %s, but there are %d."
              .formatted(Members.MANIFEST, stated, word, found));
    }
  }

  private static void collect(Runnable reading, List<String> all) {
    try {
      reading.run();
    } catch (InputException e) {
      all.addAll(e.faults());
    }
  }
}
