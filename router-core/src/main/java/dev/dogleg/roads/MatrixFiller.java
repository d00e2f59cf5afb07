package dev.dogleg.roads;

import dev.dogleg.travel.TravelMatrix;
import java.util.List;

/** Turns best paths into a {@link TravelMatrix}. */
final class MatrixFiller {
  private MatrixFiller() {}

  static TravelMatrix fill(Workbench bench, List<Seat> seats) {
    int n = seats.size();
    int k = RoadNetwork.ROAD_CLASSES.size();
    int[] classSeconds = new int[n * n * k];
    int[] turnSeconds = new int[n * n];
    int[] lengthMetres = new int[n * n];
    boolean[] reaches = new boolean[n * n];
    try (ManyToMany search = new ManyToMany(bench, seats)) {
      for (int from = 0; from < n; from++) {
        ManyToMany.Meeting[] meetings = search.from(seats.get(from));
        for (int to = 0; to < n; to++) {
          int pair = from * n + to;
          reaches[pair] = from == to || meetings[to] != null;
          if (from != to && reaches[pair]) {
            PathSums sums = search.sums(seats.get(from), seats.get(to), meetings[to]);
            System.arraycopy(sums.classSeconds(), 0, classSeconds, pair * k, k);
            turnSeconds[pair] = sums.turnSeconds();
            lengthMetres[pair] = sums.lengthMetres();
          }
        }
      }
    }
    return new TravelMatrix(
        n, RoadNetwork.ROAD_CLASSES, classSeconds, turnSeconds, lengthMetres, reaches);
  }
}
