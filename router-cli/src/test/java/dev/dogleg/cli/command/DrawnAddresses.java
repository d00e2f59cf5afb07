package dev.dogleg.cli.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.openstreetmap.osmosis.osmbinary.BinaryParser;
import org.openstreetmap.osmosis.osmbinary.Osmformat;
import org.openstreetmap.osmosis.osmbinary.file.BlockInputStream;

/** Draws addresses from a map file by a seed, with a reader that is none of ours. */
final class DrawnAddresses extends BinaryParser {
  private final TreeSet<String> all = new TreeSet<>();

  private DrawnAddresses() {}

  /** Some addresses of a map, the same for the same seed. */
  static List<String> of(Path map, int count, long seed) throws IOException {
    DrawnAddresses reader = new DrawnAddresses();
    try (InputStream in = Files.newInputStream(map)) {
      new BlockInputStream(in, reader).process();
    }
    List<String> left = new ArrayList<>(reader.all);
    SplittableRandom random = new SplittableRandom(seed);
    List<String> drawn = new ArrayList<>();
    while (drawn.size() < count) {
      drawn.add(left.remove(random.nextInt(left.size())));
    }
    return drawn;
  }

  private void take(Map<String, String> tags) {
    String number = tags.getOrDefault("addr:housenumber", "");
    String street = tags.getOrDefault("addr:street", "");
    if (!number.isBlank() && !street.isBlank() && !number.contains(";")) {
      String town = tags.getOrDefault("addr:city", "");
      all.add(number + " " + street + (town.isBlank() ? "" : ", " + town));
    }
  }

  @Override
  protected void parseDense(Osmformat.DenseNodes nodes) {
    Map<String, String> tags = new HashMap<>();
    for (int i = 0; i < nodes.getKeysValsCount(); ) {
      int key = nodes.getKeysVals(i);
      if (key == 0) {
        take(tags);
        tags = new HashMap<>();
        i++;
      } else {
        tags.put(getStringById(key), getStringById(nodes.getKeysVals(i + 1)));
        i += 2;
      }
    }
  }

  @Override
  protected void parseNodes(List<Osmformat.Node> nodes) {
    nodes.forEach(node -> take(tags(node.getKeysList(), node.getValsList())));
  }

  @Override
  protected void parseWays(List<Osmformat.Way> ways) {
    ways.forEach(way -> take(tags(way.getKeysList(), way.getValsList())));
  }

  private Map<String, String> tags(List<Integer> keys, List<Integer> values) {
    Map<String, String> tags = new HashMap<>();
    for (int i = 0; i < keys.size(); i++) {
      tags.put(getStringById(keys.get(i)), getStringById(values.get(i)));
    }
    return tags;
  }

  @Override
  protected void parseRelations(List<Osmformat.Relation> relations) {}

  @Override
  protected void parse(Osmformat.HeaderBlock header) {}

  @Override
  public void complete() {}
}
