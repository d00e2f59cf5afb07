package dev.dogleg.audit;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.AllBefore;
import dev.dogleg.itinerary.DayRule.NotRightAfter;
import dev.dogleg.itinerary.DayRule.PlaceInDay;
import java.util.ArrayList;
import java.util.List;

/**
 * What an order of visits does against the rules that ask who comes when; the clock does not
 * matter.
 */
final class OrderRules {
  private final List<String> ids;
  private final List<RuleBreach> breaches = new ArrayList<>();

  private OrderRules(List<String> ids) {
    this.ids = ids;
  }

  /**
   * Every breach of one rule.
   *
   * @param rule a rule of any shape
   * @param ids visits in the order of the day
   * @return in the order of the day; empty for shapes that time or services settle
   */
  static List<RuleBreach> breaches(DayRule rule, List<String> ids) {
    OrderRules order = new OrderRules(ids);
    if (rule instanceof PlaceInDay place) {
      order.places(place);
    } else if (rule instanceof AllBefore before) {
      order.before(before);
    } else if (rule instanceof NotRightAfter after) {
      order.rightAfter(after);
    } else {
      CompanyRules.breach(rule, ids).ifPresent(order.breaches::add);
    }
    return order.breaches;
  }

  private void places(PlaceInDay rule) {
    int last = ids.size();
    for (int place = 1; place <= last; place++) {
      if (!rule.visits().contains(ids.get(place - 1))) {
        continue;
      }
      switch (rule.where()) {
        case FIRST -> place(rule, place, 1, place == 1, "must be the first");
        case LAST -> place(rule, place, last, place == last, "must be the last");
        case NOT_FIRST -> place(rule, place, 2, place != 1, "must not be the first");
        case NOT_LAST -> place(rule, place, last - 1, place != last, "must not be the last");
        case EXACTLY ->
            place(
                rule, place, rule.place(), place == rule.place(), "must be number " + rule.place());
      }
    }
  }

  private void place(PlaceInDay rule, int place, int allowed, boolean holds, String must) {
    if (!holds) {
      String text = "visit %s %s of the day and is number %d of %d.";
      text = text.formatted(ids.get(place - 1), must, place, ids.size());
      breaches.add(new RuleBreach(rule, place - 1, 1, place, allowed, text));
    }
  }

  private void before(AllBefore rule) {
    int firstLater = -1;
    for (int k = 0; k < ids.size(); k++) {
      String id = ids.get(k);
      if (firstLater >= 0 && rule.earlier().contains(id)) {
        String text = "visit %s is number %d of the day and must come before visit %s, number %d.";
        text = text.formatted(id, k + 1, ids.get(firstLater), firstLater + 1);
        breaches.add(new RuleBreach(rule, k, 1, k + 1, firstLater + 1, text));
      }
      if (firstLater < 0 && rule.later().contains(id)) {
        firstLater = k;
      }
    }
  }

  private void rightAfter(NotRightAfter rule) {
    for (int k = 1; k < ids.size(); k++) {
      if (rule.visits().contains(ids.get(k)) && rule.after().contains(ids.get(k - 1))) {
        String text = "visit %s comes directly after visit %s.";
        text = text.formatted(ids.get(k), ids.get(k - 1));
        breaches.add(new RuleBreach(rule, k, 1, 1, 0, text));
      }
    }
  }
}
