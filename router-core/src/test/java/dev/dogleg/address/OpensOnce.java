package dev.dogleg.address;

import java.nio.file.Path;
import java.util.Locale;

/** Opens an index in a process of its own and looks one address up. */
final class OpensOnce {
  private OpensOnce() {}

  /** Takes map, cache folder and address; prints the grade and the milliseconds of both steps. */
  public static void main(String[] arguments) {
    long start = System.nanoTime();
    try (AddressIndex index =
        AddressIndex.open(Path.of(arguments[0]), Path.of(arguments[1]), IndexProgress.SILENT)) {
      double openMillis = (System.nanoTime() - start) / 1e6;
      start = System.nanoTime();
      Grade grade = index.find(arguments[2]).grade();
      double findMillis = (System.nanoTime() - start) / 1e6;
      System.out.printf(
          Locale.ROOT, "%s, open %.0f ms, look-up %.0f ms%n", grade, openMillis, findMillis);
    }
  }
}
