package dev.dogleg.plan;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Solves every published day up to 61 places and writes the table into docs/BENCHMARKS.md: one
 * command, minutes. Argument: seconds for each, default 10.
 */
public final class PublishedRun {
  private PublishedRun() {}

  /**
   * Runs.
   *
   * @param args seconds for each instance
   * @throws Exception where a file cannot be read or written
   */
  public static void main(String[] args) throws Exception {
    int most = args.length > 0 ? Integer.parseInt(args[0]) : 10;
    Path shared = Path.of(System.getProperty("dogleg.shared", "../shared"));
    List<PublishedResults.Row> rows = new PublishedResults(shared).solve(name -> true, most);
    Map<String, List<PublishedResults.Row>> groups = new LinkedHashMap<>();
    rows.forEach(
        row ->
            groups
                .computeIfAbsent(row.set() + " | " + row.objective(), key -> new ArrayList<>())
                .add(row));
    StringBuilder text = new StringBuilder();
    text.append("Command: `java -cp router-core/target/classes:router-core/target/test-classes")
        .append(" -Ddogleg.shared=../shared -Ddogleg.root=. dev.dogleg.plan.PublishedRun ")
        .append(most)
        .append("`\n")
        .append("Sources: see `../shared/bench/README.md`. ")
        .append(BenchmarkPage.machine())
        .append("\n\n| set | objective | instances | proven at the best known value |")
        .append(" median s | slowest s |\n|---|---|---|---|---|---|\n");
    groups.forEach(
        (name, group) -> {
          double[] seconds =
              group.stream().mapToDouble(PublishedResults.Row::seconds).sorted().toArray();
          text.append(
              "| %s | %d | %d | %.2f | %.2f |\n"
                  .formatted(
                      name,
                      group.size(),
                      group.stream().filter(PublishedResults.Row::agrees).count(),
                      seconds[seconds.length / 2],
                      seconds[seconds.length - 1]));
        });
    List<PublishedResults.Row> others = rows.stream().filter(row -> !row.agrees()).toList();
    text.append(
        others.isEmpty() ? "\nNone is left unproven.\n" : "\nNot proven within the time:\n");
    others.forEach(row -> text.append("- ").append(row).append('\n'));
    BenchmarkPage.write("Published days", text.toString());
    System.out.println(text);
  }
}
