package dev.dogleg.plan.week;

import dev.dogleg.itinerary.DayRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What the rules of a van-day say of a set of visits, whatever their order: the shapes that look at
 * the set alone ({@code docs/WEEK.md}: at most, together, not together).
 */
final class SetRules {
  private static final class Points {
    private final int[] points;
    private final int most;
    private final boolean must;
    private final long price;

    Points(int[] points, int most, boolean must, long price) {
      this.points = points;
      this.most = most;
      this.must = must;
      this.price = price;
    }
  }

  private static final class Group {
    private final boolean[] in;
    private final int size;
    private final boolean must;
    private final long price;

    Group(boolean[] in, int size, boolean must, long price) {
      this.in = in;
      this.size = size;
      this.must = must;
      this.price = price;
    }
  }

  private final List<Points> atMost = new ArrayList<>();
  private final List<Group> together = new ArrayList<>();
  private final List<Group> apart = new ArrayList<>();

  SetRules(VanKind kind) {
    for (DayRule rule : kind.day().terms().rules()) {
      long price = rule.ratherSixtieths().orElse(0);
      if (rule instanceof DayRule.AtMost most) {
        int[] points = new int[kind.size()];
        Arrays.setAll(points, j -> most.points().getOrDefault(kind.visit(j).id(), 0));
        atMost.add(new Points(points, most.most(), rule.must(), price));
      } else if (rule instanceof DayRule.Together all) {
        together.add(group(kind, all.visits(), all.visits().size(), rule));
      } else if (rule instanceof DayRule.NotTogether one) {
        apart.add(group(kind, one.visits(), 1, rule));
      }
    }
  }

  private static Group group(VanKind kind, java.util.Set<String> visits, int size, DayRule rule) {
    boolean[] in = new boolean[kind.size()];
    for (int j = 0; j < in.length; j++) {
      in[j] = visits.contains(kind.visit(j).id());
    }
    return new Group(in, size, rule.must(), rule.ratherSixtieths().orElse(0));
  }

  /** Whether a rule that must hold forbids the set and every larger one. */
  boolean never(int[] locals) {
    for (Points rule : atMost) {
      if (rule.must && points(rule, locals) > rule.most) {
        return true;
      }
    }
    for (Group rule : apart) {
      if (rule.must && members(rule, locals) > 1) {
        return true;
      }
    }
    return false;
  }

  /** Whether a rule that must hold forbids just this set. */
  boolean incomplete(int[] locals) {
    for (Group rule : together) {
      int members = members(rule, locals);
      if (rule.must && members > 0 && members < rule.size) {
        return true;
      }
    }
    return false;
  }

  /** {@return price of the breaches of rules that should rather hold} */
  long price(int[] locals) {
    long price = 0;
    for (Points rule : atMost) {
      price += rule.must ? 0 : rule.price * Math.max(0, points(rule, locals) - rule.most);
    }
    for (Group rule : apart) {
      price += rule.must ? 0 : rule.price * Math.max(0, members(rule, locals) - 1);
    }
    for (Group rule : together) {
      int members = members(rule, locals);
      price += !rule.must && members > 0 && members < rule.size ? rule.price : 0;
    }
    return price;
  }

  private static int points(Points rule, int[] locals) {
    int sum = 0;
    for (int j : locals) {
      sum += rule.points[j];
    }
    return sum;
  }

  private static int members(Group rule, int[] locals) {
    int count = 0;
    for (int j : locals) {
      count += rule.in[j] ? 1 : 0;
    }
    return count;
  }
}
