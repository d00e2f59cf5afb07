package dev.dogleg.cli.terms;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.ServiceSpread;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.model.DayLimits;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A van-day on which a stop may be made, while rules and wishes shape it. Used by one thread. */
public final class DraftChoice {
  private static final int MOST_SECONDS = 43_200;

  private final int day;
  private final int place;
  private final List<Set<String>> petTags;
  private final WaterUse water;
  private final Set<String> lines = new LinkedHashSet<>();
  private DayLimits limits;
  private int seconds;
  private long extraSixtieths;
  private Optional<ServiceSpread> spread = Optional.empty();

  /**
   * A choice.
   *
   * @param day number of the van-day
   * @param place place number of the door
   * @param limits hard limits there
   * @param seconds whole service
   * @param petTags tags of each pet, with those of client, place and booking
   * @param water water of the stop
   */
  public DraftChoice(
      int day,
      int place,
      DayLimits limits,
      int seconds,
      List<Set<String>> petTags,
      WaterUse water) {
    this.day = day;
    this.place = place;
    this.limits = limits;
    this.seconds = Math.min(MOST_SECONDS, seconds);
    this.petTags = List.copyOf(petTags);
    this.water = water;
  }

  /** {@return number of the van-day} */
  public int day() {
    return day;
  }

  /** {@return hard limits} */
  public DayLimits limits() {
    return limits;
  }

  void limits(DayLimits narrower) {
    limits = narrower;
  }

  /** {@return whole service in seconds} */
  public int seconds() {
    return seconds;
  }

  void seconds(int changed) {
    seconds = Math.max(0, Math.min(MOST_SECONDS, changed));
  }

  /** {@return tags of each pet} */
  List<Set<String>> petTags() {
    return petTags;
  }

  /** {@return water of the stop} */
  WaterUse water() {
    return water;
  }

  /** {@return price besides the day's cost, in sixtieths} */
  public long extraSixtieths() {
    return extraSixtieths;
  }

  /**
   * Makes it dearer.
   *
   * @param sixtieths more price, 0 or more
   */
  public void dearer(long sixtieths) {
    extraSixtieths += sixtieths;
  }

  /**
   * Says how much the service varies.
   *
   * @param service its spread
   */
  public void varies(ServiceSpread service) {
    spread = Optional.of(service);
  }

  /** {@return how much the service varies; empty where it lasts as planned} */
  public Optional<ServiceSpread> spread() {
    return spread;
  }

  void line(String text) {
    lines.add(text);
  }

  /** {@return what rules put on the day of this stop, in the order of the rules} */
  public List<String> lines() {
    return List.copyOf(lines);
  }

  /**
   * The planner's form.
   *
   * @param id id of the booking
   * @param counted whether leaving it out counts
   * @param leftOutSixtieths price of leaving it out
   * @return the choice
   */
  DayChoice choice(String id, boolean counted, long leftOutSixtieths) {
    Visit visit =
        new Visit(
            id,
            place,
            seconds,
            counted,
            leftOutSixtieths,
            limits.arriveWithin(),
            limits.doneBySeconds(),
            limits.vanWithin(),
            limits.first());
    return new DayChoice(day, visit, Math.min(extraSixtieths, 1L << 38));
  }
}
