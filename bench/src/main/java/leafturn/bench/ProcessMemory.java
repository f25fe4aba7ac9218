package leafturn.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Memory of a process as Linux counts it.
 *
 * @param residentMb resident now, MB of 10^6 bytes
 * @param mostResidentMb the most that was resident, MB
 */
record ProcessMemory(double residentMb, double mostResidentMb) {
  private static final double KIB_PER_MB = 1e6 / 1024;

  static ProcessMemory of(long process) {
    try {
      Map<String, String> status =
          Files.readAllLines(Path.of("/proc", Long.toString(process), "status")).stream()
              .map(line -> line.split(":\\s*", 2))
              .filter(parts -> parts.length == 2)
              .collect(Collectors.toMap(parts -> parts[0], parts -> parts[1]));
      return new ProcessMemory(mb(status, "VmRSS"), mb(status, "VmHWM"));
    } catch (IOException e) {
      throw new UncheckedIOException("the server's memory cannot be read", e);
    }
  }

  private static double mb(Map<String, String> status, String name) {
    String value = status.getOrDefault(name, "0 kB");
    return Double.parseDouble(value.substring(0, value.indexOf(' '))) / KIB_PER_MB;
  }

  String inWords() {
    return String.format("Resident memory %.0f MB, at most %.0f MB.", residentMb, mostResidentMb);
  }
}
