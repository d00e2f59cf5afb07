package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.model.GeoPoint;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The address index of a made-up land in a heap that does not grow with it: {@code mvn -B -pl
 * router-core test -Dtest=AddressLandLedger -Ddogleg.houses=400000 -Ddogleg.heap=128m}. Not part of
 * verify, because its name does not end in Test.
 */
class AddressLandLedger {
  private static final int ASKED = 2000;
  private static final long SEED = 20260302;

  @TempDir static Path folder;

  @Test
  void run() throws IOException, InterruptedException {
    int houses = Integer.getInteger("dogleg.houses", 400_000);
    String heap = System.getProperty("dogleg.heap", "128m");
    Path map = folder.resolve("land.osm.gz");
    new MadeUpLand(houses).write(map);
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + heap,
                "-cp",
                System.getProperty("java.class.path"),
                AddressLandLedger.class.getName(),
                map.toString(),
                folder.resolve("cache").toString(),
                Integer.toString(houses))
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    System.out.println("heap " + heap + ", map " + Files.size(map) + " bytes");
    System.out.print(said);
    assertEquals(0, process.waitFor(), said);
  }

  /** Builds and asks, in a process of its own: map, cache folder, houses. */
  public static void main(String[] args) throws IOException {
    MadeUpLand land = new MadeUpLand(Integer.parseInt(args[2]));
    Path cache = Path.of(args[1]);
    long start = System.nanoTime();
    int right = 0;
    try (AddressIndex index = AddressIndex.open(Path.of(args[0]), cache, IndexProgress.SILENT)) {
      double built = (System.nanoTime() - start) / 1e9;
      SplittableRandom random = new SplittableRandom(SEED);
      for (int i = 0; i < ASKED; i++) {
        int house = random.nextInt(land.houses());
        LookUp answer = index.find(land.address(house));
        GeoPoint door = new GeoPoint(land.lat(house), land.lon(house));
        boolean exact = answer.grade() == Grade.EXACT;
        right += exact && answer.matches().get(0).point().metresTo(door) < 25 ? 1 : 0;
      }
      long bytes;
      try (Stream<Path> files = Files.walk(cache)) {
        bytes = files.filter(Files::isRegularFile).mapToLong(file -> file.toFile().length()).sum();
      }
      System.out.printf(
          Locale.ROOT,
          "%,d houses: built in %.0f s (%.0f s of processor with %d look-ups), %,d bytes; exact"
              + " within 25 m: %d of %d%n",
          index.houseCount(),
          built,
          ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9,
          ASKED,
          bytes,
          right,
          ASKED);
    }
    System.exit(right == ASKED ? 0 : 1);
  }
}
