package dev.dogleg.cli.terms;

import dev.dogleg.model.TagMatch;
import dev.dogleg.model.TagTerm;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The stops that may be made on one van-day, and which of them a rule means. */
final class Members {
  private final int day;
  private final Collection<DraftStop> stops;

  Members(int day, Collection<DraftStop> stops) {
    this.day = day;
    this.stops = stops;
  }

  /** Whether one of the pets of a stop matches. An errand is meant only where it is named. */
  static boolean matches(TagMatch match, DraftChoice choice) {
    return choice.petTags().stream().anyMatch(tags -> matches(match, tags));
  }

  private static boolean matches(TagMatch match, Set<String> tags) {
    return match.terms().stream().anyMatch(term -> matches(term, tags));
  }

  private static boolean matches(TagTerm term, Set<String> tags) {
    return term.matches(tags)
        && (!tags.contains(StopTagger.ERRAND) || term.all().contains(StopTagger.ERRAND));
  }

  /** Ids of the stops of this day that match. */
  NavigableSet<String> of(TagMatch match) {
    NavigableSet<String> ids = new TreeSet<>();
    for (DraftStop stop : stops) {
      stop.on(day).filter(choice -> matches(match, choice)).ifPresent(c -> ids.add(stop.id()));
    }
    return ids;
  }

  /** Load points of the stops of this day that have any: the sum over their pets. */
  Map<String, Integer> points(TagMatch match) {
    NavigableMap<String, Integer> points = new TreeMap<>();
    for (DraftStop stop : stops) {
      int sum =
          stop.on(day).stream()
              .flatMap(choice -> choice.petTags().stream())
              .filter(tags -> matches(match, tags))
              .mapToInt(match::points)
              .sum();
      if (sum > 0) {
        points.put(stop.id(), sum);
      }
    }
    return points;
  }

  /**
   * Groups of stops that a rule puts together or keeps apart: one for each tag that a name with
   * {@code *} stands for, else one. A stop belongs to a group if it matches on any of its days.
   */
  List<NavigableSet<String>> groups(TagMatch match) {
    NavigableMap<String, NavigableSet<String>> groups = new TreeMap<>();
    for (DraftStop stop : stops) {
      for (DraftChoice choice : stop.choices()) {
        for (Set<String> tags : choice.petTags()) {
          if (matches(match, tags)) {
            keys(match, tags)
                .forEach(key -> groups.computeIfAbsent(key, k -> new TreeSet<>()).add(stop.id()));
          }
        }
      }
    }
    return groups.values().stream().filter(group -> group.size() > 1).toList();
  }

  private static NavigableSet<String> keys(TagMatch match, Set<String> tags) {
    NavigableSet<String> keys = new TreeSet<>();
    for (String name : match.names()) {
      if (name.endsWith("*")) {
        String begin = name.substring(0, name.length() - 1);
        tags.stream().filter(tag -> tag.startsWith(begin)).forEach(keys::add);
      }
    }
    if (keys.isEmpty()) {
      keys.add("");
    }
    return keys;
  }

  /** Whether a stop may be made on this day. */
  boolean asked(String id) {
    return stops.stream().anyMatch(stop -> stop.id().equals(id) && stop.on(day).isPresent());
  }
}
