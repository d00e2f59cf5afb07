package dev.dogleg.peers;

import dev.dogleg.itinerary.WeekRequest;
import java.util.List;

/** Another library's search for a good week without traffic, breaks, water and rules. */
interface WeekPeer {
  /** What leaving one booking out costs a peer: more than any week does, in sixtieths. */
  long LEFT_OUT = 100_000_000L;

  /** {@return its name and settings} */
  String title();

  /**
   * Searches.
   *
   * @param week the week
   * @param seconds how long, in processor seconds of this thread
   * @param seed draws what can be drawn
   * @return for each van-day the numbers of its bookings in the order served
   */
  List<List<Integer>> search(WeekRequest week, double seconds, long seed);
}
