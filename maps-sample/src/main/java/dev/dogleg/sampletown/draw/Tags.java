package dev.dogleg.sampletown.draw;

import java.util.LinkedHashMap;
import java.util.Map;

/** Tags in a fixed order, so that the file has a fixed order too. */
public final class Tags {
  private Tags() {}

  /**
   * Builds tags.
   *
   * @param keysAndValues key, value, key, value, ...
   * @return the tags in that order
   */
  public static Map<String, String> of(String... keysAndValues) {
    return with(Map.of(), keysAndValues);
  }

  /**
   * Adds tags to others; a later value replaces an earlier one.
   *
   * @param tags to start from
   * @param keysAndValues key, value, key, value, ...
   * @return a new map
   */
  public static Map<String, String> with(Map<String, String> tags, String... keysAndValues) {
    Map<String, String> all = new LinkedHashMap<>(tags);
    for (int i = 0; i < keysAndValues.length; i += 2) {
      all.put(keysAndValues[i], keysAndValues[i + 1]);
    }
    return all;
  }
}
