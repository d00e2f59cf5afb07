package dev.dogleg.sampletown.osm;

import java.util.List;
import java.util.Map;

/**
 * Several things of the map that belong together.
 *
 * @param id positive, unique among relations
 * @param members in order
 * @param tags in the order in which they are written
 */
public record OsmRelation(long id, List<Member> members, Map<String, String> tags) {

  /** Copies the list. */
  public OsmRelation {
    members = List.copyOf(members);
  }

  /** What a member of a relation is. */
  public enum Kind {
    /** A node. */
    NODE,
    /** A way. */
    WAY
  }

  /**
   * One member.
   *
   * @param kind node or way
   * @param ref its id
   * @param role its part in the relation
   */
  public record Member(Kind kind, long ref, String role) {}
}
