package dev.dogleg.address;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.openstreetmap.osmosis.osmbinary.BinaryParser;
import org.openstreetmap.osmosis.osmbinary.Osmformat;

/** Hands the elements of PBF blocks to a sink; ids and places are delta coded there. */
final class PbfBlocks extends BinaryParser {
  private static final Map<String, String> NO_TAGS = Map.of();

  private final OsmSink sink;

  PbfBlocks(OsmSink sink) {
    this.sink = sink;
  }

  @Override
  protected void parse(Osmformat.HeaderBlock header) {
    for (int i = 0; i < header.getRequiredFeaturesCount(); i++) {
      String feature = header.getRequiredFeatures(i);
      if (!feature.equals("OsmSchema-V0.6") && !feature.equals("DenseNodes")) {
        throw new IllegalStateException("needs " + feature + ", which is not understood");
      }
    }
  }

  @Override
  protected void parseDense(Osmformat.DenseNodes dense) {
    if (!sink.wantsNodes()) {
      return;
    }
    long id = 0;
    long lat = 0;
    long lon = 0;
    int at = 0;
    for (int i = 0; i < dense.getIdCount(); i++) {
      id += dense.getId(i);
      lat += dense.getLat(i);
      lon += dense.getLon(i);
      Map<String, String> tags = NO_TAGS;
      if (dense.getKeysValsCount() > 0) {
        while (dense.getKeysVals(at) != 0) {
          if (tags.isEmpty()) {
            tags = new HashMap<>();
          }
          tags.put(getStringById(dense.getKeysVals(at)), getStringById(dense.getKeysVals(at + 1)));
          at += 2;
        }
        at++;
      }
      sink.node(id, parseLat(lat), parseLon(lon), tags);
    }
  }

  @Override
  protected void parseNodes(List<Osmformat.Node> nodes) {
    if (sink.wantsNodes()) {
      for (Osmformat.Node node : nodes) {
        sink.node(
            node.getId(),
            parseLat(node.getLat()),
            parseLon(node.getLon()),
            tags(node.getKeysList(), node.getValsList()));
      }
    }
  }

  @Override
  protected void parseWays(List<Osmformat.Way> ways) {
    if (sink.wantsWays()) {
      for (Osmformat.Way way : ways) {
        long[] nodes = new long[way.getRefsCount()];
        long id = 0;
        for (int i = 0; i < nodes.length; i++) {
          id += way.getRefs(i);
          nodes[i] = id;
        }
        sink.way(way.getId(), nodes, tags(way.getKeysList(), way.getValsList()));
      }
    }
  }

  @Override
  protected void parseRelations(List<Osmformat.Relation> relations) {
    if (sink.wantsRelations()) {
      for (Osmformat.Relation relation : relations) {
        List<OsmSink.Member> members = new ArrayList<>(relation.getMemidsCount());
        long id = 0;
        for (int i = 0; i < relation.getMemidsCount(); i++) {
          id += relation.getMemids(i);
          char type =
              switch (relation.getTypes(i)) {
                case NODE -> 'n';
                case WAY -> 'w';
                case RELATION -> 'r';
              };
          members.add(new OsmSink.Member(type, id, getStringById(relation.getRolesSid(i))));
        }
        sink.relation(
            relation.getId(), members, tags(relation.getKeysList(), relation.getValsList()));
      }
    }
  }

  @Override
  public void complete() {
    // The stream's end is seen by the caller.
  }

  private Map<String, String> tags(List<Integer> keys, List<Integer> values) {
    if (keys.isEmpty()) {
      return NO_TAGS;
    }
    Map<String, String> tags = new HashMap<>();
    for (int i = 0; i < keys.size(); i++) {
      tags.put(getStringById(keys.get(i)), getStringById(values.get(i)));
    }
    return tags;
  }
}
