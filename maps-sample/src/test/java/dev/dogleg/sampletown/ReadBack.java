package dev.dogleg.sampletown;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.openstreetmap.osmosis.osmbinary.BinaryParser;
import org.openstreetmap.osmosis.osmbinary.Osmformat;
import org.openstreetmap.osmosis.osmbinary.file.BlockInputStream;

/** The committed map file, read with the library's own parser and none of our writer's code. */
final class ReadBack extends BinaryParser {

  /** A node as read; coordinates in degrees. */
  record Point(long id, double lat, double lon, Map<String, String> tags) {}

  /** A way as read. */
  record Line(long id, List<Long> refs, Map<String, String> tags) {}

  /** A relation as read; members are a letter n or w and the id, with the role. */
  record Group(long id, Map<String, String> members, Map<String, String> tags) {}

  final Map<Long, Point> nodes = new LinkedHashMap<>();
  final Map<Long, Line> ways = new LinkedHashMap<>();
  final Map<Long, Group> relations = new LinkedHashMap<>();

  /** All ids in the order of the file, with the letter of their kind. */
  final List<String> order = new ArrayList<>();

  final List<String> features = new ArrayList<>();
  Osmformat.HeaderBBox box = Osmformat.HeaderBBox.getDefaultInstance();

  static ReadBack committed() throws IOException {
    ReadBack read = new ReadBack();
    try (InputStream in = Files.newInputStream(Path.of(SampleTown.MAP_FILE))) {
      new BlockInputStream(in, read).process();
    }
    return read;
  }

  @Override
  protected void parse(Osmformat.HeaderBlock header) {
    features.addAll(header.getRequiredFeaturesList());
    features.addAll(header.getOptionalFeaturesList());
    box = header.getBbox();
  }

  @Override
  protected void parseDense(Osmformat.DenseNodes dense) {
    long id = 0;
    long lat = 0;
    long lon = 0;
    int at = 0;
    for (int i = 0; i < dense.getIdCount(); i++) {
      id += dense.getId(i);
      lat += dense.getLat(i);
      lon += dense.getLon(i);
      Map<String, String> tags = new LinkedHashMap<>();
      while (dense.getKeysVals(at) != 0) {
        tags.put(getStringById(dense.getKeysVals(at)), getStringById(dense.getKeysVals(at + 1)));
        at += 2;
      }
      at++;
      nodes.put(id, new Point(id, parseLat(lat), parseLon(lon), tags));
      order.add("n" + id);
    }
  }

  @Override
  protected void parseNodes(List<Osmformat.Node> plain) {
    if (!plain.isEmpty()) {
      throw new IllegalStateException("nodes are written dense");
    }
  }

  @Override
  protected void parseWays(List<Osmformat.Way> read) {
    for (Osmformat.Way way : read) {
      List<Long> refs = new ArrayList<>();
      long ref = 0;
      for (long delta : way.getRefsList()) {
        ref += delta;
        refs.add(ref);
      }
      ways.put(
          way.getId(), new Line(way.getId(), refs, tags(way.getKeysList(), way.getValsList())));
      order.add("w" + way.getId());
    }
  }

  @Override
  protected void parseRelations(List<Osmformat.Relation> read) {
    for (Osmformat.Relation relation : read) {
      Map<String, String> members = new LinkedHashMap<>();
      long ref = 0;
      for (int i = 0; i < relation.getMemidsCount(); i++) {
        ref += relation.getMemids(i);
        String kind = relation.getTypes(i) == Osmformat.Relation.MemberType.NODE ? "n" : "w";
        members.put(kind + ref, getStringById(relation.getRolesSid(i)));
      }
      relations.put(
          relation.getId(),
          new Group(
              relation.getId(), members, tags(relation.getKeysList(), relation.getValsList())));
      order.add("r" + relation.getId());
    }
  }

  @Override
  public void complete() {}

  private Map<String, String> tags(List<Integer> keys, List<Integer> values) {
    Map<String, String> tags = new LinkedHashMap<>();
    for (int i = 0; i < keys.size(); i++) {
      tags.put(getStringById(keys.get(i)), getStringById(values.get(i)));
    }
    return tags;
  }
}
