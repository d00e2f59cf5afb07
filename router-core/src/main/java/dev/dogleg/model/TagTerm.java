package dev.dogleg.model;

import java.util.Collection;
import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;

/**
 * Tags that hold at once.
 *
 * @param all tags that must be there; one that ends in {@code *} stands for every tag that begins
 *     so
 * @param none tags that must not be there
 * @param points load points of a pet that matches, 1..1,000
 */
public record TagTerm(Set<String> all, Set<String> none, int points) {
  /** Copies in the order of the alphabet. */
  public TagTerm {
    all = Collections.unmodifiableSet(new TreeSet<>(all));
    none = Collections.unmodifiableSet(new TreeSet<>(none));
    if (points < 1 || points > 1_000) {
      throw new IllegalArgumentException("points must lie in 1..1000, was " + points);
    }
  }

  /**
   * Whether some tags match.
   *
   * @param tags names of tags
   * @return true where all of the one and none of the other are among them
   */
  public boolean matches(Collection<String> tags) {
    return all.stream().allMatch(tag -> holds(tag, tags))
        && none.stream().noneMatch(tag -> holds(tag, tags));
  }

  private static boolean holds(String tag, Collection<String> tags) {
    return tag.endsWith("*")
        ? tags.stream().anyMatch(one -> one.startsWith(tag.substring(0, tag.length() - 1)))
        : tags.contains(tag);
  }

  /** {@return as it is written, for example {@code large + not cat}} */
  @Override
  public String toString() {
    String text = String.join(" + ", all);
    for (String tag : none) {
      text += (text.isEmpty() ? "" : " + ") + "not " + tag;
    }
    return text + (points > 1 ? " = " + points : "");
  }
}
