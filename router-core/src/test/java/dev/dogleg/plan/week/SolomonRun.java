package dev.dogleg.plan.week;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Plans Solomon's instances and prints value, bounds, best known value, gaps and seconds; run by
 * hand, results go to docs/BENCHMARKS.md.
 *
 * <p>The first instance is planned once before and not counted. Seconds are the processor's, of the
 * whole process; those on the clock stand in brackets. Every plan is measured again from the file
 * alone.
 */
public final class SolomonRun {
  private final SolomonValues known;
  private final int customers;
  private final double seconds;
  private int proven;
  private final List<Double> gaps = new ArrayList<>();
  private int instances;

  private SolomonRun(SolomonValues known, int customers, double seconds) {
    this.known = known;
    this.customers = customers;
    this.seconds = seconds;
  }

  /**
   * Runs.
   *
   * @param args beginnings of the instances' names, parted by commas, for example {@code C1,R101};
   *     number of customers; processor seconds for each. The files are looked for in {@code
   *     bench/solomon} of the system property {@code dogleg.shared}, or of {@code ../shared}
   * @throws IOException where a file cannot be read
   */
  public static void main(String[] args) throws IOException {
    Path bench = Path.of(System.getProperty("dogleg.shared", "../shared")).resolve("bench");
    if (!Files.isDirectory(bench)) {
      System.out.println("Skipped: no benchmarks at " + bench);
      return;
    }
    SolomonRun run =
        new SolomonRun(
            SolomonValues.read(bench), Integer.parseInt(args[1]), Double.parseDouble(args[2]));
    List<Path> files = files(bench.resolve("solomon"), List.of(args[0].split(",")));
    System.out.println(
        "| instance | vans | value | bound | root bound | best known | plan over best known | root"
            + " below best known | proven | first, s | to 1 %, s | proof, or stopped, s | all, s | heap MB |\n"
            + "|---|---|---|---|---|---|---|---|---|---|---|---|---|---|");
    run.measure(files.get(0));
    for (Path file : files) {
      run.print(file);
    }
    run.summary();
  }

  private static List<Path> files(Path folder, List<String> beginnings) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      List<Path> files =
          all.filter(
                  file -> beginnings.stream().anyMatch(file.getFileName().toString()::startsWith))
              .filter(file -> file.toString().endsWith(".txt"))
              .sorted()
              .toList();
      if (files.isEmpty()) {
        throw new IllegalArgumentException("no instance begins with " + beginnings);
      }
      return files;
    }
  }

  private MeasuredWeek measure(Path path) throws IOException {
    return MeasuredWeek.of(SolomonWeeks.week(SolomonFile.read(path, customers), 1), seconds);
  }

  private void print(Path path) throws IOException {
    SolomonFile file = SolomonFile.read(path, customers);
    MeasuredWeek run = measure(path);
    instances++;
    proven += run.proven() ? 1 : 0;
    boolean all = run.plan().leftOutCounted() == 0;
    String value = run.plan().leftOutCounted() + " left out";
    String over = "-";
    OptionalDouble best = known.best(file.name(), customers);
    if (all) {
      double length =
          SolomonWeeks.checkedTenths(file, SolomonWeeks.routes(run.plan()))
              / (double) SolomonFile.TENTHS;
      if (SolomonWeeks.units(run.plan().costSixtieths()) != length) {
        throw new IllegalStateException("the plan's cost is not its length: " + length);
      }
      value = text("%.1f", length);
      if (best.isPresent()) {
        gaps.add(100 * (length / best.getAsDouble() - 1));
        over = text("%.2f %%", gaps.get(gaps.size() - 1));
      }
    }
    System.out.println(
        text(
            "| %s.%d | %d | %s | %s | %s | %s | %s | %s | %s | %s | %s | %s | %s | %.0f |",
            file.name(),
            customers,
            run.plan().days().stream().filter(day -> !day.stops().isEmpty()).count(),
            value,
            bound(run.plan().proof().costBound()),
            bound(run.firstCostBound()),
            best.isPresent() ? text("%.1f", best.getAsDouble()) : "-",
            over,
            below(run.firstCostBound(), best),
            run.proven()
                ? "yes"
                : text("no, %d or more left out", run.plan().proof().leftOutBound()),
            moment(run.first()),
            moment(run.withinOnePercent()),
            moment(run.searched()),
            moment(run.end()),
            run.heapMegabytes()));
  }

  private static String bound(long sixtieths) {
    return sixtieths == 0 ? "none" : text("%.2f", SolomonWeeks.units(sixtieths));
  }

  private static String below(long sixtieths, OptionalDouble best) {
    return sixtieths == 0 || best.isEmpty()
        ? "-"
        : text("%.2f %%", 100 * (1 - SolomonWeeks.units(sixtieths) / best.getAsDouble()));
  }

  private static String moment(MeasuredWeek.Moment moment) {
    return text("%.2f (%.2f)", moment.processor(), moment.clock());
  }

  private void summary() {
    System.out.println(
        text(
            "proven %d of %d; plans that serve all %d, over the best known %.3f %% in the mean,"
                + " %.3f %% at the most",
            proven,
            instances,
            gaps.size(),
            gaps.stream().mapToDouble(Double::doubleValue).average().orElse(0),
            gaps.stream().mapToDouble(Double::doubleValue).max().orElse(0)));
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
