package dev.dogleg.plan.late;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.oracle.RandomTerms;
import dev.dogleg.plan.SeededDays;
import dev.dogleg.plan.late.Promise.Kind;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/** Rests of tiny days by seed, in seconds: some visits done, some cancelled, promises about now. */
final class RandomRests {
  private final Random random;
  private final DayRequest day;

  private RandomRests(long seed, DayRequest day) {
    random = new Random(seed * 31 + 5);
    this.day = day;
  }

  /**
   * A rest.
   *
   * @param seed seed
   * @param visits visits of the whole day
   * @param mostDone how many of them may be done
   * @param terms whether rules and water are drawn too
   */
  static RestOfDay of(long seed, int visits, int mostDone, boolean terms) {
    DayRequest drawn = SeededDays.day(seed, visits, 1, seed % 2 == 0);
    if (terms) {
      drawn = RandomTerms.on(seed, drawn);
    }
    return new RandomRests(seed, cheap(drawn)).rest(mostDone);
  }

  /** Small prices, so that cost and lateness fit into one number side by side. */
  private static DayRequest cheap(DayRequest drawn) {
    Prices prices = drawn.prices();
    return new DayRequest(
        drawn.shift(),
        drawn.visits(),
        drawn.travel(),
        new Prices(
            prices.kilometreSeconds() % 3,
            prices.waitingMinuteSeconds() % 21,
            prices.overtimeMinuteSeconds() % 23,
            prices.endMinuteSeconds() % 9),
        new DayTerms(drawn.terms().rules(), drawn.terms().water(), Optional.empty()),
        drawn.seed(),
        drawn.effort());
  }

  private RestOfDay rest(int mostDone) {
    List<String> ids = new ArrayList<>(day.visits().stream().map(Visit::id).toList());
    Collections.shuffle(ids, random);
    List<String> order = List.copyOf(ids);
    List<String> done = List.copyOf(ids.subList(0, random.nextInt(mostDone + 1)));
    Set<String> cancelled = new TreeSet<>();
    if (random.nextInt(5) == 0 && done.size() < ids.size()) {
      cancelled.add(ids.get(ids.size() - 1));
    }
    int now =
        day.shift().hours().fromSeconds()
            + random.nextInt(day.shift().hours().toSeconds() - day.shift().hours().fromSeconds());
    List<Promise> promises = new ArrayList<>();
    for (String id : order) {
      if (random.nextInt(100) < 60) {
        promises.add(new Promise(id, random.nextInt(3) == 0 ? Kind.WISH : Kind.TOLD, windows(now)));
      }
    }
    boolean underWay = !done.isEmpty() && random.nextBoolean();
    return new RestOfDay(
        day,
        promises,
        order,
        done,
        underWay ? OptionalInt.of(now + random.nextInt(60)) : OptionalInt.empty(),
        cancelled,
        random.nextInt(day.travel().size()),
        now,
        random.nextInt(5) == 0,
        new WaterUse(random.nextInt(40), random.nextInt(40)),
        random.nextInt(2),
        new TreeSet<>(order));
  }

  private List<TimeWindow> windows(int now) {
    List<TimeWindow> windows = new ArrayList<>();
    int from = Math.max(0, now - 60 + random.nextInt(200));
    windows.add(new TimeWindow(from, from + 10 + random.nextInt(60)));
    if (random.nextInt(4) == 0) {
      int again = windows.get(0).toSeconds() + 1 + random.nextInt(60);
      windows.add(new TimeWindow(again, again + random.nextInt(40)));
    }
    return windows;
  }
}
