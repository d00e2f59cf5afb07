package dev.dogleg.cli.prepare;

import dev.dogleg.address.AddressIndex;
import dev.dogleg.extract.Extract;
import dev.dogleg.model.Business;
import dev.dogleg.roads.RoadNetwork;
import dev.dogleg.roads.VanCard;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * What the cache has of a map, opened by a thread of its own while the book is still being read.
 *
 * <p>It opens only what lies ready; where anything is missing, damaged or wrong it has nothing, and
 * {@link MapInUse} opens, builds or says what is wrong as if nobody had tried.
 */
public final class MapAhead implements AutoCloseable {
  private final Path file;
  private final FutureTask<Opened> task;

  /** What was opened; what is taken from it is whoever's that took it. */
  private static final class Opened {
    private Optional<AddressIndex> addresses = Optional.empty();
    private final Map<VanCard, RoadNetwork> roads = new LinkedHashMap<>();

    private void close() {
      addresses.ifPresent(AddressIndex::close);
      roads.values().forEach(RoadNetwork::close);
    }
  }

  /**
   * Begins.
   *
   * @param file map file
   * @param cache folder in which what is read from it outlives the run
   * @param business whose vans the roads are for
   */
  public MapAhead(Path file, Path cache, Business business) {
    this.file = file;
    List<VanCard> vans =
        business.vans().stream().map(van -> VanCards.of(van, business)).distinct().toList();
    task = new FutureTask<>(() -> opened(new Extract(file), cache, vans));
    Thread thread = new Thread(task, "map-ahead");
    thread.setDaemon(true);
    thread.start();
  }

  private static Opened opened(Extract map, Path cache, List<VanCard> vans) {
    Opened opened = new Opened();
    try {
      for (VanCard van : vans) {
        RoadNetwork.kept(map, van, cache.resolve("roads"))
            .ifPresent(roads -> opened.roads.put(van, roads));
      }
      opened.addresses = AddressIndex.kept(map, cache.resolve("addresses"));
    } catch (RuntimeException wrongMap) {
      // Whoever opens it in earnest says so.
      opened.close();
      return new Opened();
    }
    return opened;
  }

  /** Takes the roads for a van; empty where they were not ready. */
  Optional<RoadNetwork> roads(Path of, VanCard van) {
    return of.equals(file) ? Optional.ofNullable(waited().roads.remove(van)) : Optional.empty();
  }

  /** Takes the addresses; empty where they were not ready. */
  Optional<AddressIndex> addresses(Path of) {
    if (!of.equals(file)) {
      return Optional.empty();
    }
    Optional<AddressIndex> taken = waited().addresses;
    waited().addresses = Optional.empty();
    return taken;
  }

  private Opened waited() {
    try {
      return task.get();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return new Opened();
    } catch (ExecutionException broken) {
      throw new IllegalStateException(broken.getCause());
    }
  }

  @Override
  public void close() {
    waited().close();
  }
}
