package dev.dogleg.fit;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.week.CustomaryWeeks;
import dev.dogleg.plan.week.WeekPlanner;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * Planned weeks of one van by seed, a third of their visits told an hour, and newcomers to ask
 * about.
 *
 * @param week the week with its planned bookings, told times as windows
 * @param placed van-days of the planned bookings
 * @param told those that were told
 * @param newcomers whom to ask about
 */
public record QuestionWeeks(
    WeekRequest week, Map<String, Integer> placed, Set<String> told, List<WeekBooking> newcomers) {
  private static final int PLANNED = 30;

  /** A week need not be proven best to be asked about. */
  private static final long PLAN_EFFORT = 2_000_000L;

  private static final int QUARTER = 900;
  private static final int HOUR = 3_600;

  /** Services of all bookings are drawn together: so the planned ones fill this much of a week. */
  private static final double FILL = 0.88;

  /**
   * A week.
   *
   * @param seed seed
   * @param questions number of newcomers
   * @return week and newcomers
   */
  public static QuestionWeeks of(long seed, int questions) {
    return of(seed, questions, PLANNED);
  }

  /**
   * A week that is less full.
   *
   * @param seed seed
   * @param questions number of newcomers
   * @param planned number of bookings, 30 of which nearly fill a week
   * @return week and newcomers
   */
  public static QuestionWeeks of(long seed, int questions, int planned) {
    int all = planned + questions;
    WeekRequest drawn =
        CustomaryWeeks.week(
            seed, new CustomaryWeeks.Shape(all, 1, FILL * all / PLANNED, true, PLAN_EFFORT));
    WeekPlan plan = WeekPlanner.plan(with(drawn, drawn.bookings().subList(0, planned)));
    SplittableRandom random = new SplittableRandom(seed);
    Map<String, Integer> placed = new TreeMap<>();
    Map<String, TimeWindow> spans = new HashMap<>();
    for (int day = 0; day < plan.days().size(); day++) {
      for (PlannedStop stop : plan.days().get(day).stops()) {
        if (stop.kind() == PlannedStop.Kind.VISIT) {
          placed.put(stop.visitId(), day);
          if (random.nextInt(3) == 0) {
            int from = stop.arriveSeconds() / QUARTER * QUARTER - QUARTER * random.nextInt(3);
            spans.put(stop.visitId(), new TimeWindow(from, from + HOUR));
          }
        }
      }
    }
    List<WeekBooking> bookings = new ArrayList<>();
    for (WeekBooking booking : drawn.bookings().subList(0, planned)) {
      if (placed.containsKey(booking.id())) {
        bookings.add(told(booking, placed.get(booking.id()), spans.get(booking.id())));
      }
    }
    return new QuestionWeeks(
        with(drawn, bookings),
        placed,
        new HashSet<>(spans.keySet()),
        drawn.bookings().subList(planned, all));
  }

  /** {@return the week, prepared} */
  public FitWeek prepared() {
    return FitWeek.of(week, placed, told);
  }

  private static WeekBooking told(WeekBooking booking, int day, TimeWindow span) {
    List<DayChoice> choices = new ArrayList<>();
    for (DayChoice choice : booking.choices()) {
      if (span == null) {
        choices.add(choice);
      } else if (choice.day() == day) {
        choices.add(new DayChoice(day, choice.visit().arriving(List.of(span)), 0));
      }
    }
    return new WeekBooking(booking.id(), true, 0, choices);
  }

  private static WeekRequest with(WeekRequest week, List<WeekBooking> bookings) {
    return new WeekRequest(week.days(), bookings, week.prices(), week.seed(), week.effort());
  }
}
