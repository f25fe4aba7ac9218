package leafturn.records;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Spoils valid files in the ways that people and programs spoil them; the seed decides how. */
public final class Mutations {
  private static final Pattern TOKEN = Pattern.compile("-?\\d+(\\.\\d+)?|\"[^\"\n]*\"|[a-z_]{3,}");
  private static final int LONGEST_CUT = 40;
  private static final String[] ODD = {
    "",
    "NaN",
    "Infinity",
    "-1",
    "0",
    "1e999",
    "-0",
    "9999999999999999999999",
    "null",
    "true",
    "[]",
    "{}",
    "\"\"",
    "\"",
    "'",
    ",",
    ";",
    "\t",
    "\n",
    "\r\n",
    "\uFEFF",
    "\u0000",
    "é",
    "\uD83C\uDF31",
    "0000-01-01",
    "2015-02-31",
    "1,5",
    "1;5",
    "-9999",
    "0x1F",
    "1f",
    "%s%n",
    "../..",
    "}",
    "]",
    ":",
    "[[[[[[[[[[",
    "2015-05-01",
    "mown",
    "mown\u00a0",
    "1.",
    ".5",
    "+7",
    "1e-400",
    "٣"
  };

  private final SplittableRandom random;

  /**
   * @param seed decides everything
   */
  public Mutations(long seed) {
    this.random = new SplittableRandom(seed);
  }

  /** The text spoilt in one to three places. */
  public String spoil(String text) {
    String spoilt = text;
    int times = 1 + random.nextInt(3);
    for (int time = 0; time < times; time++) {
      spoilt = once(spoilt);
    }
    return spoilt;
  }

  private String once(String text) {
    return switch (random.nextInt(9)) {
      case 0 -> cut(text);
      case 1 -> insert(text, odd());
      case 2 -> insert(text, part(text));
      case 3 -> text.substring(0, place(text));
      case 4, 5, 6 -> replaceToken(text);
      case 7 -> shuffleLines(text);
      default -> separators(text);
    };
  }

  private int place(String text) {
    return random.nextInt(text.length() + 1);
  }

  private String odd() {
    return ODD[random.nextInt(ODD.length)];
  }

  private String part(String text) {
    int from = place(text);
    return text.substring(from, Math.min(text.length(), from + random.nextInt(LONGEST_CUT)));
  }

  private String cut(String text) {
    int from = place(text);
    int to = Math.min(text.length(), from + random.nextInt(LONGEST_CUT));
    return text.substring(0, from) + text.substring(to);
  }

  private String insert(String text, String what) {
    int at = place(text);
    return text.substring(0, at) + what + text.substring(at);
  }

  private String replaceToken(String text) {
    Matcher tokens = TOKEN.matcher(text);
    return tokens.find(place(text))
        ? text.substring(0, tokens.start()) + odd() + text.substring(tokens.end())
        : insert(text, odd());
  }

  private String shuffleLines(String text) {
    List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
    int first = random.nextInt(lines.size());
    int second = random.nextInt(lines.size());
    if (random.nextBoolean()) {
      Collections.swap(lines, first, second);
    } else {
      lines.add(first, lines.get(second));
    }
    return String.join("\n", lines);
  }

  private String separators(String text) {
    return switch (random.nextInt(4)) {
      case 0 -> text.replace(',', ';');
      case 1 -> text.replace('.', ',');
      case 2 -> text.replace("\n", "\r\n");
      default -> text.replace(',', ';').replace('.', ',');
    };
  }
}
