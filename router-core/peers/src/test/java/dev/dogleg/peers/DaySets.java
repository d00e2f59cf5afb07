package dev.dogleg.peers;

/**
 * Sets of bookings that one van-day can serve, each with a cost.
 *
 * @param day number of the van-day
 * @param sets the sets, each once; bit b is booking b of the week
 * @param costs cost of each, prices of the choices included, in sixtieths
 */
@SuppressWarnings("ArrayRecordComponent")
record DaySets(int day, long[] sets, long[] costs) {
  int size() {
    return sets.length;
  }
}
