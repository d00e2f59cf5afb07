package dev.dogleg.cli.export;

import dev.dogleg.itinerary.PlannedStop;

/**
 * What a planned day adds up to.
 *
 * @param driveSeconds all driving
 * @param metres its length
 * @param waitSeconds all waiting
 * @param groomSeconds all services, stop minutes included
 */
record DaySums(long driveSeconds, long metres, long waitSeconds, long groomSeconds) {
  /** The sums of a day. */
  static DaySums of(PlannedDay day) {
    long drive = 0;
    long metres = 0;
    long wait = 0;
    long groom = 0;
    for (PlannedStop stop : day.plan().stops()) {
      drive += stop.driveSeconds();
      metres += stop.driveMetres();
      wait += stop.waitSeconds();
      groom +=
          stop.kind() == PlannedStop.Kind.VISIT ? day.stop(stop.visitId()).serviceSeconds() : 0;
    }
    return new DaySums(drive, metres, wait, groom);
  }

  /** The sums of this and another day. */
  DaySums plus(DaySums other) {
    return new DaySums(
        driveSeconds + other.driveSeconds,
        metres + other.metres,
        waitSeconds + other.waitSeconds,
        groomSeconds + other.groomSeconds);
  }
}
