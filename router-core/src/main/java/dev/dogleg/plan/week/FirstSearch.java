package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * The first week of a request: two searches of half the rounds each, side by side, each with its
 * own chance and its own memory.
 *
 * <p>Maintainers: neither sees anything of the other, so what comes out does not depend on threads.
 * Where promises have a price there is one search, for their odds are remembered by one thread.
 */
final class FirstSearch {
  private static final int SEARCHES = 2;

  private final List<WeekSearch> searches = new ArrayList<>();
  private final List<WorkCount> shares = new ArrayList<>();
  private WeekSearch better;

  /**
   * Sets up.
   *
   * @param model the week
   * @param costs exact costs of sets, to be used for the first search
   * @param seed of the first search's chance; that of the second is drawn from it
   * @param effort most steps of all searches
   * @param stop asked now and then; once true, they end
   */
  FirstSearch(WeekModel model, SetCosts costs, long seed, long effort, BooleanSupplier stop) {
    int count = model.kinds().stream().anyMatch(VanKind::pricesPromises) ? 1 : SEARCHES;
    for (int k = 0; k < count; k++) {
      WorkCount share = new WorkCount(Math.max(1, effort / count), stop);
      SetCosts own = k == 0 ? costs : new SetCosts(model, share);
      shares.add(share);
      searches.add(new WeekSearch(model, own, seed + k, share));
    }
    better = searches.get(0);
  }

  /**
   * Searches.
   *
   * @param rounds most rounds of all searches together
   * @param progress told of each better week of the first search
   * @return the best week found
   */
  WeekChoice run(int rounds, Consumer<WeekChoice> progress) {
    int each = (rounds + searches.size() - 1) / searches.size();
    List<WeekChoice> found =
        IntStream.range(0, searches.size())
            .parallel()
            .mapToObj(k -> searches.get(k).run(each, k == 0 ? progress : week -> {}))
            .toList();
    int best = 0;
    for (int k = 1; k < found.size(); k++) {
      best = found.get(k).beats(found.get(best)) ? k : best;
    }
    better = searches.get(best);
    return found.get(best);
  }

  /** {@return the search that found the best week, to go on with} */
  WeekSearch better() {
    return better;
  }

  /** {@return steps of all searches} */
  long steps() {
    return shares.stream().mapToLong(WorkCount::steps).sum();
  }

  /** {@return orders known, search by search, each by kind} */
  List<KnownOrders> orders() {
    return searches.stream().flatMap(search -> search.orders().stream()).toList();
  }
}
