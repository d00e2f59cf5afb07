package dev.dogleg.cli.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Splits a cell that names several pets: at {@code ;}, else at {@code , & +}. */
final class PetNames {
  private PetNames() {}

  /** The names; a cell that is one known name as a whole is not split. */
  static List<String> split(String cell, Predicate<String> known) {
    if (known.test(cell.strip())) {
      return List.of(cell.strip());
    }
    List<String> names = parts(cell, ";");
    return names.size() > 1 ? names : parts(cell, "[,&+]");
  }

  /** The parts of a cell, one for each of some pets: as many parts, or one for all. */
  static List<String> each(String cell, int pets) {
    List<String> parts = parts(cell, ";");
    List<String> result = new ArrayList<>();
    for (int i = 0; i < pets; i++) {
      result.add(pets > 1 && parts.size() == pets ? parts.get(i) : cell.strip());
    }
    return result;
  }

  private static List<String> parts(String cell, String separators) {
    List<String> parts = new ArrayList<>();
    for (String part : cell.split(separators)) {
      if (!part.isBlank()) {
        parts.add(part.strip());
      }
    }
    return parts;
  }
}
