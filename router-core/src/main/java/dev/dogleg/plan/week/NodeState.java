package dev.dogleg.plan.week;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What is still open in a part of the search: the columns allowed, the bookings that must be
 * served.
 *
 * <p>{@code columns}: numbers of the allowed columns, rising; {@code mustServe}: for each booking
 * whether leaving it out is excluded.
 */
final class NodeState {
  private final int[] columns;
  private final boolean[] mustServe;

  NodeState(int[] columns, boolean[] mustServe) {
    this.columns = columns;
    this.mustServe = mustServe;
  }

  /** {@return the whole week: every column of the pool} */
  static NodeState everything(MasterProblem problem) {
    return new NodeState(
        IntStream.range(0, problem.pool().size()).toArray(), new boolean[problem.model().size()]);
  }

  int[] columns() {
    return columns;
  }

  boolean[] mustServe() {
    return mustServe;
  }

  /** What a decision says. */
  enum Says {
    /** The booking is left out, or not. */
    LEFT_OUT,
    /** The booking is served on the kind of van-day {@code other}, or not there. */
    ON_KIND,
    /** The booking shares its van-day with booking {@code other}, or not. */
    WITH
  }

  /**
   * One decision.
   *
   * @param says what about
   * @param booking the booking
   * @param other kind or other booking; -1 for left out
   * @param holds whether it holds or is excluded
   */
  record Decision(Says says, int booking, int other, boolean holds) {
    /** Whether a column agrees. */
    boolean allows(ColumnPool pool, int column) {
      boolean serves = pool.serves(column, booking);
      return switch (says) {
        case LEFT_OUT -> !holds || !serves;
        case ON_KIND -> !serves || (pool.kind(column) == other) == holds;
        case WITH ->
            holds ? serves == pool.serves(column, other) : !(serves && pool.serves(column, other));
      };
    }
  }

  /** {@return this part of the search, narrowed by a decision} */
  NodeState with(Decision decision, ColumnPool pool) {
    boolean[] must = mustServe.clone();
    switch (decision.says()) {
      case LEFT_OUT -> must[decision.booking()] |= !decision.holds();
      case ON_KIND -> must[decision.booking()] |= decision.holds();
      case WITH -> {
        must[decision.booking()] |= decision.holds();
        must[decision.other()] |= decision.holds();
      }
    }
    int[] kept = Arrays.stream(columns).filter(c -> decision.allows(pool, c)).toArray();
    return new NodeState(kept, must);
  }

  /** {@return the same with fewer columns} */
  NodeState keeping(int[] kept) {
    return new NodeState(kept, mustServe);
  }
}
