package dev.dogleg.model;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the business card says.
 *
 * @param name of the business
 * @param country ISO 3166-1 alpha-2, upper case; phones without a country code are read in it
 * @param currency ISO 4217
 * @param zone time zone of all its days
 * @param drivesOnLeft whether traffic keeps to the left
 * @param map map extract, or empty where the command line names it
 * @param groomers at least one, ids unique
 * @param vans at least one, ids unique
 * @param dailyBreak the break, or empty
 * @param overtimeSeconds the most by which a day may end after its shift, 0..43,200
 * @param stopSeconds stop minutes of one stop, 0..7,200
 * @param extraPetSeconds more stop minutes for each further pet at the door, 0..3,600
 * @param planPercent which quantile of the groom minutes is planned with, 1..99 percent
 * @param worth what things are worth
 * @param week what it says about planning several days together
 */
public record Business(
    String name,
    String country,
    Currency currency,
    ZoneId zone,
    boolean drivesOnLeft,
    Optional<Path> map,
    List<Groomer> groomers,
    List<Van> vans,
    Optional<BreakWish> dailyBreak,
    int overtimeSeconds,
    int stopSeconds,
    int extraPetSeconds,
    int planPercent,
    Worth worth,
    WeekWishes week) {

  /** Checks ranges and that every groomer's van exists. */
  public Business {
    Objects.requireNonNull(week, "week");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(currency, "currency");
    Objects.requireNonNull(zone, "zone");
    Objects.requireNonNull(map, "map");
    Objects.requireNonNull(dailyBreak, "dailyBreak");
    Objects.requireNonNull(worth, "worth");
    groomers = List.copyOf(groomers);
    vans = List.copyOf(vans);
    if (!country.matches("[A-Z]{2}")) {
      throw new IllegalArgumentException("country must be two capital letters, was " + country);
    }
    if (groomers.isEmpty() || vans.isEmpty()) {
      throw new IllegalArgumentException("a business needs a groomer and a van");
    }
    if (groomers.stream().map(Groomer::id).distinct().count() != groomers.size()
        || vans.stream().map(Van::id).distinct().count() != vans.size()) {
      throw new IllegalArgumentException("groomer and van ids must be unique");
    }
    for (Groomer groomer : groomers) {
      if (vans.stream().noneMatch(van -> van.id().equals(groomer.vanId()))) {
        throw new IllegalArgumentException("no van " + groomer.vanId());
      }
    }
    check("overtimeSeconds", overtimeSeconds, 0, 43_200);
    check("stopSeconds", stopSeconds, 0, 7_200);
    check("extraPetSeconds", extraPetSeconds, 0, 3_600);
    check("planPercent", planPercent, 1, 99);
  }

  /**
   * A business that says nothing about planning several days.
   *
   * @param name see the record
   * @param country see the record
   * @param currency see the record
   * @param zone see the record
   * @param drivesOnLeft see the record
   * @param map see the record
   * @param groomers see the record
   * @param vans see the record
   * @param dailyBreak see the record
   * @param overtimeSeconds see the record
   * @param stopSeconds see the record
   * @param extraPetSeconds see the record
   * @param planPercent see the record
   * @param worth see the record
   */
  public Business(
      String name,
      String country,
      Currency currency,
      ZoneId zone,
      boolean drivesOnLeft,
      Optional<Path> map,
      List<Groomer> groomers,
      List<Van> vans,
      Optional<BreakWish> dailyBreak,
      int overtimeSeconds,
      int stopSeconds,
      int extraPetSeconds,
      int planPercent,
      Worth worth) {
    this(
        name,
        country,
        currency,
        zone,
        drivesOnLeft,
        map,
        groomers,
        vans,
        dailyBreak,
        overtimeSeconds,
        stopSeconds,
        extraPetSeconds,
        planPercent,
        worth,
        WeekWishes.STARTER);
  }

  private static void check(String name, int value, int least, int most) {
    if (value < least || value > most) {
      throw new IllegalArgumentException(
          name + " must lie in " + least + ".." + most + ", was " + value);
    }
  }

  /**
   * The van of a groomer.
   *
   * @param groomer one of this business
   * @return the van
   */
  public Van vanOf(Groomer groomer) {
    return vans.stream().filter(van -> van.id().equals(groomer.vanId())).findFirst().orElseThrow();
  }

  /**
   * Who works on a date.
   *
   * @param date the date
   * @return groomers in the card's order
   */
  public List<Groomer> workingOn(LocalDate date) {
    return groomers.stream().filter(groomer -> groomer.hoursOn(date).isPresent()).toList();
  }
}
