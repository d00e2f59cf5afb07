package dev.dogleg.plan.week;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Published values of Solomon's instances, each arc cut to one decimal, least distance.
 *
 * <p>100 customers: {@code ../shared/bench/best-known.csv}, set {@code solomon-dimacs}, read from
 * there. The first 25 and 50 customers of type 1 are not listed there: the table below holds the
 * optimal values of Solomon's own page of the 25- and 50-customer problems (found by Kohl,
 * Desrosiers, Madsen, Solomon, Soumis 1999, Transportation Science 33:101-116, and others), from
 * memory; a public source file of a fleet planner's test data (A. Jungwirth, "optimal solutions
 * reported in the literature") lists the same 58 values.
 */
final class SolomonValues {
  private static final String FIRST_CUSTOMERS =
      """
      C101 191.3 362.4
      C102 190.3 361.4
      C103 190.3 361.4
      C104 186.9 358.0
      C105 191.3 362.4
      C106 191.3 362.4
      C107 191.3 362.4
      C108 191.3 362.4
      C109 191.3 362.4
      R101 617.1 1044.0
      R102 547.1 909.0
      R103 454.6 772.9
      R104 416.9 625.4
      R105 530.5 899.3
      R106 465.4 793.0
      R107 424.3 711.1
      R108 397.3 617.7
      R109 441.3 786.8
      R110 444.1 697.0
      R111 428.8 707.2
      R112 393.0 630.2
      RC101 461.1 944.0
      RC102 351.8 822.5
      RC103 332.8 710.9
      RC104 306.6 545.8
      RC105 411.3 855.3
      RC106 345.5 723.2
      RC107 298.3 642.7
      RC108 294.5 598.1
      """;

  private final Map<String, Double> values = new HashMap<>();

  private SolomonValues() {}

  /**
   * Reads.
   *
   * @param bench the folder {@code ../shared/bench}
   * @throws IOException where its table cannot be read
   */
  static SolomonValues read(Path bench) throws IOException {
    SolomonValues known = new SolomonValues();
    for (String line : FIRST_CUSTOMERS.lines().toList()) {
      String[] words = line.split(" ");
      known.values.put(key(words[0], 25), Double.valueOf(words[1]));
      known.values.put(key(words[0], 50), Double.valueOf(words[2]));
    }
    List<String> table = Files.readAllLines(bench.resolve("best-known.csv"));
    for (String line : table) {
      if (line.startsWith("solomon-dimacs,")) {
        String[] cells = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
        known.values.put(key(cells[1], Integer.parseInt(cells[2])), Double.valueOf(cells[6]));
      }
    }
    return known;
  }

  private static String key(String instance, int customers) {
    return instance + "." + customers;
  }

  /**
   * The best value known.
   *
   * @param instance name of the instance
   * @param customers number of its customers, from the first on
   * @return the distance, in the file's unit; empty where no table has it
   */
  OptionalDouble best(String instance, int customers) {
    Double value = values.get(key(instance, customers));
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
