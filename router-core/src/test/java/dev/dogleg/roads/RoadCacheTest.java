package dev.dogleg.roads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.fault.Fault;
import dev.dogleg.travel.TravelMatrix;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The cache folder: built once, found again, built anew where damaged, safe for many at once. */
class RoadCacheTest {
  @TempDir Path folder;
  private Path map;
  private Path cache;

  @BeforeEach
  void writeMap() throws IOException {
    map =
        new TownSketch()
            .node(1, 0, 0)
            .node(2, 5, 0)
            .node(3, 5, 5)
            .way("1 2", "highway=residential", "name=Long Street")
            .way("2 3", "highway=residential", "name=North Street")
            .write(folder);
    cache = folder.resolve("cache");
  }

  /** Notes the phases and the notices. */
  private static final class Listener implements Progress {
    final List<MapPhase> phases = Collections.synchronizedList(new ArrayList<>());
    final List<String> details = Collections.synchronizedList(new ArrayList<>());
    final List<Fault> notices = Collections.synchronizedList(new ArrayList<>());

    @Override
    public void begins(MapPhase phase, String detail) {
      phases.add(phase);
      details.add(detail);
    }

    @Override
    public void notice(Fault fault) {
      notices.add(fault);
    }
  }

  private int openAndAsk(Listener listener) {
    try (RoadNetwork roads = RoadNetwork.open(map, VanCard.starter(), cache, listener)) {
      TravelMatrix matrix =
          roads.matrix(List.of(Sketches.on(roads, 0, 0), Sketches.on(roads, 5, 4)));
      return matrix.freeFlowSeconds(0, 1);
    }
  }

  private List<String> inCache() throws IOException {
    try (Stream<Path> files = Files.list(cache)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void theFirstTimeReadsAndTheSecondLoads() throws IOException {
    Listener first = new Listener();
    // 500 + 400 m at 30 km/h = 108 s; a bend is no junction.
    assertEquals(108, openAndAsk(first));
    assertEquals(
        List.of(
            MapPhase.CHECKING,
            MapPhase.CHECKING,
            MapPhase.READING,
            MapPhase.JOINING,
            MapPhase.CONTRACTING,
            MapPhase.WRITING,
            MapPhase.LOADING),
        first.phases);
    assertTrue(first.details.get(1).matches("about \\d+ MB needed, \\d+ MB given to Java"));
    Listener second = new Listener();
    assertEquals(108, openAndAsk(second));
    assertEquals(List.of(MapPhase.CHECKING, MapPhase.LOADING), second.phases);
    assertEquals(1, inCache().size(), inCache().toString());
  }

  @Test
  void anotherVanOrAnotherMapGetsAnEntryOfItsOwn() throws IOException {
    openAndAsk(new Listener());
    RoadNetwork.open(map, VanCard.starter().withSize(200, 200, 500, 2000), cache, Progress.SILENT)
        .close();
    assertEquals(2, inCache().size());
    Files.writeString(map, Files.readString(map).replace("residential", "tertiary"));
    // Tertiary roads are driven at 50 km/h: 900 m in 64.8 s, and not the old graph's 108 s.
    assertEquals(65, openAndAsk(new Listener()));
    assertEquals(3, inCache().size());
  }

  @Test
  void aHalfWrittenEntryIsSaidAndBuiltAnew() throws IOException {
    openAndAsk(new Listener());
    Path entry = cache.resolve(inCache().get(0));
    Path store = entry.resolve("roads.bin");
    byte[] whole = Files.readAllBytes(store);
    byte[] flipped = whole.clone();
    flipped[whole.length / 2] ^= 1;
    List<byte[]> damages = new ArrayList<>();
    damages.add(java.util.Arrays.copyOf(whole, whole.length / 2));
    damages.add(flipped);
    for (byte[] damage : damages) {
      Files.write(store, damage);
      Listener listener = new Listener();
      assertEquals(108, openAndAsk(listener));
      assertEquals(List.of("road-cache-damaged"), codes(listener));
    }
    Files.delete(entry.resolve("stamp.txt"));
    Listener listener = new Listener();
    assertEquals(108, openAndAsk(listener));
    assertEquals(List.of("road-cache-damaged"), codes(listener));
    // What a killed run leaves is swept away by the next that builds.
    Files.createDirectories(cache.resolve(entry.getFileName() + ".building").resolve("graph"));
    Files.delete(entry.resolve("stamp.txt"));
    openAndAsk(new Listener());
    assertEquals(1, inCache().size(), inCache().toString());
  }

  private static List<String> codes(Listener listener) {
    return listener.notices.stream().map(Fault::code).toList();
  }

  @Test
  void twoThreadsAtOnceBuildOnce() throws Exception {
    Listener listener = new Listener();
    ExecutorService pool = Executors.newFixedThreadPool(2);
    try {
      Callable<Integer> open = () -> openAndAsk(listener);
      for (Future<Integer> answer : pool.invokeAll(List.of(open, open))) {
        assertEquals(108, answer.get());
      }
    } finally {
      pool.shutdown();
    }
    assertEquals(1, listener.phases.stream().filter(MapPhase.READING::equals).count());
    assertEquals(1, inCache().size(), inCache().toString());
  }

  @Test
  void twoProcessesAtOnceBuildOnce() throws Exception {
    List<Process> processes = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      processes.add(
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-Xmx256m",
                  "-Djava.util.logging.config.file="
                      + System.getProperty("java.util.logging.config.file", ""),
                  "-cp",
                  System.getProperty("java.class.path"),
                  OpenOnce.class.getName(),
                  map.toString(),
                  cache.toString())
              .redirectErrorStream(true)
              .start());
    }
    StringBuilder said = new StringBuilder();
    for (Process process : processes) {
      said.append(new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
      assertEquals(0, process.waitFor(), said.toString());
    }
    assertEquals(2, said.toString().split("answer 108", -1).length - 1, said.toString());
    assertEquals(1, said.toString().split("READING", -1).length - 1, said.toString());
    assertEquals(1, inCache().size(), inCache().toString());
    assertFalse(inCache().get(0).endsWith(".lock"));
  }
}
