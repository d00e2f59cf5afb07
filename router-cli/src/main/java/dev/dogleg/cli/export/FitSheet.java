package dev.dogleg.cli.export;

import dev.dogleg.fit.FitAnswer;
import dev.dogleg.itinerary.ServiceSpread;
import dev.dogleg.time.WorkDay;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * One answer about a newcomer and what is needed to show it.
 *
 * @param who client and pets in one line
 * @param address door, as it was typed
 * @param answer the answer
 * @param days the week's van-days by their numbers
 * @param minutes minutes at the door
 * @param money what things are worth
 */
public record FitSheet(
    String who, String address, FitAnswer answer, List<Day> days, Minutes minutes, Money money) {
  /** Copies the list. */
  public FitSheet {
    Objects.requireNonNull(who, "who");
    Objects.requireNonNull(address, "address");
    Objects.requireNonNull(answer, "answer");
    Objects.requireNonNull(minutes, "minutes");
    Objects.requireNonNull(money, "money");
    days = List.copyOf(days);
  }

  /**
   * A van-day.
   *
   * @param groomer who works
   * @param day date and zone
   * @param labels its stops by id, the newcomer's too
   * @param otherTimes whether the plan on file has other times than the best order of its visits
   */
  public record Day(
      String groomer, WorkDay day, Map<String, StopLabel> labels, boolean otherTimes) {
    /** Copies the map. */
    public Day {
      Objects.requireNonNull(groomer, "groomer");
      Objects.requireNonNull(day, "day");
      labels = Map.copyOf(labels);
    }
  }

  /**
   * Minutes at the door.
   *
   * @param plannedSeconds what is planned with
   * @param spread how much it varies, or empty
   * @param guessed what was guessed, in words; empty where nothing was
   */
  public record Minutes(int plannedSeconds, Optional<ServiceSpread> spread, List<String> guessed) {
    /** Standard deviations of the tenth and the ninetieth of a hundred of a normal distribution. */
    private static final double EIGHT_OF_TEN = 1.2816;

    /** Copies the list. */
    public Minutes {
      Objects.requireNonNull(spread, "spread");
      guessed = List.copyOf(guessed);
    }

    /**
     * The seconds that eight of ten such grooms stay within.
     *
     * @param upper true for the longer end, false for the shorter
     * @return seconds; what is planned with where nothing is known to vary
     */
    public int endSeconds(boolean upper) {
      return spread
          .map(
              one ->
                  one.fixedSeconds()
                      + (int)
                          Math.round(
                              one.medianSeconds()
                                  * StrictMath.exp(
                                      (upper ? 1 : -1) * EIGHT_OF_TEN * one.logSpread())))
          .orElse(plannedSeconds);
    }
  }

  /**
   * What things are worth.
   *
   * @param currency in which
   * @param hourMinor worth of an hour in minor units
   * @param priceMinor what the newcomer pays, minor units, or empty
   */
  public record Money(Currency currency, long hourMinor, OptionalLong priceMinor) {
    /** Sixtieths of a second of driving in an hour. */
    private static final long HOUR_SIXTIETHS = 216_000;

    /** Checks that nothing is null. */
    public Money {
      Objects.requireNonNull(currency, "currency");
      Objects.requireNonNull(priceMinor, "priceMinor");
    }

    /**
     * What a cost is worth in money.
     *
     * @param sixtieths cost in sixtieths of a second of driving
     * @return minor units, rounded half up
     */
    public long costMinor(long sixtieths) {
      return Math.floorDiv(
          Math.addExact(Math.multiplyExact(sixtieths, hourMinor), HOUR_SIXTIETHS / 2),
          HOUR_SIXTIETHS);
    }

    /**
     * An amount for a person.
     *
     * @param minor minor units
     * @return for example {@code 12.50}
     */
    public String amount(long minor) {
      return java.math.BigDecimal.valueOf(minor, Math.max(0, currency.getDefaultFractionDigits()))
          .toPlainString();
    }
  }

  /**
   * Name of a stop of a van-day.
   *
   * @param day number of the van-day
   * @param id the stop
   * @return client and pets; the id where the day has no such stop
   */
  public String name(int day, String id) {
    StopLabel label = days.get(day).labels().get(id);
    return label == null ? id : label.who();
  }
}
