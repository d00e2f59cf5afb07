package dev.dogleg.cli.terms;

import dev.dogleg.model.Groomer;
import dev.dogleg.model.Place;
import dev.dogleg.model.Van;
import dev.dogleg.model.WallSpan;
import dev.dogleg.time.WorkDay;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.Optional;

/**
 * One groomer's working day with one van.
 *
 * @param number its number in the run, from 0
 * @param groomer who works
 * @param van with which van
 * @param day date and zone
 * @param hours the shift by the wall clock
 * @param start where it starts
 * @param end where it ends
 * @param helper who comes along, by name
 * @param dayTags tags of the day, its weekday's words among them
 * @param crewTags tags of groomer, van and helper, their ids among them
 */
public record VanDay(
    int number,
    Groomer groomer,
    Van van,
    WorkDay day,
    WallSpan hours,
    Place start,
    Place end,
    Optional<String> helper,
    NavigableSet<String> dayTags,
    NavigableSet<String> crewTags) {
  /** Checks that nothing is null. */
  public VanDay {
    Objects.requireNonNull(groomer, "groomer");
    Objects.requireNonNull(van, "van");
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(hours, "hours");
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(end, "end");
    Objects.requireNonNull(helper, "helper");
  }

  /** {@return {@code 2027-03-02, Robin}} */
  public String title() {
    return day.date() + ", " + groomer.name();
  }

  /**
   * The vans that are out.
   *
   * @param days van-days of one business
   * @return each van once, in the order in which they are first out
   */
  public static List<Van> vans(List<VanDay> days) {
    Map<String, Van> vans = new LinkedHashMap<>();
    days.forEach(day -> vans.putIfAbsent(day.van().id(), day.van()));
    return List.copyOf(vans.values());
  }
}
