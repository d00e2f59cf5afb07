package dev.dogleg.cli.command;

import dev.dogleg.cli.command.PlanFile.Group;
import dev.dogleg.cli.export.PlanReader.PlacedRow;
import dev.dogleg.cli.prepare.FollowedWeek;
import dev.dogleg.cli.prepare.FollowedWeek.FollowedStop;
import dev.dogleg.cli.prepare.LookUps;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.cli.prepare.PlanFollower;
import dev.dogleg.cli.prepare.PlanFollower.FollowedRow;
import dev.dogleg.cli.prepare.Preparation;
import dev.dogleg.cli.prepare.PreparedDay;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.cli.terms.VanDays;
import dev.dogleg.fault.Faults;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.time.WorkDay;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The days of a plan file, prepared under everything the book says. */
final class PlanDays {
  private final List<VanDay> days;
  private final FollowedWeek week;
  private final Faults faults;

  private PlanDays(List<VanDay> days, FollowedWeek week, Faults faults) {
    this.days = days;
    this.week = week;
    this.faults = faults;
  }

  /**
   * Prepares the days of a plan.
   *
   * @param groups its rows, at least one group
   * @param input the book
   * @param preparation which doors were found
   * @param map the map
   * @param lookUps its addresses
   * @param faults takes what is wrong with cells
   */
  static PlanDays of(
      List<Group> groups,
      BookInput input,
      Preparation preparation,
      MapInUse map,
      LookUps lookUps,
      Faults faults) {
    List<LocalDate> dates = groups.stream().map(Group::date).distinct().sorted().toList();
    List<VanDay> days = VanDays.of(input.book().business(), input.book().week().days(), dates);
    List<FollowedStop> rows = new ArrayList<>();
    for (Group group : groups) {
      find(days, group)
          .ifPresent(
              day ->
                  group.rows().stream()
                      .filter(PlanDays::isStop)
                      .forEach(
                          row ->
                              rows.add(
                                  new FollowedStop(
                                      day.number(), placed(row, input, preparation)))));
    }
    FollowedWeek week =
        FollowedWeek.of(input.book(), days, rows, input.tables(), map, lookUps, input.rows());
    return new PlanDays(days, week, faults);
  }

  private static boolean isStop(PlacedRow row) {
    return PlanFollower.kind(row.row().kind())
        .filter(kind -> kind == PlannedStop.Kind.VISIT)
        .isPresent();
  }

  /** Ids of a row whose doors were found. */
  private static List<String> placed(PlacedRow row, BookInput input, Preparation preparation) {
    return PlanFile.ids(row).stream()
        .filter(
            id ->
                input.book().bookings().stream()
                    .filter(booking -> booking.id().equals(id))
                    .allMatch(booking -> preparation.placed(booking.clientId())))
        .toList();
  }

  private static Optional<VanDay> find(List<VanDay> days, Group group) {
    return days.stream()
        .filter(
            day ->
                day.day().date().equals(group.date())
                    && day.groomer().id().equals(group.groomer().id()))
        .findFirst();
  }

  /** {@return all van-days of the plan's dates} */
  List<VanDay> days() {
    return days;
  }

  /** {@return the days as the plan has them} */
  FollowedWeek week() {
    return week;
  }

  /** The van-day of a group, or empty where that day is not worked. */
  Optional<VanDay> day(Group group) {
    return find(days, group);
  }

  /** The rows of a group as they are followed. */
  List<FollowedRow> rows(Group group, PreparedDay day) {
    PlanRowReader cells = new PlanRowReader(faults);
    WorkDay workDay = day.request().shift().day();
    return group.rows().stream()
        .map(row -> cells.row(row, workDay))
        .filter(row -> row.kind().isPresent())
        .toList();
  }
}
