package dev.dogleg.cli.terms;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.ClockKind;
import dev.dogleg.itinerary.DayRule.DayPlace;
import dev.dogleg.model.DayLimits;
import dev.dogleg.model.When;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/** What a client likes: a price on days liked less, and rules that should rather hold. */
public final class Likes {
  private Likes() {}

  /**
   * Prices what one booking of a stop likes.
   *
   * @param likes preferred days and hours
   * @param stop the stop
   * @param days van-days
   * @param seconds price of what is missed, in seconds of driving
   * @param rules takes rules, by number of the van-day
   */
  public static void apply(
      When likes, DraftStop stop, List<VanDay> days, int seconds, List<List<DayRule>> rules) {
    long price = Price.ofSeconds(seconds);
    for (DraftChoice choice : stop.choices()) {
      Optional<DayLimits> liked = likes.on(days.get(choice.day()).day());
      if (liked.isEmpty()) {
        choice.dearer(price);
      } else {
        rules.get(choice.day()).addAll(hours(liked.get(), stop, OptionalLong.of(price)));
      }
    }
  }

  private static List<DayRule> hours(DayLimits liked, DraftStop stop, OptionalLong price) {
    String name = "liked by " + stop.name();
    Set<String> who = Set.of(stop.id());
    List<DayRule> rules = new ArrayList<>();
    if (!liked.arriveWithin().equals(DayLimits.NONE.arriveWithin())) {
      rules.add(new DayRule.Clock(name, price, who, ClockKind.ARRIVE, liked.arriveWithin()));
    }
    if (liked.doneBySeconds() != TimeWindow.DAY_END) {
      rules.add(
          new DayRule.Clock(
              name,
              price,
              who,
              ClockKind.DONE_BY,
              List.of(new TimeWindow(0, liked.doneBySeconds()))));
    }
    if (!liked.vanWithin().equals(DayLimits.NONE.vanWithin())) {
      rules.add(new DayRule.Clock(name, price, who, ClockKind.VAN, liked.vanWithin()));
    }
    if (liked.first()) {
      rules.add(new DayRule.PlaceInDay(name, price, who, DayPlace.FIRST, 0));
    }
    return rules;
  }
}
