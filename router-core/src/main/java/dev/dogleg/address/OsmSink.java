package dev.dogleg.address;

import java.util.List;
import java.util.Map;

/**
 * Takes the elements of a map file, one kind a pass; what it does not override it does not want.
 */
interface OsmSink {

  /** {@return whether points are wanted in this pass} */
  default boolean wantsNodes() {
    return false;
  }

  /** {@return whether ways are wanted in this pass} */
  default boolean wantsWays() {
    return false;
  }

  /** {@return whether relations are wanted in this pass} */
  default boolean wantsRelations() {
    return false;
  }

  /** A point with degrees; tags may be empty. */
  default void node(long id, double lat, double lon, Map<String, String> tags) {}

  /** A way with its point ids in order. */
  default void way(long id, long[] nodes, Map<String, String> tags) {}

  /** A relation with its members in order. */
  default void relation(long id, List<Member> members, Map<String, String> tags) {}

  /**
   * A member of a relation.
   *
   * @param type {@code n}, {@code w} or {@code r}
   * @param id id of the member
   * @param role role, often empty
   */
  record Member(char type, long id, String role) {}
}
