package dev.dogleg.cli.prepare;

import dev.dogleg.address.AddressIndex;
import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.Progress;
import dev.dogleg.extract.Extract;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.roads.MapPhase;
import dev.dogleg.roads.RoadNetwork;
import dev.dogleg.roads.VanCard;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The map file of a run: its roads and its addresses, each opened when first asked for.
 *
 * <p>Used by one thread; close it when done.
 */
public final class MapInUse implements AutoCloseable {
  private final Extract map;
  private final Path cache;
  private final Console console;
  private final Faults faults;
  private final Map<VanCard, RoadNetwork> roads = new LinkedHashMap<>();
  private final Optional<MapAhead> ahead;
  private AddressIndex addresses;

  /**
   * A map that is not opened yet.
   *
   * @param map map file
   * @param cache folder in which what is read from it outlives the run
   * @param console shows progress
   * @param faults takes what is worth saying and stops nothing
   */
  public MapInUse(Path map, Path cache, Console console, Faults faults) {
    this(map, cache, console, faults, Optional.empty());
  }

  /**
   * A map of which some is opened already.
   *
   * @param map map file
   * @param cache folder in which what is read from it outlives the run
   * @param console shows progress
   * @param faults takes what is worth saying and stops nothing
   * @param ahead what was opened; whoever began it closes it
   */
  public MapInUse(Path map, Path cache, Console console, Faults faults, Optional<MapAhead> ahead) {
    this.ahead = ahead;
    this.map = new Extract(map);
    this.cache = cache;
    this.console = console;
    this.faults = faults;
  }

  /** {@return the map file} */
  public Path file() {
    return map.path();
  }

  /**
   * The roads for a van.
   *
   * @param van what it needs of a road
   * @return the network; it is closed with this map
   * @throws dev.dogleg.fault.FaultException where the map cannot be used
   */
  RoadNetwork roads(VanCard van) {
    RoadNetwork open = roads.get(van);
    if (open == null) {
      open = ahead.flatMap(ready -> ready.roads(file(), van)).orElseGet(() -> opened(van));
      roads.put(van, open);
    }
    return open;
  }

  private RoadNetwork opened(VanCard van) {
    try (SlowWork work = new SlowWork("roads")) {
      return RoadNetwork.open(map, van, cache.resolve("roads"), work);
    }
  }

  /**
   * The addresses.
   *
   * @return the index; it is closed with this map
   * @throws dev.dogleg.fault.FaultException where the map cannot be used
   */
  public AddressIndex addresses() {
    if (addresses == null) {
      addresses = ahead.flatMap(ready -> ready.addresses(file())).orElseGet(this::openedAddresses);
    }
    return addresses;
  }

  private AddressIndex openedAddresses() {
    try (SlowWork work = new SlowWork("addresses")) {
      return AddressIndex.open(map, cache.resolve("addresses"), work::at);
    }
  }

  @Override
  public void close() {
    roads.values().forEach(RoadNetwork::close);
    if (addresses != null) {
      addresses.close();
    }
  }

  /** Says nothing while the cache is warm: a bar that flashes by tells nobody anything. */
  private final class SlowWork implements dev.dogleg.roads.Progress, AutoCloseable {
    private final String task;
    private Progress shown;

    SlowWork(String task) {
      this.task = task;
    }

    @Override
    public void begins(MapPhase phase, String detail) {
      if (phase != MapPhase.CHECKING && phase != MapPhase.LOADING) {
        show().phase(detail.isEmpty() ? phase.words() : phase.words() + ", " + detail);
        List<MapPhase> all = List.of(MapPhase.values());
        show().at(all.indexOf(phase), all.size());
      }
    }

    @Override
    public void notice(Fault fault) {
      faults.add(fault);
    }

    void at(String phase, int permille) {
      show().phase(phase);
      show().at(permille, 1000);
    }

    private Progress show() {
      if (shown == null) {
        shown = console.progress("Reading " + task + ", once");
      }
      return shown;
    }

    @Override
    public void close() {
      if (shown != null) {
        shown.close();
      }
    }
  }
}
