package dev.dogleg.address;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Objects that bear one address, gathered into doors: what stands together is one door. */
final class Doors {
  /** Objects of one address farther apart than this are two doors. */
  static final double APART_METRES = 25;

  private Doors() {}

  /** Groups in which no two objects stand apart, each with its most central object first. */
  static List<List<Hit>> of(List<Hit> hits) {
    List<List<Hit>> doors = new ArrayList<>();
    for (Hit hit : hits) {
      List<Hit> home = null;
      for (List<Hit> door : doors) {
        if (door.stream().allMatch(other -> hit.metresTo(other) <= APART_METRES)) {
          home = door;
          break;
        }
      }
      if (home == null) {
        home = new ArrayList<>();
        doors.add(home);
      }
      home.add(hit);
    }
    doors.forEach(Doors::centralFirst);
    return doors;
  }

  private static void centralFirst(List<Hit> door) {
    int central =
        IntStream.range(0, door.size())
            .boxed()
            .min(
                Comparator.comparingDouble((Integer at) -> farthest(door.get(at), door))
                    .thenComparing(at -> door.get(at).source()))
            .orElseThrow();
    door.add(0, door.remove(central));
  }

  private static double farthest(Hit from, List<Hit> door) {
    return door.stream().mapToDouble(from::metresTo).max().orElse(0);
  }

  /** Greatest distance between the doors. */
  static int spreadMetres(List<List<Hit>> doors) {
    double spread = 0;
    for (List<Hit> a : doors) {
      for (List<Hit> b : doors) {
        spread = Math.max(spread, a.get(0).metresTo(b.get(0)));
      }
    }
    return (int) Math.round(spread);
  }
}
