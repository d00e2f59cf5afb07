package dev.dogleg.roads;

import java.util.Arrays;

/** Edge keys in driving order; unpacks shortcuts. */
final class KeyList {
  private int[] keys = new int[64];
  private int size;

  void add(int key) {
    if (size == keys.length) {
      keys = Arrays.copyOf(keys, 2 * size);
    }
    keys[size++] = key;
  }

  /**
   * Adds all keys inside an arc, without recursion: a shortcut may be as deep as the town is wide.
   */
  void unpack(Hierarchy hierarchy, int arc) {
    int[] stack = {arc, 0, 0, 0};
    int depth = 1;
    while (depth > 0) {
      int top = stack[--depth];
      if (!hierarchy.isShortcut(top)) {
        add(top);
        continue;
      }
      if (depth + 2 > stack.length) {
        stack = Arrays.copyOf(stack, 2 * stack.length);
      }
      int shortcut = top - hierarchy.graph.tail.length;
      stack[depth++] = hierarchy.skipped2[shortcut];
      stack[depth++] = hierarchy.skipped1[shortcut];
    }
  }

  int[] toArray() {
    return Arrays.copyOf(keys, size);
  }
}
