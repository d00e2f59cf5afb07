package dev.dogleg.groom;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Reads the cells of one row; every cell that cannot be read is a fault, and then {@link #sound()}
 * is false and the row is set aside.
 */
final class Cells {
  private final TableRow row;
  private final Faults faults;
  private boolean sound = true;

  Cells(TableRow row, Faults faults) {
    this.row = row;
    this.faults = faults;
  }

  boolean sound() {
    return sound;
  }

  void fault(String column, String code, String expected, String hint) {
    sound = false;
    faults.add(
        new Fault(code, Severity.ASIDE, row.where().at(column), row.cell(column), expected, hint));
  }

  String text(String column) {
    return row.cell(column);
  }

  String needed(String column) {
    String text = row.cell(column);
    if (text.isEmpty()) {
      fault(column, "empty-cell", "something in column " + column, "");
    }
    return text;
  }

  List<String> list(String column) {
    return Arrays.stream(row.cell(column).split(";"))
        .map(String::strip)
        .filter(part -> !part.isEmpty())
        .toList();
  }

  int whole(String column, int least, int most) {
    try {
      int number = Integer.parseInt(row.cell(column));
      if (number >= least && number <= most) {
        return number;
      }
    } catch (NumberFormatException notWhole) {
      // said below, together with the range
    }
    fault(column, "bad-number", "a whole number from " + least + " to " + most, "");
    return least;
  }

  double share(String column, double least, double most) {
    try {
      double number = Double.parseDouble(row.cell(column));
      if (number >= least && number <= most) {
        return number;
      }
    } catch (NumberFormatException notNumber) {
      // said below, together with the range
    }
    fault(column, "bad-number", "a number from " + least + " to " + most, "a point, no comma");
    return least;
  }

  <E extends Enum<E>> E word(String column, Class<E> words) {
    return wordOf(column, row.cell(column), words);
  }

  <E extends Enum<E>> List<E> wordList(String column, Class<E> words) {
    List<E> found = new ArrayList<>();
    list(column).forEach(part -> found.add(wordOf(column, part, words)));
    return found;
  }

  private <E extends Enum<E>> E wordOf(String column, String text, Class<E> words) {
    String asked = text.toUpperCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
    E[] all = words.getEnumConstants();
    for (E word : all) {
      if (word.name().equals(asked)) {
        return word;
      }
    }
    List<String> names =
        Arrays.stream(all)
            .map(word -> word.name().toLowerCase(Locale.ROOT).replace('_', '-'))
            .toList();
    fault(column, "unknown-word", "one of " + String.join(", ", names), "");
    return all[0];
  }
}
