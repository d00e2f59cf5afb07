package dev.dogleg.cli.settings;

import dev.dogleg.cli.words.DateOrder;
import dev.dogleg.cli.words.WeightGrammar;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.model.Business;
import dev.dogleg.model.Groomer;
import dev.dogleg.model.Place;
import dev.dogleg.model.WallSpan;
import dev.dogleg.model.WaterWish;
import dev.dogleg.model.WeekWishes;
import dev.dogleg.model.Worth;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * A business card as read.
 *
 * @param business what it says of the business
 * @param dateOrder how the book's dates are written
 * @param weightUnit unit of a weight without one
 * @param texts what it says of texts to owners
 * @param inForce every setting with its source, in the card's order
 */
public record Card(
    Business business,
    DateOrder dateOrder,
    WeightGrammar.Unit weightUnit,
    TextWishes texts,
    List<InForce> inForce) {

  /** Copies the list. */
  public Card {
    Objects.requireNonNull(business, "business");
    Objects.requireNonNull(dateOrder, "dateOrder");
    Objects.requireNonNull(weightUnit, "weightUnit");
    Objects.requireNonNull(texts, "texts");
    inForce = List.copyOf(inForce);
  }

  /** {@return from the earliest start to the latest end of any shift: the hours usually worked} */
  public WallSpan usualHours() {
    int from = WallSpan.MIDNIGHT;
    int to = 0;
    for (Groomer groomer : business.groomers()) {
      for (WallSpan hours : groomer.hours().values()) {
        from = Math.min(from, hours.fromSeconds());
        to = Math.max(to, hours.toSeconds());
      }
    }
    return from < to ? new WallSpan(from, to) : new WallSpan(0, WallSpan.MIDNIGHT);
  }

  private WeekWishes week(UnaryOperator<Place> corrected) {
    WeekWishes week = business.week();
    WaterWish water = week.water();
    List<Place> places = water.places().stream().map(corrected).toList();
    return new WeekWishes(
        week.whenFull(),
        week.prices(),
        new WaterWish(water.atHome(), places, water.seconds(), water.most()),
        week.balance(),
        week.helpers(),
        week.promises());
  }

  /** {@return what things are worth, in the planner's form} */
  public Prices prices() {
    Worth worth = business.worth();
    return new Prices(
        worth.kilometreSeconds(),
        worth.waitingMinuteSeconds(),
        worth.overtimeMinuteSeconds(),
        worth.endMinuteSeconds());
  }

  /**
   * The same card with the homes of its groomers and the water places elsewhere.
   *
   * @param corrected gives the place to take for a place of the card
   * @return the card
   */
  public Card withHomes(UnaryOperator<Place> corrected) {
    List<Groomer> groomers =
        business.groomers().stream()
            .map(
                groomer ->
                    new Groomer(
                        groomer.id(),
                        groomer.name(),
                        groomer.paceThousandths(),
                        groomer.hours(),
                        groomer.daysOff(),
                        corrected.apply(groomer.home()),
                        groomer.vanId(),
                        groomer.tags()))
            .toList();
    Business moved =
        new Business(
            business.name(),
            business.country(),
            business.currency(),
            business.zone(),
            business.drivesOnLeft(),
            business.map(),
            groomers,
            business.vans(),
            business.dailyBreak(),
            business.overtimeSeconds(),
            business.stopSeconds(),
            business.extraPetSeconds(),
            business.planPercent(),
            business.worth(),
            week(corrected));
    return new Card(moved, dateOrder, weightUnit, texts, inForce);
  }
}
