package dev.dogleg.model;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Whom a rule means: one of several terms.
 *
 * @param terms at least one
 */
public record TagMatch(List<TagTerm> terms) {
  /** Everybody, every day. */
  public static final TagMatch ANY = new TagMatch(List.of(new TagTerm(Set.of(), Set.of(), 1)));

  /** Checks and copies. */
  public TagMatch {
    terms = List.copyOf(terms);
    if (terms.isEmpty()) {
      throw new IllegalArgumentException("at least one term");
    }
  }

  /**
   * Those with a tag.
   *
   * @param tag name of the tag
   * @return the match
   */
  public static TagMatch of(String tag) {
    return new TagMatch(List.of(new TagTerm(Set.of(tag), Set.of(), 1)));
  }

  /**
   * Whether some tags match.
   *
   * @param tags names of tags
   * @return true where one of the terms does
   */
  public boolean matches(Collection<String> tags) {
    return terms.stream().anyMatch(term -> term.matches(tags));
  }

  /**
   * Load points.
   *
   * @param tags names of a pet's tags
   * @return the most of the terms that match; 0 where none does
   */
  public int points(Collection<String> tags) {
    return terms.stream()
        .filter(term -> term.matches(tags))
        .mapToInt(TagTerm::points)
        .max()
        .orElse(0);
  }

  /** {@return every tag it names, in the order of the alphabet} */
  public Set<String> names() {
    Set<String> names = new TreeSet<>();
    terms.forEach(
        term -> {
          names.addAll(term.all());
          names.addAll(term.none());
        });
    return names;
  }

  /** {@return as it is written} */
  @Override
  public String toString() {
    return equals(ANY)
        ? "any"
        : terms.stream().map(TagTerm::toString).collect(Collectors.joining("; "));
  }
}
