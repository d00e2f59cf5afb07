package dev.dogleg.plan.week;

import dev.dogleg.groom.StarterTables;
import dev.dogleg.groom.TableRow;
import dev.dogleg.itinerary.WaterUse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Invented pets, one a booking, by seed: what the starter rules speak of, the minutes of the
 * starter table of grooms, and water.
 *
 * <p>How common each kind is is invented; water is the starter table's.
 */
final class SeededPets {
  /** What a pet is, in the words of the starter tables. */
  record Pet(
      String species,
      String size,
      String coat,
      int groomMinutes,
      boolean contagious,
      boolean pillMorning,
      boolean notFirst,
      boolean notLast,
      boolean quietHours,
      WaterUse water) {

    boolean cat() {
      return species.equals("cat");
    }

    /** Large or giant, with a coat that the starter rule calls heavy. */
    boolean heavyCoat() {
      return !cat()
          && (size.equals("LARGE") || size.equals("GIANT"))
          && List.of("DOUBLE", "CURLY", "LONG").contains(coat);
    }
  }

  private static final List<TableRow> TIMES = StarterTables.rows("groom-times.csv");
  private static final List<TableRow> WATER = StarterTables.rows("water.csv");
  private static final List<String> SIZES = List.of("TINY", "SMALL", "MEDIUM", "LARGE", "GIANT");
  private static final int[] SIZE_PERCENT = {15, 35, 25, 20, 5};
  private static final List<String> COATS = List.of("SMOOTH", "DOUBLE", "WIRE", "CURLY", "LONG");
  private static final int[] COAT_PERCENT = {20, 20, 10, 30, 20};
  private static final int CAT_PERCENT = 12;
  private static final int RARE_PERCENT = 4;
  private static final int QUIET_PERCENT = 10;

  private SeededPets() {}

  /**
   * Draws pets.
   *
   * @param random randomness
   * @param count how many
   */
  static List<Pet> draw(SplittableRandom random, int count) {
    List<Pet> pets = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      pets.add(draw(random));
    }
    return pets;
  }

  private static Pet draw(SplittableRandom random) {
    boolean cat = percent(random, CAT_PERCENT);
    int size = cat ? 0 : pick(random, SIZE_PERCENT);
    String coat =
        cat ? (percent(random, 50) ? "SMOOTH" : "LONG") : COATS.get(pick(random, COAT_PERCENT));
    String species = cat ? "cat" : "dog";
    String service = service(random, cat, coat);
    int litres = litres(service, SIZES.get(size), coat);
    return new Pet(
        species,
        SIZES.get(size),
        coat,
        minutes(species, service, SIZES.get(size), coat),
        percent(random, RARE_PERCENT),
        percent(random, RARE_PERCENT),
        percent(random, RARE_PERCENT),
        percent(random, RARE_PERCENT),
        percent(random, QUIET_PERCENT),
        new WaterUse(litres * 1000, litres * 950));
  }

  private static String service(SplittableRandom random, boolean cat, String coat) {
    if (cat) {
      return List.of("bath", "full", "lion").get(pick(random, new int[] {40, 40, 20}));
    }
    boolean often = percent(random, 70);
    return switch (coat) {
      case "SMOOTH" -> often ? "bath" : "tidy";
      case "DOUBLE" -> often ? "bath" : "deshed";
      default -> often ? "full" : "bath";
    };
  }

  private static int minutes(String species, String service, String size, String coat) {
    return TIMES.stream()
        .filter(row -> row.cell("species").equals(species) && row.cell("service").equals(service))
        .filter(row -> row.cell("size").equals(size) || row.cell("size").equals("any"))
        .filter(row -> row.cell("coat").equals(coat) || row.cell("coat").equals("any"))
        .mapToInt(row -> Integer.parseInt(row.cell("minutes")))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(species + " " + service + " " + coat));
  }

  /** The row that says most of the pet: its service, its coat, its size. */
  private static int litres(String service, String size, String coat) {
    return WATER.stream()
        .filter(row -> row.cell("service").equals(service) || row.cell("service").equals("any"))
        .filter(row -> row.cell("size").equals(size) || row.cell("size").equals("any"))
        .filter(row -> row.cell("coat").equals(coat) || row.cell("coat").equals("any"))
        .max(
            Comparator.comparing((TableRow row) -> row.cell("service").equals(service))
                .thenComparing(row -> row.cell("coat").equals(coat)))
        .map(row -> Integer.parseInt(row.cell("litres")))
        .orElseThrow(() -> new IllegalStateException(service + " " + size + " " + coat));
  }

  private static boolean percent(SplittableRandom random, int share) {
    return random.nextInt(100) < share;
  }

  private static int pick(SplittableRandom random, int[] percent) {
    int at = random.nextInt(100);
    int which = 0;
    while (at >= percent[which]) {
      at -= percent[which++];
    }
    return which;
  }
}
