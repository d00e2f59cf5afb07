package dev.dogleg.address;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Streets that houses get from relations instead of from their own tags. */
final class StreetRelations {
  private final Map<Long, Integer> relationOfHouse = new HashMap<>();
  private final Map<Long, Integer> relationOfStreetWay = new HashMap<>();
  private final Map<Integer, String> streetOf = new HashMap<>();

  void add(List<OsmSink.Member> members, Map<String, String> tags) {
    int relation = streetOf.size();
    streetOf.put(relation, tags.getOrDefault("addr:street", tags.getOrDefault("name", "")));
    for (OsmSink.Member member : members) {
      if (member.role().equals("house") || member.role().equals("address")) {
        relationOfHouse.put(key(member.type(), member.id()), relation);
      } else if (member.role().equals("street") && streetOf.get(relation).isEmpty()) {
        relationOfStreetWay.put(member.id(), relation);
      }
    }
  }

  /** Takes the name of a street way for relations that have none themselves. */
  void name(long wayId, Map<String, String> tags) {
    Integer relation = relationOfStreetWay.get(wayId);
    if (relation != null && tags.containsKey("name")) {
      streetOf.putIfAbsent(relation, "");
      if (streetOf.get(relation).isEmpty()) {
        streetOf.put(relation, tags.get("name"));
      }
    }
  }

  /** Adds the street to a house that has none. */
  void complete(char type, long id, Map<String, String> tags) {
    if (!tags.containsKey("addr:street") && !tags.containsKey("addr:place")) {
      Integer relation = relationOfHouse.get(key(type, id));
      if (relation != null && !streetOf.get(relation).isEmpty()) {
        tags.put("addr:street", streetOf.get(relation));
      }
    }
  }

  private static long key(char type, long id) {
    return id * 4 + (type == 'n' ? 0 : type == 'w' ? 1 : 2);
  }
}
