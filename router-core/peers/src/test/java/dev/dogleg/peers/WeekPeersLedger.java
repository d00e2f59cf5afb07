package dev.dogleg.peers;

import org.junit.jupiter.api.Test;

/** The long comparisons of the week planner, one command each: {@code docs/BENCHMARKS.md}. */
class WeekPeersLedger {
  /** {@code -Ddogleg.pool=first,last}: seeds of weeks for the second solver. */
  @Test
  void wholePool() {
    PoolRun.main(System.getProperty("dogleg.pool", "1,200").split(","));
  }

  /** {@code -Ddogleg.peers=bookings,first,last,seconds}: weeks and time for the peers. */
  @Test
  void peers() {
    PeersRun.main(System.getProperty("dogleg.peers", "30,0,9,8").split(","));
  }
}
