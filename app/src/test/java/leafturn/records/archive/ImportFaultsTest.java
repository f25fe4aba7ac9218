package leafturn.records.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import leafturn.records.InputException;
import leafturn.records.Sha256;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Archives that were spoilt in every way are refused in sentences, and no book is begun. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ImportFaultsTest {
  private static final String MANIFEST = "archive.json";
  private static final String LOGS = "sheets/log.jsonl";
  private static final String PROPERTIES = "sheets/property.jsonl";

  private Path folder;
  private Path sound;

  @BeforeAll
  void writeASoundArchive(@TempDir Path shared) {
    folder = shared;
    sound = folder.resolve("sound.zip");
    try (Book book = RandomBook.open(BookPlace.of(folder.resolve("book")), 7, 60)) {
      BookExport.write(book, sound, RandomBook.clock());
    }
    assertThat(BookImport.check(sound).count("sheets")).isGreaterThan(20);
  }

  @Test
  void whatIsNoZipFileIsRefused() throws IOException {
    Path text = Files.writeString(folder.resolve("text.zip"), "not a zip file");
    assertThatList(faults(text)).singleElement().asString().contains("cannot be read as a zip");
    assertThatList(faults(folder.resolve("nowhere.zip")))
        .singleElement()
        .asString()
        .contains("there is no such file");
  }

  @Test
  void anArchiveThatWasCutShortIsRefused() throws IOException {
    byte[] whole = Files.readAllBytes(sound);
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < 50; i++) {
      byte[] part = Arrays.copyOf(whole, random.nextInt(whole.length));
      assertThatList(faults(Files.write(folder.resolve("part.zip"), part))).isNotEmpty();
    }
  }

  @Test
  void flippedBytesAreToldOrMeanNothing() throws IOException {
    byte[] whole = Files.readAllBytes(sound);
    Manifest stated = BookImport.check(sound);
    SplittableRandom random = new SplittableRandom(2);
    int told = 0;
    for (int i = 0; i < 200; i++) {
      byte[] flipped = whole.clone();
      flipped[random.nextInt(flipped.length)] ^= (byte) (1 << random.nextInt(8));
      Path file = Files.write(folder.resolve("flipped.zip"), flipped);
      try {
        assertThat(BookImport.check(file).members()).isEqualTo(stated.members());
      } catch (InputException e) {
        told++;
        assertThatList(e.faults()).isNotEmpty();
      }
    }
    assertThat(told).isGreaterThan(100);
  }

  @Test
  void aFileFromOutsideIsNeverUnpacked() throws IOException {
    for (String name : List.of("../evil.txt", "/etc/evil", "weather/../../evil.csv", "x.json")) {
      assertThatList(faults(spoilt(members -> members.put(name, new byte[1]))))
          .singleElement()
          .asString()
          .contains("does not belong in an archive");
    }
  }

  @Test
  void aMemberThatStandsTwiceIsRefused() throws IOException {
    // Two members of one length, one of which then gets the other's name.
    Path file =
        spoilt(members -> members.put("sheets/lob.jsonl", members.getOrDefault(LOGS, new byte[0])));
    String bytes = Files.readString(file, StandardCharsets.ISO_8859_1);
    Files.writeString(file, bytes.replace("sheets/lob.jsonl", LOGS), StandardCharsets.ISO_8859_1);
    assertThatList(faults(file))
        .singleElement()
        .asString()
        .contains(LOGS + " stands in the archive twice");
  }

  @Test
  void aMissingAnAddedAndAChangedMemberAreToldTogether() throws IOException {
    assertThatList(
            faults(
                spoilt(
                    members -> {
                      members.remove("README.txt");
                      members.put("logs/a-lawn-of-another-book.csv", new byte[1]);
                      members.remove(LOGS);
                    })))
        .hasSize(3);
    assertThatList(faults(spoilt(members -> members.put(LOGS, new byte[1]))))
        .singleElement()
        .asString()
        .contains(LOGS + " is not what archive.json says of it");
  }

  @Test
  void whatUnpacksToMoreThanStatedIsNotReadToItsEnd() throws IOException {
    byte[] zeros = new byte[300_000_000];
    assertThatList(faults(spoilt(members -> members.put(LOGS, zeros))))
        .singleElement()
        .asString()
        .contains(LOGS + " is not what archive.json says of it");
    assertThatList(
            faults(
                edited(
                    MANIFEST,
                    text -> text.replaceFirst("\"bytes\" : 1", "\"bytes\" : 9000000001"))))
        .singleElement()
        .asString()
        .contains("larger than 4 GB");
  }

  @Test
  void aNewerFormatSaysWhatToDo() throws IOException {
    assertThatList(
            faults(edited(MANIFEST, text -> text.replace("\"version\" : 1", "\"version\" : 2"))))
        .singleElement()
        .asString()
        .contains("version 2 of its format")
        .contains("import it with the Leafturn that made it (\"leafturn 0.1.0\")");
    assertThatList(faults(edited(MANIFEST, text -> text.replace("leafturn-book", "another-book"))))
        .singleElement()
        .asString()
        .contains("this is no archive of a book");
  }

  @Test
  void everyFaultOfTheSheetsIsToldWithItsPlace() throws IOException {
    Path file =
        sealed(
            members -> {
              edit(members, LOGS, text -> text.replaceFirst("\"day\":\"\\d{4}", "\"day\":\"9999"));
              edit(members, PROPERTIES, text -> text.replaceFirst("UTC|\\w+/\\w+", "Moon/Sea"));
              edit(members, "people.jsonl", text -> text.replaceFirst("\"owner\"", "\"king\""));
            });
    List<String> faults = faults(file);
    assertThatList(faults).hasSizeGreaterThanOrEqualTo(3);
    assertThat(faults)
        .anySatisfy(
            fault -> assertThat(fault).contains(LOGS + ", line ").contains("content.day: \"9999-"))
        .anySatisfy(
            fault -> assertThat(fault).contains("timeZone: \"Moon/Sea\" is not a time zone"))
        .anySatisfy(fault -> assertThat(fault).contains("people.jsonl, line 1, role: \"king\""));
  }

  @Test
  void aSheetOfNothingAHoleAndATakenAddressAreTold() throws IOException {
    Path file =
        sealed(
            members -> {
              edit(members, PROPERTIES, text -> text.substring(text.indexOf('\n') + 1));
              edit(
                  members,
                  "sheets/lawn.jsonl",
                  text -> text.replaceAll("\"address\":\"[^\"]*\"", "\"address\":\"same\""));
              edit(members, LOGS, text -> text.replaceFirst("\"version\":1", "\"version\":2"));
            });
    assertThat(faults(file))
        .anySatisfy(fault -> assertThat(fault).contains("property: there is no property"))
        .anySatisfy(fault -> assertThat(fault).contains("\"same\" is taken by another sheet"))
        .anySatisfy(fault -> assertThat(fault).contains("versions run from 1"))
        .anySatisfy(fault -> assertThat(fault).contains("must run from 1 without holes"));
  }

  @Test
  void anotherBookIsNotOverwritten() {
    BookPlace place = BookPlace.of(folder.resolve("book"));
    InputException refused =
        catchThrowableOfType(
            InputException.class, () -> Keeping.restore(place, sound, RandomBook.clock()));
    assertThat(refused).hasMessageContaining("is not empty");
  }

  /** The faults an import tells; no book must have been begun. */
  private List<String> faults(Path file) {
    Path fresh = folder.resolve("fresh");
    InputException refused =
        catchThrowableOfType(
            InputException.class,
            () -> Keeping.restore(BookPlace.of(fresh), file, RandomBook.clock()));
    assertThat(refused).as("what is told of %s", file).isNotNull();
    assertThat(fresh).doesNotExist();
    return refused.faults();
  }

  private interface Spoiling {
    void spoil(Map<String, byte[]> members);
  }

  private Path edited(String member, UnaryOperator<String> change) throws IOException {
    return spoilt(members -> edit(members, member, change));
  }

  private static void edit(
      Map<String, byte[]> members, String member, UnaryOperator<String> change) {
    String before = new String(members.getOrDefault(member, new byte[0]), StandardCharsets.UTF_8);
    String after = change.apply(before);
    assertThat(after).as("edit of %s", member).isNotEqualTo(before);
    members.put(member, after.getBytes(StandardCharsets.UTF_8));
  }

  /** The sound archive with other members. */
  private Path spoilt(Spoiling spoiling) throws IOException {
    Map<String, byte[]> members = members();
    spoiling.spoil(members);
    return write(members);
  }

  /** As {@link #spoilt}, with a manifest that says what the members now are. */
  private Path sealed(Spoiling spoiling) throws IOException {
    Map<String, byte[]> members = members();
    spoiling.spoil(members);
    Manifest before = BookImport.check(sound);
    List<ArchiveMember> resealed =
        before.members().stream()
            .map(
                member -> {
                  byte[] bytes = members.getOrDefault(member.name(), new byte[0]);
                  return new ArchiveMember(
                      member.name(),
                      member.derived(),
                      member.count(),
                      bytes.length,
                      Sha256.of(bytes));
                })
            .toList();
    Manifest after = new Manifest(before.madeAt(), before.madeBy(), before.counts(), resealed);
    members.put(MANIFEST, after.write().getBytes(StandardCharsets.UTF_8));
    return write(members);
  }

  private Map<String, byte[]> members() throws IOException {
    Map<String, byte[]> members = new LinkedHashMap<>();
    try (ZipFile zip = new ZipFile(sound.toFile())) {
      for (ZipEntry entry : (Iterable<ZipEntry>) zip.stream().map(ZipEntry.class::cast)::iterator) {
        members.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
      }
    }
    return members;
  }

  private Path write(Map<String, byte[]> members) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> member : members.entrySet()) {
        zip.putNextEntry(new ZipEntry(member.getKey()));
        zip.write(member.getValue());
      }
    }
    return Files.write(folder.resolve("spoilt.zip"), bytes.toByteArray());
  }
}
