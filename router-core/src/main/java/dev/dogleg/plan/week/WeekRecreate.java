package dev.dogleg.plan.week;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Puts those left out of a week where they cost least, one after the other.
 *
 * <p>Maintainers: either in an order by one trait, each at its cheapest van-day (Christiaens and
 * Vanden Berghe 2020, section 5.3); or next always the one that loses most if it does not get its
 * cheapest van-day (regret insertion: Ropke and Pisinger 2006, Transportation Science 40:455-472),
 * drawn a little by chance. Now and then a van-day is overlooked (their blinks). Counted bookings
 * come first. One thread.
 */
final class WeekRecreate {
  private static final int BLINK = 100;

  /** What only one van-day may serve regrets so much, in shares of that way's cost. */
  private static final double LAST_CHANCE = 4;

  private final SearchDays days;
  private final WeekModel model;
  private final SplittableRandom random;
  private final long[] absent;
  private boolean chance;

  WeekRecreate(SearchDays days, SplittableRandom random) {
    this.days = days;
    this.model = days.model();
    this.random = random;
    absent = new long[model.size()];
  }

  /** Notes who is left out of a week: whoever often is comes first another time. */
  void absent(WeekState week) {
    for (int i = 0; i < absent.length; i++) {
      absent[i] += week.served(i) ? 0 : 1;
    }
  }

  /** Without chance, the shortest services first. */
  void first(WeekState week) {
    chance = false;
    inOrder(week, open(week), key(Key.SHORT));
  }

  /** In a way drawn by chance. */
  void recreate(WeekState week) {
    chance = true;
    if (random.nextBoolean()) {
      byRegret(week, open(week));
    } else {
      inOrder(week, open(week), key(Key.DRAWN[random.nextInt(Key.DRAWN.length)]));
    }
  }

  private enum Key {
    CHANCE,
    LONG,
    SHORT,
    ABSENT,
    FEW_DAYS;

    private static final Key[] DRAWN = {
      CHANCE, CHANCE, CHANCE, CHANCE, LONG, LONG, ABSENT, ABSENT, FEW_DAYS, SHORT
    };
  }

  private int[] open(WeekState week) {
    return IntStream.range(0, model.size()).filter(i -> !week.served(i)).toArray();
  }

  private long[] key(Key by) {
    long[] key = new long[model.size()];
    for (int i = 0; i < key.length; i++) {
      key[i] =
          switch (by) {
            case CHANCE -> random.nextInt();
            case LONG -> -service(i);
            case SHORT -> service(i);
            case ABSENT -> -absent[i];
            case FEW_DAYS -> days.vans(i).length;
          };
    }
    return key;
  }

  private long service(int booking) {
    return model.booking(booking).choices().isEmpty()
        ? 0
        : model.booking(booking).choices().get(0).visit().serviceSeconds();
  }

  private void inOrder(WeekState week, int[] open, long[] key) {
    int[] sorted =
        Arrays.stream(open)
            .boxed()
            .sorted(
                (i, j) -> {
                  int first = Boolean.compare(model.counted(j), model.counted(i));
                  return first != 0 ? first : Long.compare(key[i], key[j]);
                })
            .mapToInt(Integer::intValue)
            .toArray();
    for (int booking : sorted) {
      if (!week.served(booking)) {
        int best = -1;
        long least = RelaxedDay.NEVER;
        for (int van : days.vans(booking)) {
          long more = more(week, booking, van);
          if (more < least) {
            least = more;
            best = van;
          }
        }
        if (best >= 0) {
          serve(week, booking, best);
        }
      }
    }
  }

  private void byRegret(WeekState week, int[] open) {
    long[][] more = new long[open.length][days.size()];
    for (int o = 0; o < open.length; o++) {
      Arrays.fill(more[o], RelaxedDay.NEVER);
      for (int van : days.vans(open[o])) {
        more[o][van] = more(week, open[o], van);
      }
    }
    while (true) {
      int next = -1;
      double most = 0;
      for (int o = 0; o < open.length; o++) {
        double regret = week.served(open[o]) ? -1 : regret(more[o]) * (0.5 + random.nextDouble());
        if (regret >= 0 && (next < 0 || before(open[o], regret, open[next], most))) {
          most = regret;
          next = o;
        }
      }
      if (next < 0) {
        return;
      }
      int van = cheapest(more[next]);
      serve(week, open[next], van);
      for (int o = 0; o < open.length; o++) {
        if (model.kindOf(van).local(open[o]) >= 0 && !week.served(open[o])) {
          more[o][van] = more(week, open[o], van);
        }
      }
    }
  }

  private boolean before(int booking, double regret, int other, double otherRegret) {
    return model.counted(booking) == model.counted(other)
        ? regret > otherRegret
        : model.counted(booking);
  }

  private static int cheapest(long[] more) {
    int cheapest = 0;
    for (int van = 1; van < more.length; van++) {
      cheapest = more[van] < more[cheapest] ? van : cheapest;
    }
    return cheapest;
  }

  /** What the second best way costs more than the best one; negative where there is none at all. */
  private static double regret(long[] more) {
    long first = RelaxedDay.NEVER;
    long second = RelaxedDay.NEVER;
    for (long cost : more) {
      if (cost < first) {
        second = first;
        first = cost;
      } else if (cost < second) {
        second = cost;
      }
    }
    if (first >= RelaxedDay.NEVER) {
      return -1;
    }
    return second < RelaxedDay.NEVER ? second - first : LAST_CHANCE * Math.max(0, first);
  }

  /** What a van-day costs more with a booking; NEVER where it cannot, or is not worth it. */
  private long more(WeekState week, int booking, int van) {
    KnownOrders known = days.of(van);
    int local = known.kind().local(booking);
    int[] company = known.company(local);
    if ((chance && random.nextInt(BLINK) == 0)
        || company.length == 0
        || seenBefore(week, van)
        || !allOpen(week, known.kind(), company)) {
      return RelaxedDay.NEVER;
    }
    KnownOrders.Known with = known.with(week.day(van), local);
    long more = with.cost() - week.day(van).cost();
    return with.possible() && more < worth(known.kind(), company) ? more : RelaxedDay.NEVER;
  }

  private void serve(WeekState week, int booking, int van) {
    KnownOrders known = days.of(van);
    int local = known.kind().local(booking);
    week.set(van, known.with(week.day(van), local));
    for (int with : known.company(local)) {
      week.mark(known.kind().booking(with), van);
    }
  }

  private static boolean allOpen(WeekState week, VanKind kind, int[] company) {
    for (int with : company) {
      if (week.served(kind.booking(with))) {
        return false;
      }
    }
    return true;
  }

  /** What serving some bookings may cost at the most. */
  private long worth(VanKind kind, int[] company) {
    long worth = 0;
    for (int with : company) {
      int booking = kind.booking(with);
      if (model.counted(booking)) {
        return RelaxedDay.NEVER;
      }
      worth += model.leftOutSixtieths(booking);
    }
    return worth;
  }

  /** Whether an earlier van-day of the same kind looks just the same: both are empty. */
  private boolean seenBefore(WeekState week, int van) {
    if (week.day(van).order().length > 0) {
      return false;
    }
    for (int other : model.kindOf(van).vanDays()) {
      if (other < van && week.day(other).order().length == 0) {
        return true;
      }
    }
    return false;
  }
}
