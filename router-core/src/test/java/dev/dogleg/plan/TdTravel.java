package dev.dogleg.plan;

import dev.dogleg.travel.TravelTimes;

/**
 * Travel times of speeds that change by zone of the day, in hundred-thousandths of the file's unit.
 *
 * <p>Ichoua, Gendreau, Potvin 2003: the speed at the moment counts, integrated along the arc.
 * Arrival is rounded up to the next whole unit; rounding a rising function keeps first in, first
 * out.
 */
final class TdTravel implements TravelTimes {
  static final double UNIT = 1e5;

  private final double[][] distances;
  private final int[][] clusters;
  private final double[][] speeds;
  private final double[] zoneEnds;

  TdTravel(double[][] distances, int[][] clusters, double[][] speeds, double[] zoneEnds) {
    this.distances = distances;
    this.clusters = clusters;
    this.speeds = speeds;
    this.zoneEnds = zoneEnds;
  }

  @Override
  public int size() {
    return distances.length;
  }

  @Override
  public boolean reaches(int from, int to) {
    return from != to && distances[from][to] > 0;
  }

  @Override
  public int driveSeconds(int from, int to, int leave) {
    double left = distances[from][to];
    double now = leave / UNIT;
    double[] speed = speeds[clusters[from][to]];
    int zone = 0;
    while (zone < zoneEnds.length - 1 && zoneEnds[zone] <= now) {
      zone++;
    }
    while (zone < zoneEnds.length - 1 && now + left / speed[zone] > zoneEnds[zone]) {
      left -= (zoneEnds[zone] - now) * speed[zone];
      now = zoneEnds[zone];
      zone++;
    }
    return (int) (Math.ceil((now + left / speed[zone]) * UNIT - 1e-4) - leave);
  }

  @Override
  public int steadyUntil(int from, int to, int leave) {
    return leave;
  }

  @Override
  public int leastDriveSeconds(int from, int to) {
    double fastest = 0;
    for (double speed : speeds[clusters[from][to]]) {
      fastest = Math.max(fastest, speed);
    }
    return (int) (distances[from][to] / fastest * UNIT);
  }

  @Override
  public int leastDriveSeconds(int from, int to, int earliest, int latest) {
    double[] speed = speeds[clusters[from][to]];
    double fastest = 0;
    double slowest = Double.MAX_VALUE;
    for (double each : speed) {
      slowest = Math.min(slowest, each);
    }
    double last = latest / UNIT + distances[from][to] / slowest;
    for (int zone = 0; zone < zoneEnds.length; zone++) {
      double start = zone == 0 ? 0 : zoneEnds[zone - 1];
      boolean met = zoneEnds[zone] >= earliest / UNIT || zone == zoneEnds.length - 1;
      if (met && start <= last) {
        fastest = Math.max(fastest, speed[zone]);
      }
    }
    return (int) (distances[from][to] / fastest * UNIT);
  }

  @Override
  public int lengthMetres(int from, int to) {
    return 0;
  }
}
