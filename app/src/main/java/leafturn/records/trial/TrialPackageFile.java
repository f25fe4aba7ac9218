package leafturn.records.trial;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.JsonObject;
import leafturn.records.OutputFile;
import leafturn.records.Sha256;
import leafturn.records.SourceText;
import leafturn.records.exchange.ReadingImport;
import leafturn.records.exchange.TrialGround;
import leafturn.records.table.Table;
import leafturn.records.table.TableFile;
import leafturn.trials.observation.Reading;

/**
 * Reads the data package of a trial back. Only members of known names are unpacked, each as far as
 * it may be large, and only what the descriptor's digests confirm is read.
 */
public final class TrialPackageFile {
  /** Largest package, bytes. */
  public static final int LIMIT_BYTES = TableFile.LIMIT_BYTES;

  /** The descriptor. */
  public static final String DESCRIPTOR = "datapackage.json";

  /** Values as they were given. */
  public static final String READINGS = "readings.csv";

  /** The plots. */
  public static final String PLOTS = "plots.csv";

  /** The plan. */
  public static final String PLAN = "plan.json";

  /** When the plan was frozen and the trial ended, what befell it, was changed and taken back. */
  public static final String RECORD = "record.json";

  /** The layout. */
  public static final String LAYOUT = "layout.json";

  /** What was found. */
  public static final String RESULTS = "results.json";

  /** In words. */
  public static final String READ_ME = "README.md";

  private static final Set<String> KNOWN =
      Set.of(DESCRIPTOR, READINGS, PLOTS, PLAN, RECORD, LAYOUT, RESULTS, READ_ME);
  private static final Pattern VALUES = Pattern.compile("values-[0-9]{1,4}-[a-z0-9_]{0,40}\\.csv");
  private static final int LONGEST_NAME = 40;
  private static final List<String> NEEDED = List.of(READINGS, PLAN, RECORD);
  private static final int MOST_MEMBER_BYTES = 20_000_000;
  private static final int MOST_BYTES = 60_000_000;
  private static final String NO_ZIP =
      "%s: it cannot be read as a zip file; it is another kind of file or was cut short.";

  private final String name;
  private final Map<String, byte[]> members;

  private TrialPackageFile(String name, Map<String, byte[]> members) {
    this.name = name;
    this.members = members;
  }

  /**
   * Name of the table with the values of an outcome, to analyse.
   *
   * @param number of the outcome in the plan, from 1
   */
  public static String valuesOf(int number, String outcome) {
    String plain = outcome.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "_");
    return "values-%d-%s.csv"
        .formatted(number, plain.substring(0, Math.min(LONGEST_NAME, plain.length())));
  }

  /**
   * Opens a package.
   *
   * @throws InputException when it is none, is too large, or is not what its descriptor says
   */
  public static TrialPackageFile open(Path file) {
    return open(file.toString(), SourceText.bytes(file, LIMIT_BYTES));
  }

  /**
   * Opens a package that came another way.
   *
   * @param name of the file as the user gave it
   * @throws InputException when it is none, is too large, or is not what its descriptor says
   */
  public static TrialPackageFile open(String name, byte[] bytes) {
    if (bytes.length > LIMIT_BYTES) {
      throw new InputException(
          "%s: it is too large; a data package of a trial may have up to %d MB."
              .formatted(name, LIMIT_BYTES / 1_000_000));
    }
    TrialPackageFile opened = new TrialPackageFile(name, unpacked(name, bytes));
    opened.checkWhole();
    return opened;
  }

  private static Map<String, byte[]> unpacked(String name, byte[] bytes) {
    Map<String, byte[]> members = new LinkedHashMap<>();
    int total = 0;
    try (ZipInputStream zip =
        new ZipInputStream(new ByteArrayInputStream(bytes), StandardCharsets.UTF_8)) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        String member = entry.getName();
        if (!KNOWN.contains(member) && !VALUES.matcher(member).matches()) {
          throw new InputException(
              "%s: %s does not belong in a data package of a trial; give one that Leafturn wrote."
                  .formatted(name, Faults.quoted(member)));
        }
        byte[] content = zip.readNBytes(MOST_MEMBER_BYTES + 1);
        if (content.length > MOST_MEMBER_BYTES) {
          throw new InputException(
              "%s: %s unpacks to more than %d MB, the most that is read."
                  .formatted(name, member, MOST_MEMBER_BYTES / 1_000_000));
        }
        total += content.length;
        if (total > MOST_BYTES) {
          throw new InputException(
              "%s: it unpacks to more than %d MB, the most that is read."
                  .formatted(name, MOST_BYTES / 1_000_000));
        }
        if (members.put(member, content) != null) {
          throw new InputException("%s: %s stands in it twice.".formatted(name, member));
        }
      }
    } catch (IOException | IllegalArgumentException e) {
      throw new InputException(NO_ZIP.formatted(name));
    }
    if (members.isEmpty()) {
      throw new InputException(NO_ZIP.formatted(name));
    }
    return members;
  }

  /** Every member is there and is what the descriptor says. */
  private void checkWhole() {
    Faults faults = new Faults(name);
    if (!members.containsKey(DESCRIPTOR)) {
      faults.add("%s is missing; it is no data package.".formatted(DESCRIPTOR));
      faults.throwIfAny();
    }
    Map<String, String> told = digestsTold(faults);
    members.forEach(
        (member, bytes) -> {
          boolean same = ("sha256:" + Sha256.of(bytes)).equals(told.get(member));
          if (!member.equals(DESCRIPTOR) && !same) {
            faults.add(
                "%s is not what %s says of it; it was changed or damaged, take another package."
                    .formatted(member, DESCRIPTOR));
          }
        });
    Stream.concat(told.keySet().stream(), NEEDED.stream())
        .distinct()
        .filter(member -> !members.containsKey(member))
        .forEach(member -> faults.add(missing(member)));
    faults.throwIfAny();
  }

  /** Digests of the members by their names, as the descriptor has them. */
  private Map<String, String> digestsTold(Faults faults) {
    JsonObject descriptor = JsonObject.root(text(DESCRIPTOR, MOST_MEMBER_BYTES), faults);
    Map<String, String> told = new LinkedHashMap<>();
    for (JsonObject resource : descriptor.objects("resources")) {
      String path = resource.text("path");
      String hash = resource.text("hash");
      if (path != null && hash != null) {
        told.put(path, hash);
      }
    }
    faults.throwIfAny();
    return told;
  }

  private static String missing(String member) {
    return "%s is missing from it; take another package.".formatted(Faults.quoted(member));
  }

  /**
   * Writes the members into a folder that is not there yet or is empty.
   *
   * @throws InputException when it is another one, or cannot be written
   */
  public void unpack(Path folder) {
    try {
      if (Files.exists(folder) && !Files.isDirectory(folder)) {
        throw new InputException(folder + ": this is a file; give a folder.");
      }
      Files.createDirectories(folder);
      try (Stream<Path> there = Files.list(folder)) {
        if (there.findAny().isPresent()) {
          throw new InputException(folder + ": the folder is not empty; give a new one.");
        }
      }
    } catch (IOException e) {
      throw new InputException(folder + ": the folder cannot be made; check who may write there.");
    }
    // The names are those above, so none leads out of the folder.
    members.forEach(
        (member, bytes) -> OutputFile.write(folder.resolve(member), out -> out.write(bytes)));
  }

  private SourceText text(String member, int mostBytes) {
    byte[] bytes = members.getOrDefault(member, new byte[0]);
    return SourceText.of(name + ", " + member, bytes, mostBytes);
  }

  /**
   * The trial in it.
   *
   * @throws InputException with every fault of plan, layout, record and readings
   */
  public PackedTrial read() {
    return read(new TrialGrounds());
  }

  /**
   * The trial in it, its layout drawn by those who keep the last ones.
   *
   * @throws InputException with every fault of plan, layout, record and readings
   */
  public PackedTrial read(TrialGrounds grounds) {
    Faults faults = new Faults(name);
    SourceText plan = text(PLAN, TrialPlanFile.LIMIT_BYTES);
    TrialPlanFile.read(plan); // so that its faults name their place
    TrialGround ground;
    try {
      ground = grounds.of(PackedTrial.planned(plan));
    } catch (InputException noRoom) {
      throw new InputException(
          noRoom.faults().stream().map(fault -> "%s: %s".formatted(plan.name(), fault)).toList());
    }
    checkLayout(ground, faults);
    faults.throwIfAny();
    List<Reading> readings = readings(ground);
    return PackedTrial.of(plan, text(RECORD, MOST_MEMBER_BYTES), readings);
  }

  private void checkLayout(TrialGround ground, Faults faults) {
    if (!members.containsKey(LAYOUT)) {
      return;
    }
    String told = JsonObject.root(text(LAYOUT, MOST_MEMBER_BYTES), faults).text("layoutSha256");
    if (told != null && !told.equals(ground.layoutHash())) {
      faults.add(
          "%s is not the layout that its plan and seed draw here; its readings would be taken for those of other plots."
              .formatted(LAYOUT));
    }
  }

  private List<Reading> readings(TrialGround ground) {
    String place = name + ", " + READINGS;
    byte[] bytes = members.getOrDefault(READINGS, new byte[0]);
    Table table = TableFile.read(place, bytes, null);
    return table.isEmpty() ? List.of() : ReadingImport.read(table, ground);
  }
}
