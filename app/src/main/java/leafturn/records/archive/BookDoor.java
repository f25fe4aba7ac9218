package leafturn.records.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;

/**
 * Where other processes ask the one that holds a folder's book: a folder of small files beside the
 * book's. Whoever may write there may write to the book itself, so no further secret is needed, and
 * nothing is listened to on the network. A question is {@code ID.archive} or {@code ID.check}; the
 * holder takes it by renaming it to {@code ID.taken}, and answers with {@code ID.zip}, {@code
 * ID.json} or, when it cannot, {@code ID.fault}, or {@code ID.unwritten} where nothing can be
 * written.
 */
final class BookDoor {
  private static final String FOLDER = "questions";
  private static final Pattern QUESTION =
      Pattern.compile("[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}\\.(archive|check)");

  private final Path folder;

  /** What can be asked for. */
  enum Wanted {
    ARCHIVE("archive", "zip"),
    CHECK("check", "json");

    private final String question;
    private final String answer;

    Wanted(String question, String answer) {
      this.question = question;
      this.answer = answer;
    }
  }

  /**
   * A question.
   *
   * @param id random
   * @param wanted what it asks for
   */
  record Question(String id, Wanted wanted) {
    static Question fresh(Wanted wanted) {
      return new Question(UUID.randomUUID().toString(), wanted);
    }
  }

  BookDoor(Path bookFolder) {
    this.folder = bookFolder.resolve(FOLDER);
  }

  /** Makes the folder, for its owner alone where the system knows such a thing. */
  void make() throws IOException {
    Files.createDirectories(folder);
    if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
    }
  }

  /** True when somebody has answered here before or is ready to. */
  boolean isThere() {
    return Files.isDirectory(folder);
  }

  void ask(Question question) throws IOException {
    Files.createFile(file(question, question.wanted().question));
  }

  /** The questions that nobody has taken yet. */
  List<Question> waiting() {
    String[] names = folder.toFile().list((where, name) -> QUESTION.matcher(name).matches());
    return Arrays.stream(names == null ? new String[0] : names)
        .sorted()
        .map(BookDoor::question)
        .toList();
  }

  private static Question question(String name) {
    int dot = name.indexOf('.');
    Wanted wanted = name.endsWith(Wanted.ARCHIVE.question) ? Wanted.ARCHIVE : Wanted.CHECK;
    return new Question(name.substring(0, dot), wanted);
  }

  /** Takes a question; false when whoever asked has gone. */
  boolean take(Question question) {
    return file(question, question.wanted().question)
        .toFile()
        .renameTo(file(question, "taken").toFile());
  }

  boolean taken(Question question) {
    return Files.exists(file(question, "taken"));
  }

  /** The file that answers a question. */
  Path answer(Question question) {
    return file(question, question.wanted().answer);
  }

  void refuse(Question question, List<String> sentences) throws IOException {
    Path part = file(question, "part");
    try {
      Files.write(part, sentences, StandardCharsets.UTF_8);
      Files.move(part, file(question, "fault"));
    } catch (IOException e) {
      // A file that is there already can be renamed on a disk that is full.
      file(question, "taken").toFile().renameTo(file(question, "unwritten").toFile());
      throw e;
    }
  }

  /** True when an answer could not even be refused in words. */
  boolean unwritten(Question question) {
    return Files.exists(file(question, "unwritten"));
  }

  /** Why a question was not answered; empty while it was not refused. */
  Optional<List<String>> refusal(Question question) {
    Path fault = file(question, "fault");
    try {
      return Files.exists(fault)
          ? Optional.of(Files.readAllLines(fault, StandardCharsets.UTF_8))
          : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Removes whatever is left of a question. */
  void forget(Question question) {
    for (String ending :
        List.of("archive", "check", "taken", "zip", "json", "fault", "unwritten", "part")) {
      file(question, ending).toFile().delete();
    }
  }

  /** Removes what was left by processes that ended before their time. */
  void sweep() {
    String[] names = folder.toFile().list();
    for (String name : names == null ? new String[0] : names) {
      folder.resolve(name).toFile().delete();
    }
  }

  private Path file(Question question, String ending) {
    return folder.resolve(question.id() + "." + ending);
  }
}
