package dev.dogleg.cli.terms;

import dev.dogleg.model.Business;
import dev.dogleg.model.DayEntry;
import dev.dogleg.model.Groomer;
import dev.dogleg.model.Helper;
import dev.dogleg.model.Shifts;
import dev.dogleg.model.Tag;
import dev.dogleg.model.Van;
import dev.dogleg.model.WallSpan;
import dev.dogleg.time.WorkDay;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/** Makes the van-days of a run out of the card and the special days. */
public final class VanDays {
  /** Tag of a crew with a helper. */
  public static final String HELPER = "helper";

  /** Tag of a van with a lift. */
  public static final String LIFT = "lift";

  private final Business business;
  private final Shifts shifts;

  private VanDays(Business business, List<DayEntry> entries) {
    this.business = business;
    this.shifts = new Shifts(business.groomers(), entries);
  }

  /**
   * The van-days.
   *
   * @param business the card
   * @param entries special days
   * @param dates days of the run, in order
   * @return by date, then in the card's order of groomers
   */
  public static List<VanDay> of(Business business, List<DayEntry> entries, List<LocalDate> dates) {
    VanDays maker = new VanDays(business, entries);
    List<VanDay> days = new ArrayList<>();
    for (LocalDate date : dates) {
      for (Groomer groomer : business.groomers()) {
        maker.day(days.size(), groomer, date).ifPresent(days::add);
      }
    }
    return List.copyOf(days);
  }

  private Optional<VanDay> day(int number, Groomer groomer, LocalDate date) {
    List<DayEntry> rows = shifts.entriesOf(groomer, date);
    Optional<WallSpan> hours = shifts.hours(groomer, date);
    if (hours.isEmpty()) {
      return Optional.empty();
    }
    Van van = business.vanOf(groomer);
    Optional<String> helper = rows.stream().flatMap(row -> row.helper().stream()).findFirst();
    return Optional.of(
        new VanDay(
            number,
            groomer,
            van,
            new WorkDay(date, business.zone()),
            hours.get(),
            rows.stream().flatMap(row -> row.start().stream()).findFirst().orElse(groomer.home()),
            rows.stream().flatMap(row -> row.end().stream()).findFirst().orElse(groomer.home()),
            helper,
            dayTags(date, rows),
            crewTags(groomer, van, helper, date)));
  }

  private static NavigableSet<String> dayTags(LocalDate date, List<DayEntry> rows) {
    NavigableSet<String> tags = weekday(date.getDayOfWeek());
    rows.forEach(row -> addAll(tags, row.tags(), date));
    return tags;
  }

  /**
   * The words for a weekday, as tags.
   *
   * @param day the weekday
   * @return its names, short and long, and whether it is of the weekend
   */
  static NavigableSet<String> weekday(DayOfWeek day) {
    String name = day.name().toLowerCase(Locale.ROOT);
    boolean weekend = day == DayOfWeek.SATURDAY || day == DayOfWeek.SUNDAY;
    NavigableSet<String> tags = new TreeSet<>();
    for (int letters = 3; letters <= Math.min(5, name.length()); letters++) {
      tags.add(name.substring(0, letters));
    }
    tags.add(name);
    tags.add(name + "s");
    tags.add(weekend ? "weekend" : "weekday");
    tags.add(weekend ? "weekends" : "weekdays");
    return tags;
  }

  private NavigableSet<String> crewTags(
      Groomer groomer, Van van, Optional<String> helper, LocalDate date) {
    NavigableSet<String> tags = new TreeSet<>(List.of(groomer.id(), van.id()));
    addAll(tags, groomer.tags(), date);
    addAll(tags, van.tags(), date);
    if (van.lift()) {
      tags.add(LIFT);
    }
    if (helper.isPresent()) {
      tags.add(HELPER);
      for (Helper known : business.week().helpers()) {
        if (known.name().equalsIgnoreCase(helper.get().strip())
            || known.id().equals(helper.get())) {
          tags.add(known.id());
          addAll(tags, known.tags(), date);
        }
      }
    }
    return tags;
  }

  private static void addAll(NavigableSet<String> names, List<Tag> tags, LocalDate date) {
    tags.stream().filter(tag -> tag.holdsOn(date)).map(Tag::name).forEach(names::add);
  }
}
