package dev.dogleg.plan;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekNoRoom.Change;
import dev.dogleg.itinerary.WeekNoRoom.ChangeKind;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.LegMemory;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * The smallest change of one time that makes room for one more visit on a day which keeps all its
 * others, found by planning the day again.
 *
 * <p>Maintainers: more room at one end never takes a day away, so the least minutes are found by
 * halving. A day that the effort leaves open counts as none. Any thread may ask.
 */
public final class RoomChanges {
  /** Minutes that a change takes at the most. */
  public static final int MOST_MINUTES = 240;

  private static final int MOST_VISITS = 16;
  private static final long SET_EFFORT = 1_000_000;

  private final Prices prices;
  private final long seed;
  private final BooleanSupplier stop;

  /**
   * Changes under some prices.
   *
   * @param prices what things are worth
   * @param seed seed of every random choice
   * @param stop asked before each day is planned again; once true, nothing makes room any more
   */
  public RoomChanges(Prices prices, long seed, BooleanSupplier stop) {
    this.prices = prices;
    this.seed = seed;
    this.stop = stop;
  }

  /**
   * The least move of one end of one of its arrival windows, or of the day's end, in whole minutes.
   *
   * @param number number of the van-day, for the answer
   * @param day the van-day
   * @param others what it serves
   * @param visit what has no room
   * @param mostMinutes a change takes no more, at most {@link #MOST_MINUTES}
   * @return the change, the first tried of equal ones (day's end, then windows in order); empty
   *     where none so small makes room
   */
  public Optional<Change> smallest(
      int number, WeekDay day, List<Visit> others, Visit visit, int mostMinutes) {
    return smallest(number, day, others, visit, mostMinutes, legs(day));
  }

  /**
   * The same, with what is known of the day's legs.
   *
   * @param number number of the van-day, for the answer
   * @param day the van-day
   * @param others what it serves
   * @param visit what has no room
   * @param mostMinutes a change takes no more, at most {@link #MOST_MINUTES}
   * @param legs legs of the day's travel times until so many minutes after its latest end
   * @return the change
   */
  public Optional<Change> smallest(
      int number, WeekDay day, List<Visit> others, Visit visit, int mostMinutes, LegMemory legs) {
    Search search = new Search(number, mostMinutes);
    search.attempt(ChangeKind.LATER_END, m -> fits(later(day, m), others, visit, legs));
    for (TimeWindow window : visit.arriveWithin()) {
      int from = window.fromSeconds();
      int to = window.toSeconds();
      IntFunction<TimeWindow> earlier = m -> new TimeWindow(Math.max(0, from - 60 * m), to);
      IntFunction<TimeWindow> longer = m -> new TimeWindow(from, later(to, m));
      for (IntFunction<TimeWindow> wider : List.of(earlier, longer)) {
        if (!wider.apply(MOST_MINUTES).equals(window)) {
          search.attempt(
              ChangeKind.WIDER_WINDOW,
              m -> fits(day, others, visit.arriving(List.of(wider.apply(m))), legs));
        }
      }
    }
    return search.best;
  }

  /**
   * Whether a day serves some visits and one more.
   *
   * @param day the van-day
   * @param others what it serves
   * @param one the one more
   * @return true where such a day was found; false too where the effort left it open
   */
  public boolean fits(WeekDay day, List<Visit> others, Visit one) {
    return fits(day, others, one, LegMemory.of(day.travel(), day.shift()));
  }

  private boolean fits(WeekDay day, List<Visit> others, Visit one, LegMemory legs) {
    if (others.size() >= MOST_VISITS || stop.getAsBoolean()) {
      return false;
    }
    List<Visit> asked = new ArrayList<>(others);
    asked.add(one);
    DayRequest request =
        new DayRequest(day.shift(), asked, day.travel(), prices, day.terms(), seed, SET_EFFORT);
    int[] all = IntStream.range(0, asked.size()).toArray();
    return new SetDays(DayModel.of(request, legs)).fits(all, SET_EFFORT).orElse(false);
  }

  /**
   * A memory of legs that serves a van-day and every change that is tried on it.
   *
   * @param day the van-day
   * @return the memory, empty
   */
  public static LegMemory legs(WeekDay day) {
    return LegMemory.of(day.travel(), later(day, MOST_MINUTES).shift());
  }

  private static WeekDay later(WeekDay day, int minutes) {
    DayShift shift = day.shift();
    TimeWindow hours = shift.hours();
    TimeWindow longer = new TimeWindow(hours.fromSeconds(), later(hours.toSeconds(), minutes));
    return new WeekDay(shift.during(longer), day.travel(), day.terms());
  }

  private static int later(int seconds, int minutes) {
    return Math.min(TimeWindow.DAY_END, seconds + 60 * minutes);
  }

  /** The least minutes so far: whoever comes later must need fewer. */
  private static final class Search {
    private final int number;
    private int most;
    private Optional<Change> best = Optional.empty();

    Search(int number, int most) {
      this.number = number;
      this.most = most;
    }

    void attempt(ChangeKind kind, IntPredicate fits) {
      if (most < 1 || !fits.test(most)) {
        return;
      }
      int low = 1;
      int high = most;
      while (low < high) {
        int middle = (low + high) / 2;
        if (fits.test(middle)) {
          high = middle;
        } else {
          low = middle + 1;
        }
      }
      best = Optional.of(new Change(kind, number, 60 * low, "", -1));
      most = low - 1;
    }
  }
}
