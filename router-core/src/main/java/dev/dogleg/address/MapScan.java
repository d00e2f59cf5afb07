package dev.dogleg.address;

import java.io.Closeable;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Reads a map in three passes, relations, ways, points, because each needs what comes after it in
 * the file; what grows with the number of houses goes to scratch files.
 */
final class MapScan implements Closeable {
  private static final int SORT_BUFFER = 1 << 20;

  private final Path folder;
  private final Predicate<MapObject> keep;
  private final NodePlaces places;
  private final SortedRuns wantedWays;
  private final SortedRuns wantedEnds;
  private final StreetRelations streets = new StreetRelations();
  private final Areas areas = new Areas();
  private final ObjectFile ways;
  private final ObjectFile objects;
  private final Path relationFile;
  private long relationCount;
  private MemberWays memberWays;
  private MappedLongs lineNodes;

  /**
   * Makes ready.
   *
   * @param folder empty scratch folder
   * @param keep false for objects that are to be left out of the index, as tests of interpolation
   *     need
   */
  MapScan(Path folder, Predicate<MapObject> keep) throws IOException {
    this.folder = folder;
    this.keep = keep;
    this.places = new NodePlaces(folder, SORT_BUFFER);
    this.wantedWays = new SortedRuns(Files.createDirectory(folder.resolve("w")), SORT_BUFFER);
    this.wantedEnds = new SortedRuns(Files.createDirectory(folder.resolve("e")), SORT_BUFFER / 8);
    this.ways = new ObjectFile(folder.resolve("ways"));
    this.objects = new ObjectFile(folder.resolve("objects"));
    this.relationFile = folder.resolve("relations");
  }

  void run(MapFile map, IndexProgress progress) throws IOException {
    try {
      try (DataOutputStream out =
          new DataOutputStream(
              new java.io.BufferedOutputStream(Files.newOutputStream(relationFile)))) {
        map.pass(new Relations(out), "reading areas", progress);
      }
      memberWays = new MemberWays(folder, wantedWays);
      map.pass(new Ways(), "reading streets", progress);
      lineNodes = wantedEnds.merge("line-nodes");
      places.seal();
      map.pass(new Nodes(), "reading houses", progress);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    ways.each(
        way -> {
          MapObject placed = placed(way);
          if (way.kind() == MapObject.Kind.AREA) {
            areas.add(way.tags(), List.of(placed.places()), List.of(), true);
          } else {
            addObject(placed);
          }
        });
    resolveRelations();
    areas.seal();
  }

  Areas areas() {
    return areas;
  }

  ObjectFile objects() {
    return objects;
  }

  /** Whether a point is one of an interpolation way, whose number the way will ask for. */
  boolean isLineNode(long id) {
    return lineNodes.find(id) >= 0;
  }

  private MapObject placed(MapObject way) {
    long[] where = new long[way.nodes().length];
    for (int i = 0; i < where.length; i++) {
      where[i] = places.packed(way.nodes()[i]);
    }
    long[] nodes = way.kind() == MapObject.Kind.LINE ? way.nodes() : new long[0];
    if (way.kind() == MapObject.Kind.HOUSE) {
      streets.complete('w', way.id(), way.tags());
    }
    return new MapObject(way.kind(), way.type(), way.id(), way.tags(), nodes, where);
  }

  private void addObject(MapObject object) throws IOException {
    boolean anywhere = false;
    for (long place : object.places()) {
      anywhere |= place != 0;
    }
    if (anywhere && keep.test(object)) {
      objects.add(object);
    }
  }

  private void resolveRelations() throws IOException {
    try (DataInputStream in =
        new DataInputStream(new java.io.BufferedInputStream(Files.newInputStream(relationFile)))) {
      for (long i = 0; i < relationCount; i++) {
        MapObject relation = MapObject.read(in);
        int outerCount = in.readInt();
        List<long[]> rings = new ArrayList<>();
        boolean whole = true;
        for (long wayId : relation.nodes()) {
          long[] nodes = memberWays.nodes(wayId);
          long[] where = new long[nodes.length];
          for (int n = 0; n < nodes.length; n++) {
            where[n] = places.packed(nodes[n]);
            whole &= where[n] != 0;
          }
          whole &= nodes.length > 0;
          rings.add(where);
        }
        Map<String, String> tags = relation.tags();
        if (AddressTags.isArea(tags)) {
          areas.add(
              tags, rings.subList(0, outerCount), rings.subList(outerCount, rings.size()), whole);
        }
        if (AddressTags.isHouse(tags)) {
          streets.complete('r', relation.id(), tags);
          long[] all =
              rings.subList(0, outerCount).stream()
                  .flatMapToLong(java.util.Arrays::stream)
                  .toArray();
          addObject(
              new MapObject(MapObject.Kind.HOUSE, 'r', relation.id(), tags, new long[0], all));
        }
      }
    }
  }

  @Override
  public void close() throws IOException {
    ways.close();
    objects.close();
    if (memberWays != null) {
      memberWays.close();
    }
  }

  /** First pass. */
  private final class Relations implements OsmSink {
    private final DataOutputStream out;

    Relations(DataOutputStream out) {
      this.out = out;
    }

    @Override
    public boolean wantsRelations() {
      return true;
    }

    @Override
    public void relation(long id, List<Member> members, Map<String, String> tags) {
      if (AddressTags.isStreetRelation(tags)) {
        streets.add(members, tags);
      }
      if (!AddressTags.isArea(tags) && !AddressTags.isHouse(tags)) {
        return;
      }
      List<Long> outer = new ArrayList<>();
      List<Long> inner = new ArrayList<>();
      for (Member member : members) {
        if (member.type() == 'w') {
          if (member.role().equals("inner")) {
            inner.add(member.id());
          } else if (member.role().isEmpty()
              || member.role().equals("outer")
              || member.role().equals("outline")) {
            outer.add(member.id());
          }
        }
      }
      List<Long> all = new ArrayList<>(outer);
      all.addAll(inner);
      try {
        for (long way : all) {
          wantedWays.add(way);
        }
        Map<String, String> kept = AddressTags.kept(tags);
        new MapObject(
                MapObject.Kind.HOUSE,
                'r',
                id,
                kept,
                all.stream().mapToLong(Long::longValue).toArray(),
                new long[0])
            .write(out);
        out.writeInt(outer.size());
        relationCount++;
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** Second pass. */
  private final class Ways implements OsmSink {
    @Override
    public boolean wantsWays() {
      return true;
    }

    @Override
    public void way(long id, long[] nodes, Map<String, String> tags) {
      try {
        boolean member = memberWays.wants(id);
        if (member) {
          memberWays.put(id, nodes);
        }
        streets.name(id, tags);
        MapObject.Kind kind = kind(nodes, tags);
        if (kind != null) {
          Map<String, String> kept = AddressTags.kept(tags);
          ways.add(new MapObject(kind, 'w', id, kept, nodes, new long[0]));
        }
        if (member || kind != null) {
          for (long node : nodes) {
            places.want(node);
          }
        }
        if (kind == MapObject.Kind.LINE) {
          for (long node : nodes) {
            wantedEnds.add(node);
          }
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    private MapObject.Kind kind(long[] nodes, Map<String, String> tags) {
      if (AddressTags.isLine(tags)) {
        return MapObject.Kind.LINE;
      }
      if (AddressTags.isHouse(tags)) {
        return MapObject.Kind.HOUSE;
      }
      if (AddressTags.isStreet(tags)) {
        return MapObject.Kind.STREET;
      }
      boolean closed = nodes.length > 3 && nodes[0] == nodes[nodes.length - 1];
      return closed && AddressTags.isArea(tags) ? MapObject.Kind.AREA : null;
    }
  }

  /** Third pass. */
  private final class Nodes implements OsmSink {
    @Override
    public boolean wantsNodes() {
      return true;
    }

    @Override
    public void node(long id, double lat, double lon, Map<String, String> tags) {
      places.put(id, lat, lon);
      if (tags.isEmpty()) {
        return;
      }
      if (AddressTags.isTown(tags)) {
        areas.addTown(AddressTags.kept(tags), lat, lon);
      }
      if (AddressTags.isHouse(tags)) {
        Map<String, String> kept = AddressTags.kept(tags);
        streets.complete('n', id, kept);
        try {
          addObject(
              new MapObject(
                  MapObject.Kind.HOUSE,
                  'n',
                  id,
                  kept,
                  new long[0],
                  new long[] {NodePlaces.pack(lat, lon)}));
        } catch (IOException e) {
          throw new UncheckedIOException(e);
        }
      }
    }
  }
}
