package dev.dogleg.plan.week;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a run of {@link WeekLedger} is about, from words {@code name=value}.
 *
 * @param bookings number of bookings
 * @param vans number of vans
 * @param fill services and 12 minutes of drive each, in parts of the shifts less breaks
 * @param maps names of maps: {@code grid}, {@code brindlewick} or extracts; the seeds take turns
 * @param rules whether the starter rules hold
 * @param water whether water is planned
 * @param firstSeed first seed
 * @param lastSeed last seed
 * @param processorSeconds when a week is stopped
 */
record LedgerOptions(
    int bookings,
    int vans,
    double fill,
    List<String> maps,
    boolean rules,
    boolean water,
    long firstSeed,
    long lastSeed,
    double processorSeconds) {
  /** The weeks that the ledger is mostly about. */
  private static final Map<String, String> USUAL =
      Map.of(
          "bookings", "30",
          "vans", "1",
          "load", "1.15",
          "map", "brindlewick,us-md-reisterstown-roads,li-liechtenstein-2021",
          "terms", "rules,water",
          "seeds", "1..8",
          "seconds", "60");

  /** Bookings a van of a usual week, and its load. */
  private static final double USUAL_BOOKINGS = 30;

  private static final double USUAL_FILL = 1.15;

  /** Doors a day for which there is room where grooms are short, at 12 minutes of drive. */
  private static final double SHORT_DOORS = 7;

  /**
   * Reads.
   *
   * @param words {@code name=value}; names: bookings, vans, load (a number; {@code usual}: grooms
   *     as long as in a week of 30 at 1.15; {@code short}: room for seven doors a day), map, terms
   *     (rules, water, both or {@code none}), seeds (first..last), seconds
   * @throws IllegalArgumentException where a word or a value is not known
   */
  static LedgerOptions of(String... words) {
    Map<String, String> given = new TreeMap<>(USUAL);
    for (String word : words) {
      int at = word.indexOf('=');
      if (at < 0 || given.replace(word.substring(0, at), word.substring(at + 1)) == null) {
        throw new IllegalArgumentException(word + " is none of name=value with " + USUAL.keySet());
      }
    }
    int bookings = Integer.parseInt(given.get("bookings"));
    int vans = Integer.parseInt(given.get("vans"));
    List<String> terms = List.of(given.get("terms").split(","));
    if (!List.of("rules", "water", "none").containsAll(terms)) {
      throw new IllegalArgumentException("terms are rules, water or none, not " + terms);
    }
    String[] seeds = given.get("seeds").split("\\.\\.", -1);
    return new LedgerOptions(
        bookings,
        vans,
        fill(given.get("load"), bookings, vans),
        List.of(given.get("map").split(",")),
        terms.contains("rules"),
        terms.contains("water"),
        Long.parseLong(seeds[0]),
        Long.parseLong(seeds[seeds.length - 1]),
        Double.parseDouble(given.get("seconds")));
  }

  private static double fill(String load, int bookings, int vans) {
    return switch (load) {
      case "usual" -> USUAL_FILL * bookings / (USUAL_BOOKINGS * vans);
      case "short" -> bookings / (5 * SHORT_DOORS * vans);
      default -> Double.parseDouble(load);
    };
  }

  /** {@return the map of a seed} */
  String map(long seed) {
    return maps.get((int) Math.floorMod(seed, (long) maps.size()));
  }

  /** {@return what binds the days besides hours, in one word} */
  String terms() {
    return rules && water ? "rules, water" : rules ? "rules" : water ? "water" : "none";
  }

  RoadWeeks.Shape shape() {
    return new RoadWeeks.Shape(bookings, vans, fill, rules, water, Long.MAX_VALUE / 4);
  }
}
