package dev.dogleg.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes one section of {@code docs/BENCHMARKS.md}, leaving the others as they are. */
public final class BenchmarkPage {
  private BenchmarkPage() {}

  /**
   * Writes a section.
   *
   * @param title its title
   * @param text what stands under it
   * @throws IOException where the page cannot be written
   */
  public static void write(String title, String text) throws IOException {
    Path page = Path.of(System.getProperty("dogleg.root", ".")).resolve("docs/BENCHMARKS.md");
    String old = Files.exists(page) ? Files.readString(page) : "# Benchmarks\n";
    String head = "## " + title + "\n";
    int from = old.indexOf(head);
    String before = from < 0 ? old.stripTrailing() + "\n\n" : old.substring(0, from);
    int to = from < 0 ? -1 : old.indexOf("\n## ", from);
    String after = to < 0 ? "" : old.substring(to + 1);
    Files.writeString(page, before + head + "\n" + text.strip() + "\n\n" + after);
  }

  /** {@return on what it was measured} */
  public static String machine() {
    return "Java %s, %d processors, processor seconds of the one thread (other work ran beside)."
        .formatted(Runtime.version().feature(), Runtime.getRuntime().availableProcessors());
  }
}
