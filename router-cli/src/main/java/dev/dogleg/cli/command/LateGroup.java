package dev.dogleg.cli.command;

import dev.dogleg.cli.command.LateCommand.WrongUsage;
import dev.dogleg.cli.command.PlanFile.Group;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Picks the one day of a plan that runs late.
 *
 * @param day as asked for, or empty
 * @param groomer name or id as asked for, or empty
 * @param today today's date where the business is
 */
record LateGroup(Optional<LocalDate> day, Optional<String> groomer, LocalDate today) {

  /**
   * The day.
   *
   * @param groups days of a plan
   * @return the day asked for; else today's; else the only one
   * @throws WrongUsage where there is none, or more than one is left
   */
  Group of(List<Group> groups) {
    List<LocalDate> dates = groups.stream().map(Group::date).distinct().sorted().toList();
    LocalDate date =
        day.orElseGet(() -> dates.size() == 1 && !dates.contains(today) ? dates.get(0) : today);
    List<Group> left = groups.stream().filter(group -> group.date().equals(date)).toList();
    if (left.isEmpty()) {
      throw new WrongUsage("the plan has no " + date + ", only " + dates + ": name one with --day");
    }
    if (groomer.isPresent()) {
      String name = groomer.get().strip();
      left =
          left.stream()
              .filter(
                  group ->
                      group.groomer().name().equalsIgnoreCase(name)
                          || group.groomer().id().equals(name))
              .toList();
    }
    if (left.size() != 1) {
      String names =
          groups.stream()
              .filter(group -> group.date().equals(date))
              .map(group -> group.groomer().name())
              .collect(Collectors.joining(", "));
      throw new WrongUsage("name one with --groomer: " + names);
    }
    return left.get(0);
  }
}
