package dev.dogleg.address;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The rules of folding as a table, grouped; immutable after loading. */
final class FoldingTable {
  private static final String RESOURCE = "folding.tsv";
  private static final int COLUMNS = 6;

  private static final FoldingTable WHOLE = new FoldingTable(load());

  private final List<Row> rows;
  private final Map<String, Map<String, List<String>>> groups = new HashMap<>();
  private final Map<String, Set<String>> meant = new HashMap<>();

  /**
   * One rule.
   *
   * @param group kind of rule, such as a title or a suffix
   * @param typed word or letter as typed, in small letters
   * @param means what it stands for, empty where it stands for nothing
   * @param exampleTyped an address or street as typed
   * @param exampleMap the same as the map has it
   * @param source where the rule comes from
   */
  record Row(
      String group,
      String typed,
      String means,
      String exampleTyped,
      String exampleMap,
      String source) {}

  private FoldingTable(List<Row> rows) {
    this.rows = List.copyOf(rows);
    for (Row row : rows) {
      groups
          .computeIfAbsent(row.group, group -> new HashMap<>())
          .computeIfAbsent(Letters.plain(row.typed), typed -> new ArrayList<>())
          .add(Letters.plain(row.means));
      meant.computeIfAbsent(row.group, group -> new TreeSet<>()).add(Letters.plain(row.means));
    }
  }

  /** The table as it ships. */
  static FoldingTable whole() {
    return WHOLE;
  }

  /** This table less one row, for the test that each row is needed. */
  FoldingTable without(Row row) {
    return new FoldingTable(rows.stream().filter(other -> !other.equals(row)).toList());
  }

  private static List<Row> load() {
    List<Row> rows = new ArrayList<>();
    try (InputStream in = FoldingTable.class.getResourceAsStream(RESOURCE);
        BufferedReader reader =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      boolean headSeen = false;
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        if (line.startsWith("# ") || line.isBlank()) {
          continue;
        }
        String[] cells = line.split("\t", -1);
        if (cells.length != COLUMNS) {
          throw new IllegalStateException(RESOURCE + " has a row of " + cells.length + ": " + line);
        }
        Row row = new Row(cells[0], cells[1], cells[2], cells[3], cells[4], cells[5]);
        if (headSeen) {
          rows.add(row);
        }
        headSeen = true;
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return rows;
  }

  List<Row> rows() {
    return rows;
  }

  /** What a plain word means in a group; empty where the group does not list it. */
  List<String> meanings(String group, String word) {
    return groups.getOrDefault(group, Map.of()).getOrDefault(word, List.of());
  }

  boolean lists(String group, String word) {
    return !meanings(group, word).isEmpty();
  }

  /** Whether a group lists a word or what a word means. */
  boolean knows(String group, String word) {
    return lists(group, word) || meant.getOrDefault(group, Set.of()).contains(word);
  }

  /** All words a group lists, plain, in the order of the alphabet. */
  Set<String> words(String group) {
    return new TreeSet<>(groups.getOrDefault(group, Map.of()).keySet());
  }
}
