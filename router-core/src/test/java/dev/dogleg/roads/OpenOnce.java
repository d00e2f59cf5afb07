package dev.dogleg.roads;

import java.nio.file.Path;
import java.util.List;

/**
 * Opens a sketch and answers one question; run as a process of its own by {@link RoadCacheTest}.
 */
final class OpenOnce {
  private OpenOnce() {}

  /** Takes the map file and the cache folder. */
  public static void main(String[] args) {
    Progress progress = (phase, detail) -> System.out.println(phase);
    try (RoadNetwork roads =
        RoadNetwork.open(Path.of(args[0]), VanCard.starter(), Path.of(args[1]), progress)) {
      System.out.println(
          "answer "
              + roads
                  .matrix(List.of(Sketches.on(roads, 0, 0), Sketches.on(roads, 5, 4)))
                  .freeFlowSeconds(0, 1));
    }
  }
}
