package dev.dogleg.address;

import java.nio.file.Path;

/** Opens an index in a process of its own. */
final class OpensOnce {
  private OpensOnce() {}

  /** Takes map and cache folder, prints the grade of one look-up. */
  public static void main(String[] arguments) {
    try (AddressIndex index =
        AddressIndex.open(Path.of(arguments[0]), Path.of(arguments[1]), IndexProgress.SILENT)) {
      System.out.println(index.find("12 Mill Lane").grade());
    }
  }
}
