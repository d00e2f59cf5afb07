package dev.dogleg.model;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the card says about planning several days together.
 *
 * @param whenFull what may be done where a week is full, the first thing first; each at most once
 * @param prices what these things cost
 * @param water where tanks are filled and emptied
 * @param balance prices of uneven days, or empty: none
 * @param helpers who may come along
 * @param promises what told times are worth
 */
public record WeekWishes(
    List<Remedy> whenFull,
    RemedyPrices prices,
    WaterWish water,
    Optional<BalanceWish> balance,
    List<Helper> helpers,
    PromiseWish promises) {

  /** The order where a card says nothing: a longer day, then an ask, then the next week. */
  public static final List<Remedy> USUAL_ORDER =
      List.of(Remedy.LONGER_DAY, Remedy.ASK, Remedy.NEXT_WEEK);

  /** What holds where a card says nothing. */
  public static final WeekWishes STARTER =
      new WeekWishes(
          USUAL_ORDER,
          RemedyPrices.of(USUAL_ORDER),
          WaterWish.STARTER,
          Optional.empty(),
          List.of(),
          PromiseWish.STARTER);

  /** Checks and copies. */
  public WeekWishes {
    Objects.requireNonNull(prices, "prices");
    Objects.requireNonNull(water, "water");
    Objects.requireNonNull(balance, "balance");
    Objects.requireNonNull(promises, "promises");
    whenFull = List.copyOf(whenFull);
    helpers = List.copyOf(helpers);
    if (whenFull.stream().distinct().count() != whenFull.size()) {
      throw new IllegalArgumentException("a remedy twice: " + whenFull);
    }
  }
}
