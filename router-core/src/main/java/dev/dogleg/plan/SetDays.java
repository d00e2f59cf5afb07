package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.OrderCost;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The best day that serves a given set of visits, all of them: exact, for a week that asks often.
 *
 * <p>One thread; legs are remembered from set to set.
 */
public final class SetDays {
  /** Most visits of a set. */
  public static final int MOST = SubsetBound.MOST;

  /** Cost of a set that no day serves. */
  public static final long NEVER = Long.MAX_VALUE / 4;

  private final DayModel day;
  private final LegRows rows;
  private final OrderCost costs;

  /**
   * Days of one groomer on one date.
   *
   * @param day all visits that may be asked for, any number
   */
  public SetDays(DayModel day) {
    this(day, new LegRows(day));
  }

  /** With legs that somebody else remembers too, in the same thread. */
  SetDays(DayModel day, LegRows rows) {
    this.day = day;
    this.rows = rows;
    costs = new OrderCost(day);
  }

  /**
   * A best day.
   *
   * @param costSixtieths its cost, in sixtieths of a second of driving
   * @param order numbers of the visits in the order served, in the numbering of the whole day
   * @param proven whether no order of the set costs less; false where the effort was spent first
   */
  @SuppressWarnings("ArrayRecordComponent")
  public record Best(long costSixtieths, int[] order, boolean proven) {}

  /**
   * What a set costs, in sixtieths of a second of driving; {@link #NEVER} where it has no day.
   *
   * @param least no day of the set costs less
   * @param most a day that costs so much is known, or none
   */
  public record Bounds(long least, long most) {}

  /**
   * The best day of a set of the first 64 visits.
   *
   * @param set bit v is set where visit v of the day must be served; waiting-list visits too
   * @param effort limit in solver steps
   * @return as {@link #best(int[], long)}
   */
  public Optional<Best> best(long set, long effort) {
    int[] visits = new int[Long.bitCount(set)];
    int k = 0;
    for (long rest = set; rest != 0; rest &= rest - 1) {
      visits[k++] = Long.numberOfTrailingZeros(rest);
    }
    return best(visits, effort);
  }

  /**
   * The best day of a set.
   *
   * @param visits the visits that must be served, rising, at most {@link #MOST}; waiting-list
   *     visits too
   * @param effort limit in solver steps
   * @return the day; empty where none serves them all, or none was found within the effort
   */
  public Optional<Best> best(int[] visits, long effort) {
    return room(visits, effort).best();
  }

  /**
   * Whether a day serves a set, and the best that does.
   *
   * @param best the day; empty where none was found
   * @param neverFits whether it is proven that no day serves the set
   */
  public record Room(Optional<Best> best, boolean neverFits) {}

  /**
   * Whether a day serves a set, and the best that does.
   *
   * @param visits the visits that must be served, rising, at most {@link #MOST}; waiting-list
   *     visits too
   * @param effort limit in solver steps
   * @return the day, or whether there is none
   */
  public Room room(int[] visits, long effort) {
    DayAnswer answer = answer(visits, new WorkMeter(effort, () -> false));
    if (answer.value() >= DayValue.BOOKED) {
      return new Room(Optional.empty(), answer.lowerBound() >= DayValue.BOOKED);
    }
    boolean proven = answer.lowerBound() >= answer.value();
    return new Room(Optional.of(new Best(answer.value(), answer.order(), proven)), false);
  }

  /**
   * What the best day of a set costs.
   *
   * @param visits the visits that must be served, rising, at most {@link #MOST}; waiting-list
   *     visits too
   * @param effort limit in solver steps
   * @return equal bounds, unless the effort was spent first
   */
  public Bounds bounds(int[] visits, long effort) {
    return bounds(answer(visits, new WorkMeter(effort, () -> false)));
  }

  /**
   * The same, sooner where somebody guesses well.
   *
   * @param visits the visits that must be served, rising, from 1 to {@link #MOST}; waiting-list
   *     visits too
   * @param effort limit in solver steps
   * @param guess a cost from which the best day's is not far, in sixtieths, 0 or more; the answer
   *     is true whatever it is
   * @return as for {@link #bounds(int[], long)}
   */
  public Bounds bounds(int[] visits, long effort, long guess) {
    WorkMeter meter = new WorkMeter(effort, () -> false);
    return bounds(new SetEngine(day, visits, rows, costs, meter).best(guess));
  }

  private static Bounds bounds(DayAnswer answer) {
    long most = answer.value() >= DayValue.BOOKED ? NEVER : answer.value();
    long least = answer.lowerBound() >= DayValue.BOOKED ? NEVER : answer.lowerBound();
    return new Bounds(Math.min(least, most), most);
  }

  /**
   * Whether some day serves a set, at any price: cheaper to ask than for the best.
   *
   * @param visits the visits that must be served, rising, from 1 to {@link #MOST}; waiting-list
   *     visits too
   * @param effort limit in solver steps
   * @return the answer; empty where the effort was spent first
   */
  public Optional<Boolean> fits(int[] visits, long effort) {
    return Optional.ofNullable(
        new SetEngine(day, visits, rows, costs, new WorkMeter(effort, () -> false)).fits());
  }

  /**
   * A day that serves a set.
   *
   * @param order numbers of the visits in an order that can be driven, in the numbering of the
   *     whole day; empty where none was found
   * @param neverFits whether it is proven that no day serves the set
   */
  public record Some(Optional<List<Integer>> order, boolean neverFits) {
    /** Checks that nothing is null. */
    public Some {
      Objects.requireNonNull(order, "order");
    }
  }

  /**
   * Some day that serves a set, at any price: cheaper to ask than for the best.
   *
   * @param visits as for {@link #fits}
   * @param effort limit in solver steps
   * @return the order found first, or whether there is none
   */
  public Some some(int[] visits, long effort) {
    SetEngine engine = new SetEngine(day, visits, rows, costs, new WorkMeter(effort, () -> false));
    Boolean fits = engine.fits();
    return Boolean.TRUE.equals(fits)
        ? new Some(Optional.of(Arrays.stream(engine.order()).boxed().toList()), false)
        : new Some(Optional.empty(), fits != null);
  }

  private DayAnswer answer(int[] visits, WorkMeter meter) {
    if (visits.length > MOST) {
      throw new IllegalArgumentException("at most " + MOST + " visits in a set");
    }
    if (visits.length == 0) {
      return new DayAnswer(visits, 0, 0);
    }
    return new SetEngine(day, visits, rows, costs, meter).best();
  }
}
