package dev.dogleg.schedule;

/**
 * One way to arrive at a door: arrivals in a span of seconds, what they bind, and what they cost.
 *
 * <p>The gates of a visit are every pairing of its van windows with its arrival windows, for every
 * way to keep liked hours or to pay for them ({@code docs/TIMING.md}, {@code docs/WEEK.md}).
 *
 * @param arriveFrom first second of arriving; earlier the van waits at the door before
 * @param arriveTo last second of arriving
 * @param serviceFrom the service starts no earlier
 * @param doneBy the service ends no later
 * @param leaveBy the door is left no later
 * @param priceSixtieths price of liked hours that are not kept, in sixtieths of a second of driving
 */
public record DoorGate(
    int arriveFrom, int arriveTo, int serviceFrom, int doneBy, int leaveBy, long priceSixtieths) {}
