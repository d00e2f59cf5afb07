package dev.dogleg.roads;

import java.util.Arrays;
import java.util.PriorityQueue;

/**
 * Plain Dijkstra on edge keys, without hierarchy or arrays of shortcuts: the slow answer that the
 * fast one must equal.
 */
final class LineGraphSearch {
  private LineGraphSearch() {}

  /** Search weight from one place to another; -1 where no road leads. */
  static long weight(RoadGraph graph, Seat from, Seat to) {
    long[] best = new long[graph.tail.length];
    Arrays.fill(best, Long.MAX_VALUE);
    PriorityQueue<long[]> queue = new PriorityQueue<>((a, b) -> Long.compare(a[0], b[0]));
    for (int key : from.startKeys()) {
      best[key] = from.leavingMs(key);
      queue.add(new long[] {best[key], key});
    }
    long answer = Long.MAX_VALUE;
    int straight = from.straightTo(to);
    if (straight >= 0) {
      answer = (long) to.arrivingMs(straight) - from.arrivingMs(straight);
    }
    int[] goals = to.startKeys();
    while (!queue.isEmpty()) {
      long[] top = queue.poll();
      int key = (int) top[1];
      if (top[0] != best[key] || top[0] >= answer) {
        continue;
      }
      int node = graph.head(key);
      for (int i = graph.outFirst[node]; i < graph.outFirst[node + 1]; i++) {
        int next = graph.outKeys[i];
        int turn = graph.turnWeight(key, next);
        if (turn == RoadGraph.CLOSED) {
          continue;
        }
        for (int goal : goals) {
          if (goal == next) {
            answer = Math.min(answer, top[0] + turn + to.arrivingMs(goal));
          }
        }
        long cost = top[0] + turn + graph.edgeMs[next];
        if (cost < best[next]) {
          best[next] = cost;
          queue.add(new long[] {cost, next});
        }
      }
    }
    return answer == Long.MAX_VALUE ? -1 : answer;
  }
}
