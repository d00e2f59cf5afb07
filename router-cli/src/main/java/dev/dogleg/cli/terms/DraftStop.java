package dev.dogleg.cli.terms;

import dev.dogleg.fault.Where;
import dev.dogleg.itinerary.WeekBooking;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/** A stop while rules and wishes shape its choices. Used by one thread. */
public final class DraftStop {
  private final String id;
  private final String name;
  private final boolean agreed;
  private final boolean told;
  private final NavigableMap<Integer, DraftChoice> choices = new TreeMap<>();
  private final List<Removal> removals = new ArrayList<>();
  private long leftOutSixtieths;
  private boolean counted;

  /**
   * A stop without choices yet.
   *
   * @param id unique id
   * @param name for a person
   * @param agreed false: on the waiting list
   * @param told whether a time was told
   */
  public DraftStop(String id, String name, boolean agreed, boolean told) {
    this.id = id;
    this.name = name;
    this.agreed = agreed;
    this.told = told;
    this.counted = agreed;
  }

  /** {@return its id} */
  public String id() {
    return id;
  }

  /** {@return its name for a person} */
  public String name() {
    return name;
  }

  /** {@return whether it is agreed} */
  public boolean agreed() {
    return agreed;
  }

  /** {@return whether a time was told} */
  public boolean told() {
    return told;
  }

  /**
   * Says what leaving it out costs, instead of counting.
   *
   * @param sixtieths the price
   */
  public void leftOutCosts(long sixtieths) {
    counted = false;
    leftOutSixtieths = Math.min(sixtieths, 1L << 38);
  }

  /**
   * Says what leaving it out costs, besides counting.
   *
   * @param sixtieths the price
   */
  public void leftOutAlsoCosts(long sixtieths) {
    leftOutSixtieths = Math.min(sixtieths, 1L << 38);
  }

  /** {@return whether leaving it out counts} */
  public boolean counted() {
    return counted;
  }

  /**
   * Adds a choice.
   *
   * @param choice on a van-day that it has none on yet
   */
  public void add(DraftChoice choice) {
    choices.put(choice.day(), choice);
  }

  /** {@return choices by van-day, ascending} */
  public Collection<DraftChoice> choices() {
    return Collections.unmodifiableCollection(choices.values());
  }

  /**
   * The choice on a van-day.
   *
   * @param day number of the van-day
   * @return the choice, or empty
   */
  public Optional<DraftChoice> on(int day) {
    return Optional.ofNullable(choices.get(day));
  }

  /** What took a choice away, and where it stands. */
  record Removal(String by, Where where) {}

  /**
   * Takes a choice away.
   *
   * @param day number of the van-day
   * @param by name of the rule or zone that forbids it
   * @param where where that stands
   */
  void remove(int day, String by, Where where) {
    Removal removal = new Removal(by, where);
    if (choices.remove(day) != null && !removals.contains(removal)) {
      removals.add(removal);
    }
  }

  /** {@return what took choices away} */
  List<Removal> removals() {
    return List.copyOf(removals);
  }

  /** {@return names of what took choices away} */
  public List<String> removedBy() {
    return removals.stream().map(Removal::by).distinct().toList();
  }

  /** {@return whether it must be served on this one van-day or not at all, and counts} */
  boolean fixedOn(int day) {
    return counted && choices.size() == 1 && choices.containsKey(day);
  }

  /** {@return the planner's form} */
  public WeekBooking booking() {
    return new WeekBooking(
        id,
        counted,
        leftOutSixtieths,
        choices.values().stream()
            .map(choice -> choice.choice(id, counted, counted ? 0 : leftOutSixtieths))
            .toList());
  }
}
