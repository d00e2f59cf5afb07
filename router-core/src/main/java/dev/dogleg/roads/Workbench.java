package dev.dogleg.roads;

import java.util.Arrays;

/** Arrays as long as the map has edge keys, made once and used by one search after another. */
final class Workbench {
  final Hierarchy hierarchy;
  final UpwardSearch search;

  /** First note at a key, -1 where there is none; clean whenever nobody works here. */
  final int[] firstNote;

  Workbench(Hierarchy hierarchy) {
    this.hierarchy = hierarchy;
    this.search = new UpwardSearch(hierarchy);
    this.firstNote = new int[hierarchy.graph.tail.length];
    Arrays.fill(firstNote, -1);
  }
}
