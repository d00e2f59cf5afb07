package dev.dogleg.plan.week;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * One of Solomon's instances, first customers only, read from where it lies ({@code
 * ../shared/bench/solomon}; the page there states format and conventions).
 *
 * <p>Source: M. M. Solomon, Algorithms for the vehicle routing and scheduling problems with time
 * window constraints, Operations Research 35 (1987), 254-265.
 *
 * @param name name of the instance
 * @param vehicles most vehicles
 * @param capacity capacity of each
 * @param nodes the depot, then customers 1, 2, ... in the file's order
 */
record SolomonFile(String name, int vehicles, int capacity, List<Node> nodes) {
  /** Tenths in the file's unit: everything below counts in tenths, as time and as length. */
  static final int TENTHS = 10;

  /**
   * Depot or customer, in the file's units.
   *
   * @param x coordinate
   * @param y coordinate
   * @param demand load
   * @param ready earliest start of the service
   * @param due latest start of the service; for the depot the latest return
   * @param service length of the service
   */
  record Node(int x, int y, int demand, int ready, int due, int service) {}

  /** Copies the list. */
  SolomonFile {
    nodes = List.copyOf(nodes);
  }

  /**
   * Reads.
   *
   * @param file the file
   * @param customers how many of its customers count, from the first on
   * @throws IOException where it cannot be read
   * @throws IllegalArgumentException where it is not in that format or has fewer customers
   */
  static SolomonFile read(Path file, int customers) throws IOException {
    List<int[]> rows = new ArrayList<>();
    List<String> lines = Files.readAllLines(file);
    for (String line : lines) {
      if (line.matches("[\\d\\s]*\\d[\\d\\s]*")) {
        String[] words = line.strip().split("\\s+");
        int[] row = new int[words.length];
        for (int k = 0; k < row.length; k++) {
          row[k] = Integer.parseInt(words[k]);
        }
        rows.add(row);
      }
    }
    if (rows.size() < customers + 2 || rows.get(0).length != 2) {
      throw new IllegalArgumentException(file + " has not " + customers + " customers");
    }
    List<Node> nodes = new ArrayList<>();
    for (int id = 0; id <= customers; id++) {
      int[] row = rows.get(id + 1);
      if (row.length != 7 || row[0] != id) {
        throw new IllegalArgumentException(file + " has a wrong line for " + id);
      }
      nodes.add(new Node(row[1], row[2], row[3], row[4], row[5], row[6]));
    }
    return new SolomonFile(lines.get(0).strip(), rows.get(0)[0], rows.get(0)[1], nodes);
  }

  /** {@return number of customers} */
  int customers() {
    return nodes.size() - 1;
  }

  /**
   * Length and duration of an arc: {@code floor(10 * Euclid)} tenths, the convention {@code
   * solomon-dimacs} of the page beside the files.
   *
   * @param from node
   * @param to node
   * @return tenths
   */
  int arcTenths(int from, int to) {
    int dx = nodes.get(from).x - nodes.get(to).x;
    int dy = nodes.get(from).y - nodes.get(to).y;
    int square = TENTHS * TENTHS * (dx * dx + dy * dy);
    int root = (int) Math.sqrt(square);
    while (root * root > square) {
      root--;
    }
    while ((root + 1) * (root + 1) <= square) {
      root++;
    }
    return root;
  }
}
