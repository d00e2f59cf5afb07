package dev.dogleg.itinerary;

import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.Set;

/**
 * A rule on the visits of one van-day, named by their ids; what each shape says and how its
 * breaches are counted stands in {@code docs/WEEK.md}.
 *
 * <p>A rule must hold, or should rather hold: then each counted breach costs {@link
 * #ratherSixtieths()}. Ids that the day does not ask for are allowed and mean nothing, except in
 * {@link Together}.
 */
public sealed interface DayRule {
  /** {@return the name under which a person knows the rule, for findings and reasons} */
  String name();

  /** {@return price of one counted breach, in sixtieths, 0..2^38; empty: the rule must hold} */
  OptionalLong ratherSixtieths();

  /** {@return whether the rule must hold} */
  default boolean must() {
    return ratherSixtieths().isEmpty();
  }

  /** What a {@link Clock} speaks of. */
  enum ClockKind {
    /** Arrival at the door and start of the service. */
    ARRIVE,
    /** End of the service. */
    DONE_BY,
    /** The whole stay of the van. */
    VAN
  }

  /**
   * Liked hours.
   *
   * @param name name of the rule
   * @param ratherSixtieths price of a breach, never empty
   * @param visits whom it concerns
   * @param kind what is meant
   * @param windows sorted, apart, at least one; just one for {@link ClockKind#DONE_BY}, of which
   *     the end counts
   */
  record Clock(
      String name,
      OptionalLong ratherSixtieths,
      Set<String> visits,
      ClockKind kind,
      List<TimeWindow> windows)
      implements DayRule {
    /** Checks and copies. */
    public Clock {
      DayRuleChecks.rather(name, ratherSixtieths);
      visits = DayRuleChecks.ids(visits);
      Objects.requireNonNull(kind, "kind");
      windows = List.copyOf(windows);
      if (windows.isEmpty() || (kind == ClockKind.DONE_BY && windows.size() != 1)) {
        throw new IllegalArgumentException("rule " + name + " has the wrong number of windows");
      }
    }
  }

  /** Which place in the day a {@link PlaceInDay} means. */
  enum DayPlace {
    /** The first visit. */
    FIRST,
    /** The last visit. */
    LAST,
    /** Any but the first. */
    NOT_FIRST,
    /** Any but the last. */
    NOT_LAST,
    /** Just the k-th. */
    EXACTLY
  }

  /**
   * Place in the day.
   *
   * @param name name of the rule
   * @param ratherSixtieths price of a breach; empty: must
   * @param visits whom it concerns
   * @param where which place
   * @param place k, counted from 1, for {@link DayPlace#EXACTLY}; 0 otherwise
   */
  record PlaceInDay(
      String name, OptionalLong ratherSixtieths, Set<String> visits, DayPlace where, int place)
      implements DayRule {
    /** Checks and copies. */
    public PlaceInDay {
      DayRuleChecks.rule(name, ratherSixtieths);
      visits = DayRuleChecks.ids(visits);
      Objects.requireNonNull(where, "where");
      if (where == DayPlace.EXACTLY ? place < 1 : place != 0) {
        throw new IllegalArgumentException("rule " + name + " has a wrong place: " + place);
      }
    }
  }

  /**
   * All of one kind before any of another.
   *
   * @param name name of the rule
   * @param ratherSixtieths price of a breach; empty: must
   * @param earlier A: these come first
   * @param later B: before these
   */
  record AllBefore(
      String name, OptionalLong ratherSixtieths, Set<String> earlier, Set<String> later)
      implements DayRule {
    /** Checks and copies. */
    public AllBefore {
      DayRuleChecks.rule(name, ratherSixtieths);
      earlier = DayRuleChecks.ids(earlier);
      later = DayRuleChecks.ids(later);
    }
  }

  /**
   * Never one kind directly after another.
   *
   * @param name name of the rule
   * @param ratherSixtieths price of a breach; empty: must
   * @param visits A: these do not come
   * @param after B: directly after these
   */
  record NotRightAfter(
      String name, OptionalLong ratherSixtieths, Set<String> visits, Set<String> after)
      implements DayRule {
    /** Checks and copies. */
    public NotRightAfter {
      DayRuleChecks.rule(name, ratherSixtieths);
      visits = DayRuleChecks.ids(visits);
      after = DayRuleChecks.ids(after);
    }
  }

  /**
   * So many, or so many load points, a day.
   *
   * @param name name of the rule
   * @param ratherSixtieths price of a breach; empty: must
   * @param points load points by visit, 1 or more each; visits that are missing have none
   * @param most N, 0 or more
   */
  record AtMost(String name, OptionalLong ratherSixtieths, Map<String, Integer> points, int most)
      implements DayRule {
    /** Checks and copies. */
    public AtMost {
      DayRuleChecks.rule(name, ratherSixtieths);
      points = DayRuleChecks.points(points);
      if (most < 0) {
        throw new IllegalArgumentException("rule " + name + ": most is 0 or more, was " + most);
      }
    }
  }

  /**
   * Time between two kinds, spent before the later one's groom.
   *
   * @param name name of the rule
   * @param from A
   * @param to B
   * @param seconds longer service of a visit of B directly after one of A, 0..43,200
   */
  record Changeover(String name, Set<String> from, Set<String> to, int seconds) implements DayRule {
    /** Checks and copies. */
    public Changeover {
      DayRuleChecks.rule(name, OptionalLong.empty());
      from = DayRuleChecks.ids(from);
      to = DayRuleChecks.ids(to);
      DayRuleChecks.seconds(name, seconds);
    }

    @Override
    public OptionalLong ratherSixtieths() {
      return OptionalLong.empty();
    }
  }

  /**
   * Longer or shorter service by place in the day.
   *
   * @param name name of the rule
   * @param visits whom it concerns
   * @param fromPlace first place it speaks of, counted from 1
   * @param toPlace last place it speaks of
   * @param timesThousandths factor, 0..10,000 thousandths
   * @param plusSeconds added after the factor, -43,200..43,200
   */
  record PlaceMinutes(
      String name,
      Set<String> visits,
      int fromPlace,
      int toPlace,
      int timesThousandths,
      int plusSeconds)
      implements DayRule {
    /** Checks and copies. */
    public PlaceMinutes {
      DayRuleChecks.rule(name, OptionalLong.empty());
      visits = DayRuleChecks.ids(visits);
      DayRuleChecks.seconds(name, Math.abs(plusSeconds));
      if (fromPlace < 1 || toPlace < fromPlace) {
        throw new IllegalArgumentException(
            "rule " + name + " has wrong places: " + fromPlace + ".." + toPlace);
      }
      if (timesThousandths < 0 || timesThousandths > 10_000) {
        throw new IllegalArgumentException(
            "rule " + name + ": factor out of range: " + timesThousandths);
      }
    }

    @Override
    public OptionalLong ratherSixtieths() {
      return OptionalLong.empty();
    }
  }

  /**
   * All on one van-day, or none.
   *
   * @param name name of the rule
   * @param ratherSixtieths price of a breach; empty: must
   * @param visits whom it concerns
   */
  record Together(String name, OptionalLong ratherSixtieths, Set<String> visits)
      implements DayRule {
    /** Checks and copies. */
    public Together {
      DayRuleChecks.rule(name, ratherSixtieths);
      visits = DayRuleChecks.ids(visits);
    }
  }

  /**
   * At most one of them on a van-day.
   *
   * @param name name of the rule
   * @param ratherSixtieths price of a breach; empty: must
   * @param visits whom it concerns
   */
  record NotTogether(String name, OptionalLong ratherSixtieths, Set<String> visits)
      implements DayRule {
    /** Checks and copies. */
    public NotTogether {
      DayRuleChecks.rule(name, ratherSixtieths);
      visits = DayRuleChecks.ids(visits);
    }
  }
}
