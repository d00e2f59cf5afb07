package dev.dogleg.travel;

/**
 * A matrix under traffic bands, exact in whole seconds.
 *
 * <p>In band b the whole path of a pair would take {@code D(b) = sum over classes of round(seconds
 * * factor) + turns}. During one second in band b the van makes {@code ceil(2^42 / D(b))} of {@code
 * 2^42} parts of the path; it arrives at the first whole second by which all parts are made.
 *
 * <p>Maintainers: progress is a strictly rising whole-number function P of time, and arrival is the
 * least u with {@code P(u) >= P(t) + 2^42}; so arrival never falls as t rises, whatever the
 * rounding (first in, first out). Inside one band arrival is exactly {@code t + D(b)}: with {@code
 * s = ceil(2^42/D)}, {@code (D-1)*s < 2^42} holds for {@code D < 2^21} seconds. The mix of classes
 * is spread evenly over the path. Source: Ichoua, Gendreau, Potvin 2003, EJOR 144:379-396 (speeds,
 * not durations, change at band limits).
 */
public final class BandedTravelTimes implements TravelTimes {
  private static final long WHOLE_PATH = 1L << 42;

  private final TravelMatrix matrix;
  private final TrafficBands traffic;
  private final int bandCount;
  private final int[] bandStart;
  private final int[] pathSeconds;
  private final int[] leastSeconds;

  /**
   * Joins matrix and bands.
   *
   * @param matrix free-flow paths
   * @param traffic bands with the same road classes in the same order
   * @throws IllegalArgumentException where the road classes differ
   */
  public BandedTravelTimes(TravelMatrix matrix, TrafficBands traffic) {
    if (!matrix.roadClasses().equals(traffic.roadClasses())) {
      throw new IllegalArgumentException(
          "road classes differ: " + matrix.roadClasses() + " and " + traffic.roadClasses());
    }
    this.matrix = matrix;
    this.traffic = traffic;
    this.bandCount = traffic.bands().size();
    this.bandStart = traffic.bands().stream().mapToInt(TrafficBands.Band::fromSeconds).toArray();
    int n = matrix.size();
    this.pathSeconds = new int[n * n * bandCount];
    this.leastSeconds = new int[n * n];
    for (int from = 0; from < n; from++) {
      for (int to = 0; to < n; to++) {
        int pair = from * n + to;
        int least = Integer.MAX_VALUE;
        for (int band = 0; band < bandCount; band++) {
          int seconds = secondsInBand(from, to, band);
          pathSeconds[pair * bandCount + band] = seconds;
          least = Math.min(least, seconds);
        }
        leastSeconds[pair] = least;
      }
    }
  }

  private int secondsInBand(int from, int to, int band) {
    long seconds = matrix.turnSeconds(from, to);
    for (int k = 0; k < matrix.roadClasses().size(); k++) {
      long permille = traffic.bands().get(band).factorPermille().get(k);
      seconds += (matrix.classSeconds(from, to, k) * permille + 500) / 1000;
    }
    return Math.toIntExact(seconds);
  }

  @Override
  public int size() {
    return matrix.size();
  }

  @Override
  public boolean reaches(int from, int to) {
    return matrix.reaches(from, to);
  }

  @Override
  public int driveSeconds(int from, int to, int leaveSeconds) {
    int pair = pair(from, to);
    int band = bandAt(leaveSeconds);
    int seconds = pathSeconds[pair * bandCount + band];
    if (band == bandCount - 1 || leaveSeconds + seconds <= bandStart[band + 1]) {
      return seconds;
    }
    return integrate(pair, band, leaveSeconds);
  }

  /** The same as the bands say, without a look into their list. */
  private int bandAt(int seconds) {
    int band = bandCount - 1;
    while (band > 0 && bandStart[band] > seconds) {
      band--;
    }
    return band;
  }

  private int integrate(int pair, int firstBand, int leaveSeconds) {
    long left = WHOLE_PATH;
    int now = leaveSeconds;
    int band = firstBand;
    while (true) {
      int seconds = pathSeconds[pair * bandCount + band];
      if (seconds == 0) {
        return now - leaveSeconds;
      }
      long perSecond = (WHOLE_PATH + seconds - 1) / seconds;
      long needed = (left + perSecond - 1) / perSecond;
      if (band == bandCount - 1 || now + needed <= bandStart[band + 1]) {
        return Math.toIntExact(now + needed - leaveSeconds);
      }
      left -= perSecond * (bandStart[band + 1] - now);
      now = bandStart[band + 1];
      band++;
    }
  }

  @Override
  public int steadyUntil(int from, int to, int leaveSeconds) {
    int pair = pair(from, to);
    int band = bandAt(leaveSeconds);
    int seconds = driveSeconds(from, to, leaveSeconds);
    if (band == bandCount - 1) {
      return FOREVER;
    }
    int bandEnd = bandStart[band + 1];
    if (seconds == pathSeconds[pair * bandCount + band] && leaveSeconds + seconds <= bandEnd) {
      return steadyThrough(from, to, bandEnd - seconds, seconds);
    }
    return steadyThrough(from, to, leaveSeconds, seconds);
  }

  /** Walks on second by second from a leaving time known to take {@code seconds}. */
  private int steadyThrough(int from, int to, int knownSteady, int seconds) {
    int last = knownSteady;
    int lastBandStart = bandStart[bandCount - 1];
    while (driveSeconds(from, to, last + 1) == seconds) {
      last++;
      if (last >= lastBandStart) {
        return FOREVER;
      }
      int band = bandAt(last);
      int bandEnd = bandStart[band + 1];
      int inBand = pathSeconds[pair(from, to) * bandCount + band];
      if (inBand == seconds && last + seconds < bandEnd) {
        last = bandEnd - seconds;
      }
    }
    return last;
  }

  /**
   * {@inheritDoc}
   *
   * <p>Maintainers: while neither leaving nor arriving passes a band's start, arrival is a straight
   * line rounded up to whole seconds, so no duration in between is below both ends.
   */
  @Override
  public int straightUntil(int from, int to, int leaveSeconds) {
    int pair = pair(from, to);
    int band = bandAt(leaveSeconds);
    int seconds = pathSeconds[pair * bandCount + band];
    if (band == bandCount - 1 || seconds == 0) {
      return steadyUntil(from, to, leaveSeconds);
    }
    long perSecond = (WHOLE_PATH + seconds - 1) / seconds;
    long left = WHOLE_PATH;
    for (int next = band + 1; next < bandCount && left > 0; next++) {
      long last = bandStart[band + 1] - (left + perSecond - 1) / perSecond;
      if (last >= leaveSeconds) {
        return (int) last;
      }
      int inNext = pathSeconds[pair * bandCount + next];
      if (next == bandCount - 1 || inNext == 0) {
        break;
      }
      left -= (WHOLE_PATH + inNext - 1) / inNext * (bandStart[next + 1] - bandStart[next]);
    }
    return bandStart[band + 1] - 1;
  }

  @Override
  public int leastDriveSeconds(int from, int to) {
    return leastSeconds[pair(from, to)];
  }

  @Override
  public int leastDriveSeconds(int from, int to, int earliestLeaveSeconds, int latestLeaveSeconds) {
    int pair = pair(from, to);
    int first = bandAt(earliestLeaveSeconds);
    int last = bandAt(latestLeaveSeconds);
    int least = Integer.MAX_VALUE;
    int slowest = 0;
    for (int band = first; band <= last; band++) {
      least = Math.min(least, pathSeconds[pair * bandCount + band]);
      slowest = Math.max(slowest, pathSeconds[pair * bandCount + band]);
    }
    // A leg may run on into bands that begin while it is on the road.
    for (int band = last + 1;
        band < bandCount && bandStart[band] < (long) latestLeaveSeconds + slowest;
        band++) {
      least = Math.min(least, pathSeconds[pair * bandCount + band]);
      slowest = Math.max(slowest, pathSeconds[pair * bandCount + band]);
    }
    return least;
  }

  @Override
  public int lengthMetres(int from, int to) {
    pair(from, to);
    return matrix.lengthMetres(from, to);
  }

  @Override
  public String bandName(int leaveSeconds) {
    return traffic.bands().get(bandAt(leaveSeconds)).name();
  }

  private int pair(int from, int to) {
    if (!matrix.reaches(from, to)) {
      throw new IllegalArgumentException("no road leads from place " + from + " to " + to);
    }
    return from * matrix.size() + to;
  }
}
