package dev.dogleg.sampletown.osm;

import java.util.List;
import java.util.Map;
import org.openstreetmap.osmosis.osmbinary.Osmformat;

/** Turns nodes, ways and relations into the primitive blocks of the PBF format. */
final class PbfBlocks {
  /** Metadata of everything in the file: version 1, first second of 2026, no user. */
  private static final int VERSION = 1;

  private static final long TIMESTAMP_SECONDS = 1_767_225_600L;
  private static final long CHANGESET = 1;

  private PbfBlocks() {}

  static Osmformat.PrimitiveBlock nodes(List<OsmNode> nodes) {
    StringPool strings = new StringPool();
    Osmformat.DenseNodes.Builder dense = Osmformat.DenseNodes.newBuilder();
    Osmformat.DenseInfo.Builder info = Osmformat.DenseInfo.newBuilder();
    long id = 0;
    long lat = 0;
    long lon = 0;
    boolean first = true;
    for (OsmNode node : nodes) {
      dense.addId(node.id() - id).addLat(node.latE7() - lat).addLon(node.lonE7() - lon);
      id = node.id();
      lat = node.latE7();
      lon = node.lonE7();
      for (Map.Entry<String, String> tag : node.tags().entrySet()) {
        dense.addKeysVals(strings.number(tag.getKey()));
        dense.addKeysVals(strings.number(tag.getValue()));
      }
      dense.addKeysVals(0);
      info.addVersion(VERSION)
          .addTimestamp(first ? TIMESTAMP_SECONDS : 0)
          .addChangeset(first ? CHANGESET : 0)
          .addUid(0)
          .addUserSid(0);
      first = false;
    }
    dense.setDenseinfo(info);
    return block(strings, Osmformat.PrimitiveGroup.newBuilder().setDense(dense));
  }

  static Osmformat.PrimitiveBlock ways(List<OsmWay> ways) {
    StringPool strings = new StringPool();
    Osmformat.PrimitiveGroup.Builder group = Osmformat.PrimitiveGroup.newBuilder();
    for (OsmWay way : ways) {
      Osmformat.Way.Builder built = Osmformat.Way.newBuilder().setId(way.id()).setInfo(info());
      way.tags().forEach((k, v) -> built.addKeys(strings.number(k)).addVals(strings.number(v)));
      long ref = 0;
      for (long nodeId : way.nodeIds()) {
        built.addRefs(nodeId - ref);
        ref = nodeId;
      }
      group.addWays(built);
    }
    return block(strings, group);
  }

  static Osmformat.PrimitiveBlock relations(List<OsmRelation> relations) {
    StringPool strings = new StringPool();
    Osmformat.PrimitiveGroup.Builder group = Osmformat.PrimitiveGroup.newBuilder();
    for (OsmRelation relation : relations) {
      Osmformat.Relation.Builder built =
          Osmformat.Relation.newBuilder().setId(relation.id()).setInfo(info());
      relation
          .tags()
          .forEach((k, v) -> built.addKeys(strings.number(k)).addVals(strings.number(v)));
      long ref = 0;
      for (OsmRelation.Member member : relation.members()) {
        built
            .addMemids(member.ref() - ref)
            .addRolesSid(strings.number(member.role()))
            .addTypes(
                member.kind() == OsmRelation.Kind.NODE
                    ? Osmformat.Relation.MemberType.NODE
                    : Osmformat.Relation.MemberType.WAY);
        ref = member.ref();
      }
      group.addRelations(built);
    }
    return block(strings, group);
  }

  private static Osmformat.Info info() {
    return Osmformat.Info.newBuilder()
        .setVersion(VERSION)
        .setTimestamp(TIMESTAMP_SECONDS)
        .setChangeset(CHANGESET)
        .setUid(0)
        .setUserSid(0)
        .build();
  }

  private static Osmformat.PrimitiveBlock block(
      StringPool strings, Osmformat.PrimitiveGroup.Builder group) {
    return Osmformat.PrimitiveBlock.newBuilder()
        .setStringtable(strings.table())
        .addPrimitivegroup(group)
        .build();
  }
}
