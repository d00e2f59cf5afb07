package dev.dogleg.roads;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Best paths from every source to every target.
 *
 * <p>One search down from each target leaves a note (a bucket) at every key it settled; one search
 * up from each source reads the notes where it passes and adds the turn that joins the two. What a
 * pair gets depends on that pair alone: ties go to the label settled first, then to the smaller
 * key. Cost: (sources + targets) small searches, then a few dozen steps a pair for its sums.
 *
 * <p>Source: Knopp et al. 2007; on edges, the note carries its first key (Geisberger, Vetter 2011).
 */
final class ManyToMany implements AutoCloseable {
  /** The best path of a pair, before it is summed or drawn. */
  record Meeting(
      int weight, LabelTree up, int upLabel, LabelTree down, int downLabel, int straight) {}

  private final Hierarchy hierarchy;
  private final RoadGraph graph;
  private final Workbench bench;
  private final List<Seat> targets;
  private final List<LabelTree> downTrees = new ArrayList<>();
  private int[] nextNote = new int[1024];
  private int[] noteTarget = new int[1024];
  private int[] noteLabel = new int[1024];
  private int notes;

  /**
   * Searches down from every target.
   *
   * @param bench arrays to work on; not to be used by anybody else until this is closed
   * @param targets where to go
   */
  ManyToMany(Workbench bench, List<Seat> targets) {
    this.bench = bench;
    this.hierarchy = bench.hierarchy;
    this.graph = hierarchy.graph;
    this.targets = List.copyOf(targets);
    for (Seat target : targets) {
      LabelTree tree = bench.search.to(target);
      for (int label = 0; label < tree.size; label++) {
        note(tree.key[label], downTrees.size(), label);
      }
      downTrees.add(tree);
    }
  }

  private void note(int key, int target, int label) {
    if (notes == nextNote.length) {
      nextNote = Arrays.copyOf(nextNote, 2 * notes);
      noteTarget = Arrays.copyOf(noteTarget, 2 * notes);
      noteLabel = Arrays.copyOf(noteLabel, 2 * notes);
    }
    nextNote[notes] = bench.firstNote[key];
    noteTarget[notes] = target;
    noteLabel[notes] = label;
    bench.firstNote[key] = notes++;
  }

  /** Clears the notes off the bench. */
  @Override
  public void close() {
    for (LabelTree tree : downTrees) {
      for (int label = 0; label < tree.size; label++) {
        bench.firstNote[tree.key[label]] = -1;
      }
    }
  }

  /**
   * Best paths from one source.
   *
   * @param source where to start
   * @return one for each target, null where no road leads
   */
  Meeting[] from(Seat source) {
    LabelTree up = bench.search.from(source);
    int[] weight = new int[targets.size()];
    int[] upLabel = new int[weight.length];
    int[] downLabel = new int[weight.length];
    Arrays.fill(weight, Integer.MAX_VALUE);
    for (int label = 0; label < up.size; label++) {
      int key = up.key[label];
      int node = graph.head(key);
      for (int i = graph.outFirst[node]; i < graph.outFirst[node + 1]; i++) {
        int note = bench.firstNote[graph.outKeys[i]];
        int turn = note < 0 ? RoadGraph.CLOSED : graph.turnWeight(key, graph.outKeys[i]);
        if (turn == RoadGraph.CLOSED) {
          continue;
        }
        for (; note >= 0; note = nextNote[note]) {
          int target = noteTarget[note];
          long sum = (long) up.cost[label] + turn + downTrees.get(target).cost[noteLabel[note]];
          if (sum < weight[target]) {
            weight[target] = (int) sum;
            upLabel[target] = label;
            downLabel[target] = noteLabel[note];
          }
        }
      }
    }
    Meeting[] meetings = new Meeting[weight.length];
    for (int target = 0; target < weight.length; target++) {
      meetings[target] =
          meet(source, target, up, weight[target], upLabel[target], downLabel[target]);
    }
    return meetings;
  }

  private Meeting meet(
      Seat source, int target, LabelTree up, int weight, int upLabel, int downLabel) {
    Seat goal = targets.get(target);
    LabelTree down = downTrees.get(target);
    int key = source.straightTo(goal);
    if (key >= 0) {
      int straight = goal.arrivingMs(key) - source.arrivingMs(key);
      if (straight <= weight) {
        return new Meeting(straight, up, 0, down, 0, key);
      }
    }
    return weight == Integer.MAX_VALUE
        ? null
        : new Meeting(weight, up, upLabel, down, downLabel, -1);
  }

  /** Adds up what is driven on a path, without unpacking it. */
  PathSums sums(Seat source, Seat target, Meeting meeting) {
    PathSums sums = new PathSums();
    if (meeting.straight >= 0) {
      int key = meeting.straight;
      sums.add(graph.roadClass[key >> 1], target.arrivingMs(key) - source.arrivingMs(key));
      sums.add(Hierarchy.LENGTH_CM, target.arrivingCm(key) - source.arrivingCm(key));
      return sums;
    }
    LabelTree up = meeting.up;
    int label = meeting.upLabel;
    for (; !up.isRoot(label); label = up.parent[label]) {
      int arc = up.arc[label];
      sums.addArc(hierarchy, arc);
      sums.add(Hierarchy.TURN_MS, graph.turnMs(up.key[up.parent[label]], hierarchy.first(arc)));
    }
    int startKey = up.key[label];
    sums.add(graph.roadClass[startKey >> 1], source.leavingMs(startKey));
    sums.add(Hierarchy.LENGTH_CM, source.leavingCm(startKey));
    LabelTree down = meeting.down;
    label = meeting.downLabel;
    sums.add(Hierarchy.TURN_MS, graph.turnMs(up.key[meeting.upLabel], down.key[label]));
    for (; !down.isRoot(label); label = down.parent[label]) {
      int arc = down.arc[label];
      sums.addArc(hierarchy, arc);
      sums.add(Hierarchy.TURN_MS, graph.turnMs(hierarchy.last(arc), down.key[down.parent[label]]));
    }
    int endKey = down.key[label];
    sums.add(graph.roadClass[endKey >> 1], target.arrivingMs(endKey));
    sums.add(Hierarchy.LENGTH_CM, target.arrivingCm(endKey));
    return sums;
  }

  /** The edge keys of a path in driving order; the first and the last are driven in part. */
  int[] keys(Meeting meeting) {
    if (meeting.straight >= 0) {
      return new int[] {meeting.straight};
    }
    KeyList keys = new KeyList();
    List<Integer> climbed = new ArrayList<>();
    int label = meeting.upLabel;
    for (; !meeting.up.isRoot(label); label = meeting.up.parent[label]) {
      climbed.add(meeting.up.arc[label]);
    }
    keys.add(meeting.up.key[label]);
    for (int i = climbed.size() - 1; i >= 0; i--) {
      keys.unpack(hierarchy, climbed.get(i));
    }
    label = meeting.downLabel;
    for (; !meeting.down.isRoot(label); label = meeting.down.parent[label]) {
      keys.unpack(hierarchy, meeting.down.arc[label]);
    }
    keys.add(meeting.down.key[label]);
    return keys.toArray();
  }
}
