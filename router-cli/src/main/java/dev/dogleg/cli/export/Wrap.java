package dev.dogleg.cli.export;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks text at blanks. */
public final class Wrap {
  private static final Pattern SPACES = Pattern.compile("\\s+");

  private Wrap() {}

  /**
   * Breaks text into lines; a word longer than a line keeps its length, nothing is cut off.
   *
   * @param text one paragraph
   * @param columns most columns of a line, at least 1
   * @return at least one line
   */
  public static List<String> lines(String text, int columns) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : SPACES.split(text)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > columns) {
        lines.add(line.toString());
        line.setLength(0);
      }
      if (line.length() > 0) {
        line.append(' ');
      }
      line.append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
