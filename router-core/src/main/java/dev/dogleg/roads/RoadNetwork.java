package dev.dogleg.roads;

import com.graphhopper.routing.util.EncodingManager;
import com.graphhopper.storage.BaseGraph;
import com.graphhopper.storage.DAType;
import com.graphhopper.storage.GHDirectory;
import com.graphhopper.storage.StorableProperties;
import com.graphhopper.storage.index.LocationIndexTree;
import dev.dogleg.extract.Extract;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.travel.TravelMatrix;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Function;

/**
 * The roads of one map file for one van.
 *
 * <p>Life cycle: opened, then asked by any number of threads, then closed.
 */
public final class RoadNetwork implements AutoCloseable {
  /**
   * Names of the road classes that traffic slows apart: {@code motorway} (motorways and trunk
   * roads), {@code main} (primary to tertiary), {@code street} (residential and unclassified),
   * {@code service} (drives, yards, tracks, ferries).
   */
  public static final List<String> ROAD_CLASSES = TrafficClass.NAMES;

  /** Must stand wherever something drawn from the map is shown. */
  public static final String ATTRIBUTION = "© OpenStreetMap contributors, ODbL";

  private final String key;
  private final BaseGraph base;
  private final LocationIndexTree index;
  private final StorableProperties properties;
  private final Hierarchy hierarchy;
  private final Snapper snapper;
  private final RouteDrawer drawer;
  private final Queue<Workbench> benches = new ConcurrentLinkedQueue<>();

  private RoadNetwork(
      String key,
      BaseGraph base,
      LocationIndexTree index,
      StorableProperties properties,
      RoadStore.Stored stored) {
    this.key = key;
    this.base = base;
    this.index = index;
    this.properties = properties;
    this.hierarchy = stored.hierarchy;
    this.snapper = new Snapper(base, index, stored.hierarchy.graph, stored.network, key);
    this.drawer = new RouteDrawer(base, stored.hierarchy.graph);
  }

  /**
   * Opens a map. The first time for a map and a van it is read, which takes seconds to minutes;
   * later it is loaded from the cache. Safe when several processes or threads do it at once.
   *
   * @param mapFile an OpenStreetMap extract: {@code .osm.pbf}, {@code .osm}, {@code .osm.gz} or
   *     {@code .osm.bz2}, told apart by its first bytes
   * @param van what the van needs of a road
   * @param cacheFolder where results are kept; made where it is missing
   * @param progress hears how it goes
   * @return the roads
   * @throws dev.dogleg.fault.FaultException where the file cannot be used; its fault says why and
   *     what to do, and nothing is left behind in the cache folder
   */
  public static RoadNetwork open(Path mapFile, VanCard van, Path cacheFolder, Progress progress) {
    return open(new Extract(mapFile), van, cacheFolder, progress);
  }

  /**
   * The same for a map that others read too: its bytes are summed once for all.
   *
   * @param extract an OpenStreetMap extract, as above
   * @param van what the van needs of a road
   * @param cacheFolder where results are kept; made where it is missing
   * @param progress hears how it goes
   * @return the roads
   * @throws dev.dogleg.fault.FaultException as above
   */
  public static RoadNetwork open(
      Extract extract, VanCard van, Path cacheFolder, Progress progress) {
    progress.begins(MapPhase.CHECKING, "");
    MapFile file = MapFile.look(extract);
    RoadCache cache = new RoadCache(cacheFolder, file.checksum(), van, progress);
    MapImport importer = new MapImport(file, van, progress);
    Path entry = cache.find(importer::into);
    progress.begins(MapPhase.LOADING, "");
    try {
      return load(entry, cache.key(), van);
    } catch (IOException | RuntimeException e) {
      cache.discard(String.valueOf(e.getMessage()));
    }
    Path rebuilt = cache.find(importer::into);
    try {
      return load(rebuilt, cache.key(), van);
    } catch (IOException e) {
      throw RoadFaults.cacheUnusable(cacheFolder, String.valueOf(e.getMessage()));
    }
  }

  /**
   * The same where the cache has it; nothing is built, said or repaired.
   *
   * @param extract an OpenStreetMap extract, as above
   * @param van what the van needs of a road
   * @param cacheFolder where results are kept
   * @return the roads; empty where {@link #open} would have more to do than to load them
   * @throws dev.dogleg.fault.FaultException where the file cannot be used
   */
  public static Optional<RoadNetwork> kept(Extract extract, VanCard van, Path cacheFolder) {
    String checksum = MapFile.look(extract).checksum();
    RoadCache cache = new RoadCache(cacheFolder, checksum, van, Progress.SILENT);
    try {
      Optional<Path> entry = cache.kept();
      return entry.isPresent()
          ? Optional.of(load(entry.get(), cache.key(), van))
          : Optional.empty();
    } catch (IOException | RuntimeException damaged) {
      return Optional.empty();
    }
  }

  private static RoadNetwork load(Path entry, String key, VanCard van) throws IOException {
    RoadStore.Stored stored = RoadStore.read(entry.resolve(MapImport.STORE_FILE), van);
    GHDirectory directory =
        new GHDirectory(entry.resolve(MapImport.GRAPH_FOLDER).toString(), DAType.RAM_STORE);
    StorableProperties properties = new StorableProperties(directory);
    if (!properties.loadExisting()) {
      throw new IOException("no properties");
    }
    // What the library says of its edges in JSON is not read: all that is needed stands in the flat
    // arrays.
    int edgeBytes = Integer.parseInt(properties.get("graph.em.bytes_for_flags"));
    BaseGraph base = new BaseGraph.Builder(edgeBytes).setDir(directory).withTurnCosts(true).build();
    if (!base.loadExisting() || base.getEdges() != stored.hierarchy.graph.edges) {
      throw new IOException("graph and flat arrays differ");
    }
    LocationIndexTree index = new LocationIndexTree(base, directory);
    if (!index.loadExisting()) {
      throw new IOException("no location index");
    }
    return new RoadNetwork(key, base, index, properties, stored);
  }

  /**
   * Puts a place on a road.
   *
   * @param place the place
   * @param streetName street of its address, which is preferred within reason; empty where unknown
   * @return where it was put, and what to know about it; without a point where no drivable road
   *     lies within {@link SnapReport#FARTHEST_METRES}
   */
  public SnapReport snap(GeoPoint place, String streetName) {
    return snapper.snap(place, streetName);
  }

  /**
   * Best drive for every ordered pair.
   *
   * @param places points of this network, at least one
   * @return free-flow seconds per class of {@link #ROAD_CLASSES}, turn seconds and metres; a pair
   *     without a road says so. What a pair gets does not depend on the other places.
   */
  public TravelMatrix matrix(List<RoadPoint> places) {
    List<Seat> seats = seats(places);
    return atBench(bench -> MatrixFiller.fill(bench, seats));
  }

  /**
   * The drive of one pair, drawn; its seconds and metres are those of the matrix.
   *
   * @param from point of this network
   * @param to point of this network
   * @return the drive; empty where no road leads
   */
  public Optional<RoadRoute> route(RoadPoint from, RoadPoint to) {
    List<Seat> seats = seats(List.of(from, to));
    return atBench(bench -> drawer.best(bench, seats.get(0), seats.get(1)));
  }

  /** Lends a workbench, a free one or a new one. */
  private <T> T atBench(Function<Workbench, T> work) {
    Workbench free = benches.poll();
    Workbench bench = free == null ? new Workbench(hierarchy) : free;
    T answer = work.apply(bench);
    benches.add(bench);
    return answer;
  }

  private List<Seat> seats(List<RoadPoint> places) {
    for (RoadPoint place : places) {
      if (!place.networkKey().equals(key)) {
        throw new IllegalArgumentException("a point of another network: " + place);
      }
    }
    return places.stream().map(place -> new Seat(hierarchy.graph, place)).toList();
  }

  /** The contracted graph, for tests. */
  Hierarchy hierarchy() {
    return hierarchy;
  }

  /** The imported graph, for tests. */
  BaseGraph baseGraph() {
    return base;
  }

  /** What is stored about its edges, for tests. */
  EncodingManager encodedValues() {
    return EncodingManager.fromProperties(properties);
  }

  @Override
  public void close() {
    index.close();
    base.close();
  }
}
