package dev.dogleg.groom;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Finds things by name, other name, or a name with one typing error.
 *
 * <p>Life cycle: made once, then only read. A name beats another thing's other name; of two equal
 * ones the earlier thing is found.
 *
 * @param <T> kind of thing
 */
final class NameIndex<T> {
  /** Shorter words have too many neighbours for a typing error to be told from another word. */
  private static final int SHORTEST_NEAR = 4;

  private static final int MOST_NEAREST = 3;

  private record Entry<T>(String shown, T value, boolean isName) {}

  private final Map<String, Entry<T>> byFolded = new LinkedHashMap<>();

  NameIndex(Collection<T> things, Function<T, String> name, Function<T, List<String>> alsoCalled) {
    for (T thing : things) {
      String shown = name.apply(thing);
      byFolded.putIfAbsent(Folding.fold(shown), new Entry<>(shown, thing, true));
    }
    for (T thing : things) {
      for (String other : alsoCalled.apply(thing)) {
        byFolded.putIfAbsent(Folding.fold(other), new Entry<>(name.apply(thing), thing, false));
      }
    }
  }

  /** Shown names, each once, in the order of the table. */
  List<String> names() {
    return byFolded.values().stream().map(Entry::shown).distinct().toList();
  }

  /** Finds the name or another name, without any typing error. */
  Optional<T> sure(String text) {
    return Optional.ofNullable(byFolded.get(Folding.fold(text))).map(Entry::value);
  }

  Match<T> find(String text) {
    String folded = Folding.fold(text);
    Entry<T> found = byFolded.get(folded);
    if (found != null) {
      MatchGrade grade = found.isName() ? MatchGrade.EXACT : MatchGrade.ALIAS;
      return new Match<>(grade, Optional.of(found.value()), List.of());
    }
    List<String> nearest = nearest(folded);
    Set<T> near = new LinkedHashSet<>();
    if (folded.length() >= SHORTEST_NEAR) {
      byFolded.forEach(
          (name, entry) -> {
            if (name.length() >= SHORTEST_NEAR && EditDistance.between(folded, name) <= 1) {
              near.add(entry.value());
            }
          });
    }
    return near.size() == 1
        ? new Match<>(MatchGrade.NEAR, near.stream().findFirst(), nearest)
        : new Match<>(MatchGrade.NONE, Optional.empty(), nearest);
  }

  /** A name with its distance from what was looked up. */
  private record Candidate(String shown, double distance) {}

  private List<String> nearest(String folded) {
    if (folded.isEmpty()) {
      return List.of();
    }
    List<Candidate> candidates = new ArrayList<>();
    byFolded.forEach(
        (name, entry) -> candidates.add(new Candidate(entry.shown(), gap(folded, name))));
    return candidates.stream()
        .filter(candidate -> candidate.distance() <= 0.5)
        .sorted(Comparator.comparingDouble(Candidate::distance).thenComparing(Candidate::shown))
        .map(Candidate::shown)
        .distinct()
        .limit(MOST_NEAREST)
        .toList();
  }

  /** Typing errors as a share of the longer word; a name that holds the text whole is near too. */
  private static double gap(String folded, String name) {
    if (folded.length() >= 3 && (" " + name + " ").contains(" " + folded + " ")) {
      return 0.3;
    }
    return (double) EditDistance.between(folded, name) / Math.max(folded.length(), name.length());
  }
}
