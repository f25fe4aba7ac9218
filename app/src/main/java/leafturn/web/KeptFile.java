package leafturn.web;

import java.util.HashMap;
import java.util.Map;
import leafturn.records.exchange.Reading;
import org.jspecify.annotations.Nullable;

/**
 * A file on its way into the book, between being looked at and being imported. Immutable; the
 * methods that set something give a changed copy.
 *
 * @param key by which its page is asked for
 * @param kind what it holds
 * @param name as its owner calls it
 * @param bytes as they came
 * @param target id of the lawn, station or trial it is for; empty where its rows say so themselves
 * @param laboratory id of the laboratory whose mapping reads it, or null
 * @param sheet name of the sheet that was chosen, or null for the first that is not empty
 * @param picks what was chosen for its columns, or null for what their headings say
 * @param replacing true when its weather takes the place of the book's
 * @param added what was added from it, in words; null before that
 */
record KeptFile(
    String key,
    ImportKind kind,
    String name,
    byte[] bytes,
    String target,
    @Nullable String laboratory,
    @Nullable String sheet,
    @Nullable Map<Integer, Reading.Pick> picks,
    boolean replacing,
    @Nullable String added) {

  /** A file as it came. */
  static KeptFile of(String key, ImportKind kind, String name, byte[] bytes, String target) {
    return new KeptFile(key, kind, name, bytes, target, null, null, null, false, null);
  }

  /** This file, to be read as a laboratory's mapping says. */
  KeptFile readBy(@Nullable String mapping) {
    return new KeptFile(key, kind, name, bytes, target, mapping, sheet, picks, replacing, added);
  }

  /** This file with another sheet, whose headings say what its columns are. */
  KeptFile onSheet(String chosen) {
    return new KeptFile(key, kind, name, bytes, target, laboratory, chosen, null, replacing, added);
  }

  /** This file with other columns chosen. */
  KeptFile reading(Map<Integer, Reading.Pick> chosen, boolean replaces) {
    Map<Integer, Reading.Pick> copy = new HashMap<>(chosen);
    return new KeptFile(key, kind, name, bytes, target, laboratory, sheet, copy, replaces, added);
  }

  /** This file after it was imported; its bytes are no longer needed. */
  KeptFile imported(String words) {
    return new KeptFile(
        key, kind, name, new byte[0], target, laboratory, sheet, picks, replacing, words);
  }

  boolean isImported() {
    return added != null;
  }
}
