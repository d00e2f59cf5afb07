package dev.dogleg.fit;

import java.util.List;
import java.util.OptionalInt;

/**
 * Which times may be told in the van-days to come?
 *
 * @param asks kinds of client by zone; ids of their bookings are unique and stand in the week
 * @param spanSeconds width of a told span, 1..14,400
 * @param stepSeconds spans begin on multiples of this by the day's clock, 1..3,600
 * @param marginSeconds how much longer the drive to a door, and that from it, may be than those to
 *     and from the doors asked about, 0..3,600; with a step no more than the span
 * @param overtime whether overtime that the shift allows counts as room; otherwise the day ends by
 *     its shift's end, or as late as it does already
 * @param keptPermille so many of a thousand told times are to be kept, 500..999: every time that
 *     may be told, and those told already, or as many as are kept now where that is less; empty:
 *     odds are not looked at
 * @param effort limit of each look at one day, in solver steps, 1 or more
 */
public record RoomQuestion(
    List<RoomAsk> asks,
    int spanSeconds,
    int stepSeconds,
    int marginSeconds,
    boolean overtime,
    OptionalInt keptPermille,
    long effort) {
  /** Checks the ranges. */
  public RoomQuestion {
    asks = List.copyOf(asks);
    check("spanSeconds", spanSeconds, 1, 14_400);
    check("stepSeconds", stepSeconds, 1, 3_600);
    check("keptPermille", keptPermille.orElse(500), 500, 999);
    check("marginSeconds", marginSeconds, 0, 3_600);
    if (marginSeconds + stepSeconds > spanSeconds || effort < 1) {
      throw new IllegalArgumentException(
          "margin and step must fit into the span, and effort be 1 or more");
    }
  }

  private static void check(String name, int value, int least, int most) {
    if (value < least || value > most) {
      throw new IllegalArgumentException(
          name + " must lie in " + least + ".." + most + ", was " + value);
    }
  }
}
