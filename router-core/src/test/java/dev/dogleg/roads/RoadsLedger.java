package dev.dogleg.roads;

import dev.dogleg.extract.Extract;
import dev.dogleg.travel.TravelMatrix;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Measures roads for docs/BENCHMARKS.md: reading each extract in a process of its own that is given
 * the memory the estimate states, and a matrix of 60 places against separate route calls.
 *
 * <pre>mvn -q -pl router-core test-compile exec:exec -Dexec.executable=java
 *   -Dexec.classpathScope=test -Dexec.args="-cp %classpath dev.dogleg.roads.RoadsLedger .."</pre>
 */
final class RoadsLedger {
  private static final int PLACES = 60;
  private static final long SEED = 20261125;
  private static final int ROUNDS = 9;

  private RoadsLedger() {}

  /** Takes the project's root folder; the extracts lie beside it in {@code ../shared/maps}. */
  public static void main(String[] args) throws Exception {
    if (args.length == 3) {
      measure(Path.of(args[1]), Path.of(args[2]));
      return;
    }
    System.out.println(
        "| extract | stretches | shortcuts | given MB | peak MB | read s (CPU s) | again s |"
            + " 60 x 60 ms | one pair ms | route ms | ratio to pairs | ratio to routes |");
    System.out.println("|---|---|---|---|---|---|---|---|---|---|---|---|");
    Path root = Path.of(args[0]).toAbsolutePath().normalize();
    inOwnProcess(root.resolve("maps-sample/brindlewick.osm.pbf"));
    try (Stream<Path> files = Files.list(root.resolve("../shared/maps"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".pbf")).sorted().toList()) {
        inOwnProcess(file);
      }
    }
  }

  private static void inOwnProcess(Path map) throws IOException, InterruptedException {
    Path cache = Files.createTempDirectory("ledger");
    long given = MapFile.look(new Extract(map)).memoryBytes() / 1_000_000;
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + given + "m",
                "-cp",
                System.getProperty("java.class.path"),
                RoadsLedger.class.getName(),
                "measure",
                map.toString(),
                cache.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String row = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    System.out.print(process.waitFor() == 0 ? row : "| " + map.getFileName() + " | failed |\n");
    Sketches.delete(cache);
  }

  private static void measure(Path map, Path cache) throws IOException {
    long start = System.nanoTime();
    RoadNetwork.open(map, VanCard.starter(), cache, Progress.SILENT).close();
    double readSeconds = (System.nanoTime() - start) / 1e9;
    double cpuSeconds =
        ProcessHandle.current().info().totalCpuDuration().orElseThrow().toMillis() / 1e3;
    start = System.nanoTime();
    RoadNetwork roads = RoadNetwork.open(map, VanCard.starter(), cache, Progress.SILENT);
    double loadSeconds = (System.nanoTime() - start) / 1e9;
    List<RoadPoint> places = RandomPlaces.draw(roads, PLACES, SEED);
    double matrixMs = median(() -> roads.matrix(places));
    // A matrix of two places answers both directions.
    double pairMs = median(() -> pairs(roads, places)) / (2 * PLACES);
    double routeMs = median(() -> routes(roads, places)) / PLACES;
    int pairs = PLACES * (PLACES - 1);
    System.out.printf(
        Locale.ROOT,
        "| %s | %,d | %,d | %d | %d | %.1f (%.1f) | %.2f | %.1f | %.3f | %.3f | %.0f | %.0f |%n",
        map.getFileName().toString().replace(".osm.pbf", ""),
        roads.hierarchy().graph.edges,
        roads.hierarchy().firstKey.length,
        Runtime.getRuntime().maxMemory() / 1_000_000,
        peakMegabytes(),
        readSeconds,
        cpuSeconds,
        loadSeconds,
        matrixMs,
        pairMs,
        routeMs,
        pairs * pairMs / matrixMs,
        pairs * routeMs / matrixMs);
  }

  /** Sixty single pairs, summed but not drawn. */
  private static int pairs(RoadNetwork roads, List<RoadPoint> places) {
    int seconds = 0;
    for (int i = 0; i < places.size(); i++) {
      TravelMatrix two =
          roads.matrix(List.of(places.get(i), places.get((7 * i + 1) % places.size())));
      seconds += two.freeFlowSeconds(0, 1);
    }
    return seconds;
  }

  private static int routes(RoadNetwork roads, List<RoadPoint> places) {
    int metres = 0;
    for (int i = 0; i < places.size(); i++) {
      metres +=
          roads
              .route(places.get(i), places.get((7 * i + 1) % places.size()))
              .map(RoadRoute::lengthMetres)
              .orElse(0);
    }
    return metres;
  }

  private static double median(java.util.function.Supplier<Object> work) {
    double[] ms = new double[2 * ROUNDS];
    for (int round = 0; round < ms.length; round++) {
      long start = System.nanoTime();
      if (work.get() == null) {
        throw new IllegalStateException("nothing measured");
      }
      ms[round] = (System.nanoTime() - start) / 1e6;
    }
    double[] warm = Arrays.copyOfRange(ms, ROUNDS, ms.length);
    Arrays.sort(warm);
    return warm[ROUNDS / 2];
  }

  /** Largest resident memory of this process so far; of its heap where the system does not say. */
  private static long peakMegabytes() throws IOException {
    Path status = Path.of("/proc/self/status");
    if (Files.exists(status)) {
      for (String line : Files.readAllLines(status)) {
        if (line.startsWith("VmHWM:")) {
          return Long.parseLong(line.replaceAll("\\D+", "")) * 1024 / 1_000_000;
        }
      }
    }
    return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1_000_000;
  }
}
