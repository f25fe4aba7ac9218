package leafturn.web;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Files that visitors sent to be looked at before they are imported, held in memory: few, for half
 * an hour, and each for the browser session it came from alone. Safe for use from several threads.
 */
final class KeptFiles {
  private static final Duration LONGEST = Duration.ofMinutes(30);
  private static final int MOST_OF_ONE_SESSION = 3;
  private static final long MOST_BYTES = 60_000_000;

  private final InstantSource clock;
  private final Map<String, Kept> files = new LinkedHashMap<>();

  private record Kept(String session, Instant since, KeptFile file) {}

  KeptFiles(InstantSource clock) {
    this.clock = clock;
  }

  /** Keeps a file; older ones give way where there are too many. */
  synchronized void keep(String session, KeptFile file) {
    dropOld();
    files.remove(file.key());
    List<String> own = new ArrayList<>();
    files.forEach(
        (key, kept) -> {
          if (kept.session().equals(session)) {
            own.add(key);
          }
        });
    while (own.size() >= MOST_OF_ONE_SESSION) {
      files.remove(own.remove(0));
    }
    while (!files.isEmpty() && bytes() + file.bytes().length > MOST_BYTES) {
      files.remove(files.keySet().iterator().next());
    }
    files.put(file.key(), new Kept(session, clock.instant(), file));
  }

  /** A file of a session; empty when it was never there, has given way or is another's. */
  synchronized Optional<KeptFile> find(String session, String key) {
    dropOld();
    Kept kept = files.get(key);
    return kept == null || !kept.session().equals(session)
        ? Optional.empty()
        : Optional.of(kept.file());
  }

  private void dropOld() {
    Instant oldest = clock.instant().minus(LONGEST);
    files.values().removeIf(kept -> kept.since().isBefore(oldest));
  }

  private long bytes() {
    return files.values().stream().mapToLong(kept -> kept.file().bytes().length).sum();
  }
}
