package leafturn.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** Where somebody came from, in words. */
final class CameFrom {
  private static final Pattern LOOPBACK = Pattern.compile("127\\.[\\d.]+|::1|(?:0:0:0:0:|:):/64");

  /** By a word of what they say of themselves; the first one that is there tells. */
  private static final Map<String, String> BROWSERS = new LinkedHashMap<>();

  private static final Map<String, String> SYSTEMS = new LinkedHashMap<>();

  static {
    BROWSERS.put("Edg", "Edge");
    BROWSERS.put("Firefox/", "Firefox");
    BROWSERS.put("FxiOS/", "Firefox");
    BROWSERS.put("Chromium/", "Chromium");
    BROWSERS.put("CriOS/", "Chrome");
    BROWSERS.put("Chrome/", "Chrome");
    BROWSERS.put("Safari/", "Safari");
    SYSTEMS.put("Android", "Android");
    SYSTEMS.put("iPhone", "an iPhone");
    SYSTEMS.put("iPad", "an iPad");
    SYSTEMS.put("Windows", "Windows");
    SYSTEMS.put("Macintosh", "a Mac");
    SYSTEMS.put("CrOS", "ChromeOS");
    SYSTEMS.put("Linux", "Linux");
  }

  private CameFrom() {}

  /** A network address, or this machine. */
  static String place(String address) {
    return LOOPBACK.matcher(address).matches() ? "this machine" : address;
  }

  /**
   * Browser and system, for instance "Firefox on Windows".
   *
   * @param agent what a browser says of itself; may be empty
   */
  static String browser(String agent) {
    String browser = named(BROWSERS, agent);
    String system = named(SYSTEMS, agent);
    if (browser.isEmpty()) {
      return system.isEmpty() ? "a browser that does not tell its name" : "a browser on " + system;
    }
    return system.isEmpty() ? browser : browser + " on " + system;
  }

  private static String named(Map<String, String> names, String agent) {
    return names.entrySet().stream()
        .filter(name -> agent.contains(name.getKey()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("");
  }
}
