package dev.dogleg.plan;

import dev.dogleg.schedule.RunEnvelope;

/**
 * Being ready to leave a last door with so much in the tanks and so many seconds groomed.
 *
 * <p>Maintainers: a list; days without tanks and without a price for full days have one entry. A
 * load is no worse than another where it made no more stops, used no more of either tank and
 * groomed no longer: whatever follows, it may do too, at no higher price.
 */
final class LoadedRuns {
  final int stops;
  final int fresh;
  final int grey;
  final long groomed;
  final RunEnvelope runs;
  LoadedRuns next;

  LoadedRuns(int stops, int fresh, int grey, long groomed, RunEnvelope runs) {
    this.stops = stops;
    this.fresh = fresh;
    this.grey = grey;
    this.groomed = groomed;
    this.runs = runs;
  }

  /** Nothing done yet. */
  static LoadedRuns start(RunEnvelope runs) {
    return new LoadedRuns(0, 0, 0, 0, runs);
  }

  /** {@return the load after a water stop, at other runs} */
  LoadedRuns filled(RunEnvelope there) {
    return new LoadedRuns(stops + 1, 0, 0, groomed, there);
  }

  boolean same(int otherStops, int otherFresh, int otherGrey, long otherGroomed) {
    return stops == otherStops
        && fresh == otherFresh
        && grey == otherGrey
        && groomed == otherGroomed;
  }

  /** {@return whether a run at another load is of no use beside this} */
  boolean makesUseless(LoadedRuns other, RunEnvelope source, int run) {
    return stops <= other.stops
        && fresh <= other.fresh
        && grey <= other.grey
        && groomed <= other.groomed
        && runs.covers(source, run);
  }
}
