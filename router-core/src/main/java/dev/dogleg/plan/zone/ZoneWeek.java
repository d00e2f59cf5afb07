package dev.dogleg.plan.zone;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekRequest;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;

/**
 * Days for zones: what is asked.
 *
 * @param week van-days and visits without any zone; each visit has every van-day on which it might
 *     be
 * @param zones at least one
 * @param around numbers of the zones that hold a visit, ascending, by its id; a visit that no zone
 *     binds (it lies in none, or its time was told) has none or is missing
 */
public record ZoneWeek(WeekRequest week, List<ZoneDays> zones, Map<String, List<Integer>> around) {
  private static final long SIXTIETHS_PER_MINUTE = 60L * Prices.SIXTIETHS_PER_DRIVE_SECOND;

  /** Checks the numbers. */
  public ZoneWeek {
    Objects.requireNonNull(week, "week");
    zones = List.copyOf(zones);
    Map<String, List<Integer>> copy = new TreeMap<>();
    around.forEach((id, some) -> copy.put(id, List.copyOf(some)));
    around = Map.copyOf(copy);
    if (zones.isEmpty()) {
      throw new IllegalArgumentException("no zone");
    }
    for (List<Integer> some : around.values()) {
      for (int zone : some) {
        Objects.checkIndex(zone, zones.size());
      }
    }
  }

  /** {@return weekday of a van-day} */
  DayOfWeek weekday(int vanDay) {
    return week.days().get(vanDay).shift().day().date().getDayOfWeek();
  }

  /** Numbers of the zones that bind a visit on a van-day. */
  List<Integer> binding(String visitId, int vanDay) {
    String groomer = week.days().get(vanDay).shift().groomerId();
    return around.getOrDefault(visitId, List.of()).stream()
        .filter(zone -> zones.get(zone).groomerId().map(groomer::equals).orElse(true))
        .toList();
  }

  /**
   * The week with zones worked on given days.
   *
   * @param days weekdays of each zone, in the order of the zones
   * @return the request that the planner is asked
   */
  public WeekRequest with(List<Set<DayOfWeek>> days) {
    List<WeekBooking> bookings = new ArrayList<>();
    for (WeekBooking booking : week.bookings()) {
      List<DayChoice> choices = new ArrayList<>();
      for (DayChoice choice : booking.choices()) {
        long extra = extraSixtieths(binding(booking.id(), choice.day()), choice.day(), days);
        if (extra >= 0) {
          choices.add(new DayChoice(choice.day(), choice.visit(), choice.extraSixtieths() + extra));
        }
      }
      bookings.add(
          new WeekBooking(booking.id(), booking.counted(), booking.leftOutSixtieths(), choices));
    }
    return new WeekRequest(week.days(), bookings, week.prices(), week.seed(), week.effort());
  }

  /** What a visit pays on a van-day; below 0 where it may not be made. */
  private long extraSixtieths(List<Integer> binding, int vanDay, List<Set<DayOfWeek>> days) {
    DayOfWeek weekday = weekday(vanDay);
    if (binding.isEmpty() || binding.stream().anyMatch(zone -> days.get(zone).contains(weekday))) {
      return 0;
    }
    if (binding.stream().anyMatch(zone -> zones.get(zone).strength().must())) {
      return -1;
    }
    return SIXTIETHS_PER_MINUTE
        * binding.stream()
            .mapToInt(zone -> zones.get(zone).strength().ratherMinutes())
            .min()
            .orElseThrow();
  }

  /** {@return weekdays of each zone as they are now} */
  public List<Set<DayOfWeek>> now() {
    return zones.stream().map(ZoneDays::now).toList();
  }
}
