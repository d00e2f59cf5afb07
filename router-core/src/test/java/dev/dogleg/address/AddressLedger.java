package dev.dogleg.address;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The full run for docs/BENCHMARKS.md, "Address look-up": {@code mvn -B -pl router-core test
 * -Dtest=AddressLedger}. Not part of verify, because its name does not end in Test.
 */
class AddressLedger {
  private static final int SAMPLE = Integer.getInteger("dogleg.sample", 1000);
  private static final int MISSING = 500;

  @TempDir static Path folder;

  @Test
  void run() throws IOException {
    Path maps = Path.of(System.getProperty("dogleg.shared")).resolve("maps");
    System.out.println("seed " + AddressTrial.SEED + ", sample " + SAMPLE);
    List<AddressTrial> trials = new ArrayList<>();
    for (Country country : Country.values()) {
      trials.add(new AddressTrial(country, maps, folder.resolve("cache")));
    }
    List<String> failures = new ArrayList<>();
    for (AddressTrial trial : trials) {
      measure(trial, trials, failures);
    }
    Path log = Path.of("target/address-ledger.txt");
    Files.write(log, failures);
    System.out.println("every miss stands in " + log.toAbsolutePath());
    Assertions.assertTrue(failures.stream().noneMatch(line -> line.contains("EXACT-BUT-MISSING")));
  }

  private static void measure(AddressTrial trial, List<AddressTrial> trials, List<String> failures)
      throws IOException {
    long before = bytes(folder.resolve("cache"));
    long start = System.nanoTime();
    long startCpu = cpuNanos();
    try (AddressIndex index = trial.open()) {
      double clock = (System.nanoTime() - start) / 1e9;
      double cpu = (cpuNanos() - startCpu) / 1e9;
      long bytes = bytes(folder.resolve("cache")) - before;
      double share = 100_000.0 / index.houseCount();
      say("== " + trial.country.extract + ", " + index.houseCount() + " houses");
      say(
          String.format(
              Locale.ROOT,
              "index: %.1f s on the clock, %.1f s of processor, %,d bytes; per 100,000 houses"
                  + " %.0f s of processor, %.1f MB",
              clock,
              cpu,
              bytes,
              cpu * share,
              bytes * share / 1e6));
      say("first look-up of a new process: " + firstLookUp(trial));
      Score plain = trial.plain(index, SAMPLE);
      say("plain: " + plain);
      plain.failures.forEach(line -> failures.add(trial.country + " plain " + line));
      Score varied = new Score();
      Map<TypedVariations.Kind, Score> byKind = trial.varied(index, SAMPLE, varied);
      say("varied: " + varied);
      byKind.forEach((kind, score) -> say("  " + kind + ": " + score));
      varied.failures.forEach(line -> failures.add(trial.country + " varied " + line));
      missing(trial, trials, index, failures);
      speed(trial, index);
    }
    leftOut(trial, failures);
  }

  private static void missing(
      AddressTrial trial, List<AddressTrial> trials, AddressIndex index, List<String> failures) {
    List<String> missing = trial.missing(MISSING, trials);
    int exact = 0;
    int exactCandidate = 0;
    for (String typed : missing) {
      LookUp answer = index.find(typed);
      if (answer.grade() == Grade.EXACT) {
        exact++;
        failures.add(trial.country + " EXACT-BUT-MISSING " + typed + " -> " + answer);
      } else if (answer.matches().stream().anyMatch(m -> m.grade() == Grade.EXACT)) {
        exactCandidate++;
        failures.add(trial.country + " exact candidate of a missing one " + typed + " " + answer);
      }
    }
    say(
        "missing: "
            + missing.size()
            + ", exact "
            + exact
            + ", with an exact candidate "
            + exactCandidate);
  }

  private static void leftOut(AddressTrial trial, List<String> failures) {
    say("left out: " + trial.leftOut(SAMPLE, folder, failures));
  }

  private static void speed(AddressTrial trial, AddressIndex index) {
    List<String> typed =
        trial.own.sample(SAMPLE, AddressTrial.SEED).stream().map(trial.country::plain).toList();
    long start = System.nanoTime();
    long startCpu = cpuNanos();
    int count = 0;
    while (System.nanoTime() - start < 2_000_000_000L) {
      index.find(typed.get(count++ % typed.size()));
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    double cpu = (cpuNanos() - startCpu) / 1e9;
    say(
        String.format(
            Locale.ROOT,
            "warm: %.0f plain look-ups a second on the clock, %.0f a second of processor, one thread",
            count / seconds,
            count / cpu));
  }

  private static String firstLookUp(AddressTrial trial) throws IOException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                OpensOnce.class.getName(),
                trial.map.toString(),
                folder.resolve("cache").toString(),
                trial.country.plain(trial.own.all.get(0)))
            .redirectErrorStream(true)
            .start();
    return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
  }

  private static long cpuNanos() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static long bytes(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return 0;
    }
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).mapToLong(file -> file.toFile().length()).sum();
    }
  }

  private static void say(String line) {
    System.out.println(line);
  }
}
