package dev.dogleg.sampletown.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Tells pieces of one street from another street of the same name somewhere else. */
final class SameStreet {
  private static final double GAP_METRES = 220;

  private SameStreet() {}

  /** Gives each stroke the number of its street; pieces less than a gap apart are one street. */
  static int[] numbers(List<Stroke> strokes) {
    int[] numbers = new int[strokes.size()];
    Map<String, List<Integer>> byName = new LinkedHashMap<>();
    for (int s = 0; s < strokes.size(); s++) {
      numbers[s] = s;
      for (int other : byName.computeIfAbsent(strokes.get(s).name(), n -> new ArrayList<>())) {
        if (strokes.get(s).houses() != HouseStyle.NONE
            && strokes.get(s).line().distance(strokes.get(other).line()) < GAP_METRES) {
          merge(numbers, numbers[s], numbers[other]);
        }
      }
      byName.get(strokes.get(s).name()).add(s);
    }
    return numbers;
  }

  private static void merge(int[] numbers, int from, int into) {
    for (int i = 0; i < numbers.length; i++) {
      if (numbers[i] == from) {
        numbers[i] = into;
      }
    }
  }
}
