package dev.dogleg.cli.terms;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.itinerary.BalanceTerms;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.model.BalanceWish;
import dev.dogleg.model.Van;
import dev.dogleg.model.WallSpan;
import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Water and balance of van-days. */
public final class WaterAndBalance {
  private static final int ENDLESS_MILLILITRES = 2_000_000;

  private WaterAndBalance() {}

  /**
   * Water of a van-day.
   *
   * @param day the van-day
   * @param stops stops with their choices
   * @param places where tanks may be filled and emptied
   * @param most most water stops a day
   * @param always whether the terms are given even where the tanks suffice whatever is served
   * @return the terms; empty where the van has no tanks, or (not always) where the water of
   *     everything that may be asked of this day together fits into them
   */
  public static Optional<WaterTerms> water(
      VanDay day, List<DraftStop> stops, List<WaterPlace> places, int most, boolean always) {
    Van van = day.van();
    if (van.freshLitres().isEmpty() && van.greyLitres().isEmpty()) {
      return Optional.empty();
    }
    WaterUse tank = tank(van);
    Map<String, WaterUse> uses = new TreeMap<>();
    long fresh = 0;
    long grey = 0;
    for (DraftStop stop : stops) {
      Optional<DraftChoice> choice = stop.on(day.number());
      if (choice.isPresent() && !choice.get().water().equals(WaterUse.NONE)) {
        uses.put(stop.id(), choice.get().water());
        fresh += choice.get().water().freshMillilitres();
        grey += choice.get().water().greyMillilitres();
      }
    }
    return !always && fresh <= tank.freshMillilitres() && grey <= tank.greyMillilitres()
        ? Optional.empty()
        : Optional.of(new WaterTerms(tank, uses, places, most));
  }

  private static WaterUse tank(Van van) {
    return new WaterUse(
        van.freshLitres().isPresent() ? 1_000 * van.freshLitres().getAsInt() : ENDLESS_MILLILITRES,
        van.greyLitres().isPresent() ? 1_000 * van.greyLitres().getAsInt() : ENDLESS_MILLILITRES);
  }

  /**
   * Names stops that no tank holds.
   *
   * @param days van-days
   * @param stops stops with their choices
   * @param rows where a stop stands, by its id
   * @param faults takes one fault a stop
   */
  public static void tooMuch(
      List<VanDay> days,
      List<DraftStop> stops,
      java.util.function.Function<String, Where> rows,
      Faults faults) {
    for (DraftStop stop : stops) {
      boolean fits =
          stop.choices().isEmpty()
              || stop.choices().stream()
                  .anyMatch(choice -> fits(choice.water(), tank(days.get(choice.day()).van())));
      if (!fits) {
        int litres = stop.choices().iterator().next().water().freshMillilitres() / 1_000;
        faults.add(
            new Fault(
                "too-much-water",
                Severity.LOOK,
                rows.apply(stop.id()),
                stop.name() + ": " + litres + " litres",
                "no more water than the tanks hold was expected",
                "give the pets their own litres, or part the booking"));
      }
    }
  }

  private static boolean fits(WaterUse use, WaterUse tank) {
    return use.freshMillilitres() <= tank.freshMillilitres()
        && use.greyMillilitres() <= tank.greyMillilitres();
  }

  /**
   * Balance of a van-day.
   *
   * @param wish what the card says
   * @param day the van-day
   * @param evenShareSeconds an even share of all service of the run
   * @return the terms
   */
  public static BalanceTerms balance(BalanceWish wish, VanDay day, int evenShareSeconds) {
    int end =
        wish.endWallSeconds().isPresent()
            ? WallSpan.elapsed(wish.endWallSeconds().getAsInt(), day.day())
            : TimeWindow.DAY_END;
    return new BalanceTerms(
        Math.min(86_400, wish.groomSeconds().orElse(evenShareSeconds)),
        wish.groomMinuteSeconds(),
        end,
        wish.endWallSeconds().isPresent() ? wish.endMinuteSeconds() : 0);
  }
}
