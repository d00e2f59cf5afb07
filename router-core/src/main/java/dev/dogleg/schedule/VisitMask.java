package dev.dogleg.schedule;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;

/**
 * A fixed set of visits as bits, compared with sets that stand as rows of {@code long}s.
 *
 * <p>Maintainers: a set is given by an array and the index of its first word, so that planners need
 * not copy it. Immutable once handed out.
 */
final class VisitMask {
  private final long[] words;

  VisitMask(int n) {
    words = new long[Math.max(1, (n + Long.SIZE - 1) / Long.SIZE)];
  }

  /** The visits of a list whose ids are named. */
  static VisitMask of(List<String> ids, Collection<String> named) {
    VisitMask mask = new VisitMask(ids.size());
    for (int i = 0; i < ids.size(); i++) {
      if (named.contains(ids.get(i))) {
        mask.add(i);
      }
    }
    return mask;
  }

  void add(int visit) {
    words[visit >>> 6] |= 1L << visit;
  }

  /** Adds these to a set. */
  void addTo(long[] rows, int at) {
    for (int w = 0; w < words.length; w++) {
      rows[at + w] |= words[w];
    }
  }

  /** Adds all of another but one visit. */
  void addAllBut(VisitMask other, int visit) {
    for (int w = 0; w < words.length; w++) {
      long bits = other.words[w];
      words[w] |= w == visit >>> 6 ? bits & ~(1L << visit) : bits;
    }
  }

  boolean holds(int visit) {
    return (words[visit >>> 6] >>> visit & 1) != 0;
  }

  /** {@return whether a set holds one of these} */
  boolean meets(long[] rows, int at) {
    for (int w = 0; w < words.length; w++) {
      if ((words[w] & rows[at + w]) != 0) {
        return true;
      }
    }
    return false;
  }

  /** {@return whether a set holds one of these, besides a visit} */
  boolean meetsBesides(long[] rows, int at, int visit) {
    for (int w = 0; w < words.length; w++) {
      long bits = words[w] & rows[at + w];
      if (w == visit >>> 6) {
        bits &= ~(1L << visit);
      }
      if (bits != 0) {
        return true;
      }
    }
    return false;
  }

  /** {@return how many of these a set holds} */
  int count(long[] rows, int at) {
    int sum = 0;
    for (int w = 0; w < words.length; w++) {
      sum += Long.bitCount(words[w] & rows[at + w]);
    }
    return sum;
  }

  /** {@return whether each of these is in one of two sets} */
  boolean within(long[] rows, int at, long[] more, int moreAt) {
    for (int w = 0; w < words.length; w++) {
      if ((words[w] & ~(rows[at + w] | more[moreAt + w])) != 0) {
        return false;
      }
    }
    return true;
  }

  /** {@return whether one set holds each of these that another holds} */
  boolean covers(long[] rows, int at, long[] other, int otherAt) {
    for (int w = 0; w < words.length; w++) {
      if ((words[w] & other[otherAt + w] & ~rows[at + w]) != 0) {
        return false;
      }
    }
    return true;
  }

  /** {@return how many these are} */
  int size() {
    return count(words, 0);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof VisitMask mask && Arrays.equals(words, mask.words);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(words);
  }
}
