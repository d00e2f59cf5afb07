package dev.dogleg.cli.words;

import java.util.Arrays;
import java.util.Collection;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/**
 * Says which known word a misspelt one is near to: at most two typing errors (one in words of up to
 * four letters), or the same letters in another order.
 */
public final class Nearness {
  private static final LevenshteinDistance TWO = new LevenshteinDistance(2);
  private static final int SHORT = 4;
  private static final int LONGEST = 60;

  private Nearness() {}

  /**
   * The nearest of some words.
   *
   * @param word what was written
   * @param known the words it could be
   * @return the nearest, the first of equals in the collection's order; empty where none is near
   */
  public static Optional<String> nearest(String word, Collection<String> known) {
    String best = null;
    int least = Integer.MAX_VALUE;
    for (String candidate : known) {
      int distance = distance(word, candidate);
      if (distance < least) {
        best = candidate;
        least = distance;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Typing errors, or {@code Integer.MAX_VALUE} where the words are not near. */
  private static int distance(String word, String candidate) {
    if (word.length() > LONGEST) {
      return Integer.MAX_VALUE;
    }
    if (sorted(word).equals(sorted(candidate)) && word.length() > 2) {
      return 1;
    }
    int distance = TWO.apply(word, candidate);
    int most = Math.min(word.length(), candidate.length()) <= SHORT ? 1 : 2;
    return distance < 0 || distance > most ? Integer.MAX_VALUE : distance;
  }

  private static String sorted(String word) {
    char[] letters = word.toCharArray();
    Arrays.sort(letters);
    return new String(letters);
  }
}
