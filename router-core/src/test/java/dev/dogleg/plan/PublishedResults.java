package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Solves published days and compares them with the best values known. */
final class PublishedResults {
  private static final Map<String, Integer> SCALES =
      Map.of("Dumas", 1, "Langevin", 10, "SolomonPotvinBengio", 100_000);
  private static final long EFFORT = 200_000_000;
  private static final Pattern VALUE = Pattern.compile("\",([0-9.]+),(yes|no|unknown)");

  /** One solved day, values in the file's unit. */
  record Row(
      String set,
      String name,
      String objective,
      double value,
      double bound,
      double best,
      boolean proven,
      double seconds) {
    /** Whether it is proven at the value known, within the decimals published. */
    boolean agrees() {
      double within = set.equals("td") ? 0.001 : set.startsWith("Solomon") ? 0.0051 : 1e-6;
      return proven && Math.abs(value - best) <= within;
    }

    @Override
    public String toString() {
      String found = value > 1e9 ? "no day that serves all" : "value %.4f".formatted(value);
      return "%s %s %s: %s, bound %.4f, best known %.4f, %.2f s"
          .formatted(set, name, objective, found, bound, best, seconds);
    }
  }

  private final Path bench;
  private final Map<String, Double> best = new TreeMap<>();

  PublishedResults(Path shared) throws IOException {
    bench = shared.resolve("bench");
    for (String line : Files.readAllLines(bench.resolve("best-known.csv"))) {
      String[] cells = line.split(",", 6);
      Matcher value = VALUE.matcher(line);
      if (cells.length > 5 && value.find()) {
        String set = cells[0].replace("tsptw-", "").replace("-tsptw", "");
        String objective = cells[4].startsWith("travel") ? "travel time" : "makespan";
        best.put(set + "/" + cells[1] + "/" + objective, Double.valueOf(value.group(1)));
      }
    }
  }

  /** Solves what a filter of "set/name" lets through, each within a number of processor seconds. */
  List<Row> solve(Predicate<String> wanted, int mostSeconds) throws IOException {
    List<Row> rows = new ArrayList<>();
    for (String set : List.of("Langevin", "SolomonPotvinBengio", "Dumas")) {
      for (Path file : files(bench.resolve("tsptw").resolve(set))) {
        if (!wanted.test(set + "/" + file.getFileName())) {
          continue;
        }
        PublishedDays.Instance day = PublishedDays.read(file, set, SCALES.get(set));
        if (day.matrix.size() <= 61) {
          row(
              rows,
              set,
              day.name,
              "travel time",
              day.scale * day.price(),
              day.travelTime(),
              mostSeconds);
          row(rows, set, day.name, "makespan", day.scale, day.makespan(day.close[0]), mostSeconds);
        }
      }
    }
    for (Path file : files(bench.resolve("td"))) {
      String name = file.getFileName().toString().replace(".json", "");
      if (wanted.test("td/" + name)) {
        DayModel day = PublishedDays.readTimeDependent(file);
        row(rows, "td", name, "makespan", TdTravel.UNIT, day, mostSeconds);
      }
    }
    return rows;
  }

  private void row(
      List<Row> rows,
      String set,
      String name,
      String objective,
      double scale,
      DayModel day,
      int mostSeconds) {
    Double known = best.get(set + "/" + name + "/" + objective);
    if (known == null) {
      return;
    }
    long start = processorNanos();
    WorkMeter meter =
        new WorkMeter(EFFORT, () -> processorNanos() - start > mostSeconds * 1_000_000_000L);
    DayAnswer answer = new DayEngine(day).solve(meter);
    double seconds = (processorNanos() - start) / 1e9;
    double offset = objective.equals("makespan") ? day.from() / scale : 0;
    Row row =
        new Row(
            set,
            name,
            objective,
            answer.value() / scale + offset,
            answer.lowerBound() / scale + offset,
            known,
            answer.lowerBound() >= answer.value(),
            seconds);
    rows.add(row);
    if (!row.agrees()) {
      System.err.println(row);
    }
  }

  /** {@return processor time of this thread: what the work takes where nothing else runs} */
  static long processorNanos() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted(Comparator.comparing(Path::toString)).toList();
    }
  }
}
