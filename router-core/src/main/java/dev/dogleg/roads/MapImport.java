package dev.dogleg.roads;

import com.graphhopper.GraphHopper;
import com.graphhopper.routing.weighting.Weighting;
import com.graphhopper.storage.BaseGraph;
import com.graphhopper.util.PMap;
import dev.dogleg.fault.FaultException;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Reads a map file with the importing library and writes all that is needed into a folder. */
final class MapImport {
  /** Folder of the library's own files. */
  static final String GRAPH_FOLDER = "graph";

  /** File of the flat arrays. */
  static final String STORE_FILE = "roads.bin";

  private final MapFile file;
  private final VanCard van;
  private final Progress progress;

  MapImport(MapFile file, VanCard van, Progress progress) {
    this.file = file;
    this.van = van;
    this.progress = progress;
  }

  /**
   * Imports.
   *
   * @param folder an empty folder, to be thrown away by the caller where this throws
   */
  void into(Path folder) throws IOException {
    sayMemory();
    Path plain = unpacked(folder);
    GraphHopper hopper = new PlainImporter();
    try {
      progress.begins(MapPhase.READING, "");
      read(hopper, plain, folder.resolve(GRAPH_FOLDER));
      BaseGraph base = hopper.getBaseGraph();
      Weighting time = hopper.createWeighting(hopper.getProfile(VanProfile.NAME), new PMap());
      RoadGraph graph = RoadGraphBuilder.build(base, hopper.getEncodingManager(), time, van);
      if (graph.outKeys.length == 0) {
        throw RoadFaults.noRoads(file.path());
      }
      progress.begins(MapPhase.JOINING, graph.edges + " stretches of road");
      int[] network = Islands.find(graph);
      progress.begins(MapPhase.CONTRACTING, graph.nodes + " junctions and ends");
      if (!base.isFrozen()) {
        base.freeze();
      }
      Hierarchy hierarchy = HierarchyBuilder.contract(base, graph);
      progress.begins(MapPhase.WRITING, hierarchy.firstKey.length + " shortcuts");
      RoadStore.write(folder.resolve(STORE_FILE), new RoadStore.Stored(hierarchy, network));
    } catch (OutOfMemoryError e) {
      throw RoadFaults.memory(file.path(), megabytes(Runtime.getRuntime().maxMemory()) + " given");
    } finally {
      hopper.close();
    }
    if (!plain.equals(file.path())) {
      Files.delete(plain);
    }
  }

  private void sayMemory() {
    long need = file.memoryBytes();
    long have = Runtime.getRuntime().maxMemory();
    String said = "about " + megabytes(need) + " needed, " + megabytes(have) + " given to Java";
    progress.begins(MapPhase.CHECKING, said);
    if (need > have) {
      progress.notice(RoadFaults.littleMemory(file.path(), said));
    }
  }

  private static String megabytes(long bytes) {
    return String.format(Locale.ROOT, "%d MB", (bytes + 999_999) / 1_000_000);
  }

  private Path unpacked(Path folder) {
    if (file.packed()) {
      progress.begins(MapPhase.UNPACKING, "");
    }
    return MapUnpacker.plain(file, folder);
  }

  private void read(GraphHopper hopper, Path plain, Path folder) {
    hopper
        .setOSMFile(plain.toString())
        .setGraphHopperLocation(folder.toString())
        .setEncodedValuesString(VanProfile.ENCODED_VALUES)
        .setImportRegistry(new VanTags())
        .setMinNetworkSize(0)
        .setProfiles(VanProfile.of(van));
    hopper.getReaderConfig().setIgnoredHighways(VanProfile.IGNORED_HIGHWAYS);
    try {
      hopper.importOrLoad();
    } catch (RuntimeException e) {
      throw explained(e, folder);
    }
  }

  /** The library hides the reason in a cause. */
  private FaultException explained(RuntimeException thrown, Path folder) {
    for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
      String said = String.valueOf(cause.getMessage());
      if (said.contains("No space left")) {
        return RoadFaults.cacheUnusable(folder, said);
      }
      if (said.contains("must be located before")) {
        return RoadFaults.unsorted(file.path(), said);
      }
      if (said.contains("must not be empty")) {
        return RoadFaults.noRoads(file.path());
      }
      if (said.toLowerCase(Locale.ROOT).contains("negative")) {
        return RoadFaults.negativeIds(file.path(), said);
      }
      if (cause instanceof EOFException || cause instanceof javax.xml.stream.XMLStreamException) {
        return RoadFaults.truncated(file.path(), said.lines().reduce((a, b) -> b).orElse(said));
      }
    }
    return RoadFaults.unknown(file.path(), thrown);
  }
}
