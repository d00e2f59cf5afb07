package dev.dogleg.itinerary;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What binds or prices a van-day besides its shift and its visits: see {@code docs/WEEK.md}.
 *
 * @param rules rules on its visits, in the order in which minutes by place are applied
 * @param water tanks and where they are filled; empty: water is not planned
 * @param balance prices for a day fuller or longer than others; empty: none
 * @param odds what varies and what promises are worth; empty: they have no price. A week's planner
 *     adds it to finished days; a day planned alone does not look at it
 */
public record DayTerms(
    List<DayRule> rules,
    Optional<WaterTerms> water,
    Optional<BalanceTerms> balance,
    Optional<OddsTerms> odds) {

  /** No rule, no water, no balance. */
  public static final DayTerms NONE = new DayTerms(List.of(), Optional.empty(), Optional.empty());

  /** Copies the list. */
  public DayTerms {
    rules = List.copyOf(rules);
    Objects.requireNonNull(water, "water");
    Objects.requireNonNull(balance, "balance");
    Objects.requireNonNull(odds, "odds");
  }

  /**
   * Terms whose promises have no price.
   *
   * @param rules rules on its visits
   * @param water tanks and where they are filled, or empty
   * @param balance prices for a fuller or longer day, or empty
   */
  public DayTerms(List<DayRule> rules, Optional<WaterTerms> water, Optional<BalanceTerms> balance) {
    this(rules, water, balance, Optional.empty());
  }

  /** {@return whether promises have a price} */
  public boolean pricesPromises() {
    return odds.filter(OddsTerms::priced).isPresent();
  }

  /**
   * The same terms with a price of promises.
   *
   * @param priced what promises are worth
   * @return the terms
   */
  public DayTerms with(OddsTerms priced) {
    return new DayTerms(rules, water, balance, Optional.of(priced));
  }

  /** {@return whether there is no rule, no water and no balance} */
  public boolean none() {
    return rules.isEmpty() && water.isEmpty() && balance.isEmpty();
  }

  /**
   * Rules alone.
   *
   * @param rules the rules
   * @return terms without water and balance
   */
  public static DayTerms of(List<DayRule> rules) {
    return new DayTerms(rules, Optional.empty(), Optional.empty());
  }
}
