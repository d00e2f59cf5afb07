package dev.dogleg.plan.late;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.DayPlace;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Turns the rules of a whole day into the rules of its rest: what is done is fixed, and what it has
 * settled speaks no more.
 *
 * <p>Maintainers: the rest begins with the last visit done (the anchor), where there is one, so
 * that a rule on neighbours sees it. Breaches of what is done are a constant, left out here.
 */
final class RestRules {
  private final Set<String> done;
  private final Set<String> cancelled;
  private final String anchor;
  private final int offset;
  private final List<DayRule> rules = new ArrayList<>();
  private final Set<String> gone = new TreeSet<>();

  /**
   * Rewrites.
   *
   * @param rules the day's rules
   * @param done visits made, in their order; the last one is the anchor
   * @param cancelled visits that will not be made
   */
  RestRules(List<DayRule> rules, List<String> done, Set<String> cancelled) {
    this.done = new HashSet<>(done);
    this.cancelled = cancelled;
    anchor = done.isEmpty() ? "" : done.get(done.size() - 1);
    offset = Math.max(0, done.size() - 1);
    rules.forEach(this::add);
  }

  /** {@return rules on the anchor and what is left} */
  List<DayRule> rules() {
    return rules;
  }

  /** {@return names of must rules that cannot hold any more, whatever is done} */
  List<String> gone() {
    return List.copyOf(gone);
  }

  private void add(DayRule rule) {
    if (rule instanceof DayRule.Clock clock) {
      Set<String> left = left(clock.visits());
      if (!left.isEmpty()) {
        rules.add(
            new DayRule.Clock(
                clock.name(), clock.ratherSixtieths(), left, clock.kind(), clock.windows()));
      }
    } else if (rule instanceof DayRule.PlaceInDay place) {
      place(place);
    } else if (rule instanceof DayRule.AllBefore before) {
      before(before);
    } else if (rule instanceof DayRule.NotRightAfter after) {
      if (!left(after.visits()).isEmpty()) {
        rules.add(
            new DayRule.NotRightAfter(
                after.name(), after.ratherSixtieths(), left(after.visits()), after.after()));
      }
    } else if (rule instanceof DayRule.AtMost most) {
      atMost(most);
    } else if (rule instanceof DayRule.Changeover change) {
      if (!left(change.to()).isEmpty()) {
        rules.add(
            new DayRule.Changeover(
                change.name(), change.from(), left(change.to()), change.seconds()));
      }
    } else if (rule instanceof DayRule.PlaceMinutes minutes) {
      minutes(minutes);
    } else if (rule instanceof DayRule.Together together) {
      together(together);
    } else if (rule instanceof DayRule.NotTogether apart) {
      apart(apart);
    }
  }

  private Set<String> left(Set<String> ids) {
    Set<String> left = new TreeSet<>(ids);
    left.removeAll(done);
    return left;
  }

  private boolean anyDone(Set<String> ids) {
    return !Collections.disjoint(ids, done);
  }

  /** Says that a must rule cannot hold any more for some visit that is left. */
  private void cannotHold(DayRule rule, Set<String> left) {
    if (rule.must() && !left.isEmpty() && !cancelled.containsAll(left)) {
      gone.add(rule.name());
    }
  }

  private void place(DayRule.PlaceInDay rule) {
    Set<String> left = left(rule.visits());
    boolean started = !done.isEmpty();
    int place = rule.where() == DayPlace.EXACTLY ? rule.place() - offset : 0;
    boolean passed =
        started
            && (rule.where() == DayPlace.FIRST || (rule.where() == DayPlace.EXACTLY && place < 2));
    if (passed) {
      cannotHold(rule, left);
      each(rule, left);
    } else if (!left.isEmpty()) {
      rules.add(
          new DayRule.PlaceInDay(rule.name(), rule.ratherSixtieths(), left, rule.where(), place));
    }
  }

  /** After one of B each of A is a breach already; what can still hold of a must rule does. */
  private void before(DayRule.AllBefore rule) {
    Set<String> earlier = left(rule.earlier());
    Set<String> later = left(rule.later());
    boolean settled = anyDone(rule.later());
    if (settled) {
      cannotHold(rule, earlier);
      each(rule, earlier);
    }
    if (!earlier.isEmpty() && !later.isEmpty() && (rule.must() || !settled)) {
      rules.add(new DayRule.AllBefore(rule.name(), rule.ratherSixtieths(), earlier, later));
    }
  }

  /** Of a rule that should rather hold, each of these that is served is a breach. */
  private void each(DayRule rule, Set<String> ids) {
    if (!rule.must() && !ids.isEmpty()) {
      none(rule, ids);
    }
  }

  private void none(DayRule rule, Set<String> ids) {
    Map<String, Integer> points = new TreeMap<>();
    ids.forEach(id -> points.put(id, 1));
    rules.add(new DayRule.AtMost(rule.name(), rule.ratherSixtieths(), points, 0));
  }

  /**
   * With some of the group done, what is left of it is to be served; as it is anyway, where there
   * is room, nothing needs to be said where it must. Where it should rather, the anchor, which is
   * served, stands for those that are done.
   */
  private void together(DayRule.Together rule) {
    Set<String> group = left(rule.visits());
    group.removeAll(cancelled);
    boolean settled = anyDone(rule.visits());
    if (settled && rule.must()) {
      return;
    }
    if (settled && !group.isEmpty()) {
      group.add(anchor);
    }
    if (group.size() > 1) {
      rules.add(new DayRule.Together(rule.name(), rule.ratherSixtieths(), group));
    }
  }

  private void atMost(DayRule.AtMost rule) {
    Map<String, Integer> points = new TreeMap<>(rule.points());
    int most = rule.most();
    for (String id : done) {
      most -= rule.points().getOrDefault(id, 0);
      points.remove(id);
    }
    if (!points.isEmpty()) {
      rules.add(new DayRule.AtMost(rule.name(), rule.ratherSixtieths(), points, Math.max(0, most)));
    }
  }

  private void minutes(DayRule.PlaceMinutes rule) {
    int last = rule.toPlace() - offset;
    if (last >= 1 && !left(rule.visits()).isEmpty()) {
      rules.add(
          new DayRule.PlaceMinutes(
              rule.name(),
              left(rule.visits()),
              Math.max(1, rule.fromPlace() - offset),
              last,
              rule.timesThousandths(),
              rule.plusSeconds()));
    }
  }

  /** With one of them done, each other one is one too many. */
  private void apart(DayRule.NotTogether rule) {
    Set<String> left = left(rule.visits());
    if (!left.isEmpty() && anyDone(rule.visits())) {
      none(rule, left);
    } else if (left.size() > 1) {
      rules.add(new DayRule.NotTogether(rule.name(), rule.ratherSixtieths(), left));
    }
  }
}
