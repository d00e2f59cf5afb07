package dev.dogleg.cli.words;

import dev.dogleg.model.WallSpan;
import java.util.ArrayList;
import java.util.List;

/**
 * When the van may stand at a door, while limits are being added.
 *
 * @param spans sorted, apart
 */
record VanLimits(List<WallSpan> spans) {
  /** No limit. */
  static final VanLimits NONE = new VanLimits(List.of(WallSpan.ALWAYS));

  VanLimits {
    spans = List.copyOf(spans);
  }

  boolean never() {
    return spans.isEmpty();
  }

  VanLimits only(WallSpan limit) {
    return clipped(List.of(limit));
  }

  VanLimits without(WallSpan hole) {
    if (hole.fromSeconds() == hole.toSeconds()) {
      return this;
    }
    List<WallSpan> around = new ArrayList<>();
    if (hole.fromSeconds() > 0) {
      around.add(new WallSpan(0, hole.fromSeconds()));
    }
    if (hole.toSeconds() < WallSpan.MIDNIGHT) {
      around.add(new WallSpan(hole.toSeconds(), WallSpan.OPEN));
    }
    return clipped(around);
  }

  /** What is left of these spans inside those; a stay of no length is dropped. */
  private VanLimits clipped(List<WallSpan> allowed) {
    List<WallSpan> left = new ArrayList<>();
    for (WallSpan span : spans) {
      for (WallSpan other : allowed) {
        int from = Math.max(span.fromSeconds(), other.fromSeconds());
        int to = Math.min(span.toSeconds(), other.toSeconds());
        if (from < to) {
          left.add(new WallSpan(from, to));
        }
      }
    }
    return new VanLimits(left);
  }
}
