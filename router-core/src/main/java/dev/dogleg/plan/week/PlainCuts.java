package dev.dogleg.plan.week;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The cuts in force as the labels of a plain day see them: any number of them, each with a memory
 * of visits outside of which a label forgets that it has met the cut.
 *
 * <p>Maintainers: subset-row cuts of limited memory (Pecin, Pessoa, Poggi, Uchoa 2017, Mathematical
 * Programming Computation 9:61-100, section 3), but only in pricing: the LP counts every cut in
 * full. So a label charges too little at worst, every bound stays a bound, and a memory grows where
 * a day seems cheap only because of it.
 */
final class PlainCuts {
  private final VanKind kind;
  private final int n;
  private final Map<RowCut, long[]> memories = new HashMap<>();
  private List<RowCut> cuts = List.of();

  /** Words of a set of cuts. */
  int words;

  /** Prices by cut, and cuts by visit: those that name it; those that remember it. */
  long[] price = new long[0];

  long[] naming = new long[0];
  long[] keeping = new long[0];

  PlainCuts(VanKind kind) {
    this.kind = kind;
    n = kind.size();
  }

  /** Takes the cuts with a price. */
  void take(RowPrices prices) {
    List<RowCut> all = prices.cuts();
    int[] priced = IntStream.range(0, all.size()).filter(k -> prices.cut()[k] > 0).toArray();
    cuts = Arrays.stream(priced).mapToObj(all::get).toList();
    price = Arrays.stream(priced).mapToLong(k -> prices.cut()[k]).toArray();
    words = (price.length + Long.SIZE - 1) / Long.SIZE;
    naming = new long[n * words];
    keeping = new long[n * words];
    for (int k = 0; k < price.length; k++) {
      for (int member : members(cuts.get(k))) {
        naming[member * words + (k >>> 6)] |= 1L << k;
      }
      long[] memory = memory(cuts.get(k));
      for (int j = 0; j < n; j++) {
        if ((memory[j >>> 6] >>> j & 1) != 0) {
          keeping[j * words + (k >>> 6)] |= 1L << k;
        }
      }
    }
  }

  private int[] members(RowCut cut) {
    return IntStream.of(cut.first(), cut.second(), cut.third())
        .map(kind::local)
        .filter(local -> local >= 0)
        .toArray();
  }

  private long[] memory(RowCut cut) {
    return memories.computeIfAbsent(
        cut,
        key -> {
          long[] memory = new long[(n + Long.SIZE - 1) / Long.SIZE];
          for (int member : members(key)) {
            memory[member >>> 6] |= 1L << member;
          }
          return memory;
        });
  }

  /** {@return sum of the prices of the cuts in both of two words of sets} */
  long sum(long bits, int word) {
    long sum = 0;
    for (long left = bits; left != 0; left &= left - 1) {
      sum += price[(word << 6) + Long.numberOfTrailingZeros(left)];
    }
    return sum;
  }

  /**
   * What the cuts charge a day in full.
   *
   * @param order its visits
   * @return parts
   */
  long charged(int[] order) {
    long sum = 0;
    for (int w = 0; w < words; w++) {
      long odd = 0;
      for (int j : order) {
        long named = naming[j * words + w];
        sum += sum(odd & named, w);
        odd ^= named;
      }
    }
    return sum;
  }

  /**
   * Lets every cut remember what lies between its visits on a day.
   *
   * @param order visits of the day
   * @return whether any memory grew
   */
  boolean learn(int[] order) {
    boolean grown = false;
    for (int c = 0; c < price.length; c++) {
      int[] members = members(cuts.get(c));
      int last = -1;
      for (int k = 0; k < order.length; k++) {
        int at = k;
        if (Arrays.stream(members).anyMatch(member -> member == order[at])) {
          for (int between = last + 1; last >= 0 && between < k; between++) {
            grown |= remember(c, order[between]);
          }
          last = last < 0 ? k : -1;
        }
      }
    }
    return grown;
  }

  private boolean remember(int cut, int visit) {
    int at = visit * words + (cut >>> 6);
    boolean fresh = (keeping[at] >>> cut & 1) == 0;
    keeping[at] |= 1L << cut;
    memory(cuts.get(cut))[visit >>> 6] |= 1L << visit;
    return fresh;
  }
}
