package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.Slug;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Makes ids: a person's own id as it is, else one out of the name. Where names give the same id
 * ({@code O'Hara}, {@code O Hara}) each of them gets the mark of its own name, so that neither the
 * order of rows nor a sorted file changes an id.
 */
final class IdRule {
  private static final Pattern FORM =
      Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N}._@+-]{0,119}");

  private IdRule() {}

  /** The id a row names, or empty where it names none or a wrong one. */
  static Optional<String> own(Cells cells, Column column) {
    if (!cells.has(column)) {
      return Optional.empty();
    }
    String id = cells.text(column);
    if (FORM.matcher(id).matches()) {
      return Optional.of(id);
    }
    cells.aside(
        "bad-id",
        column,
        "an id was expected: letters, digits and . _ @ + - starting with a letter or digit, at most"
            + " 120 characters",
        "leave it empty and an id is made from the names");
    return Optional.empty();
  }

  static <T> void give(
      Collection<T> things,
      Function<T, String> name,
      Function<T, Optional<String>> ownId,
      String prefix,
      BiConsumer<T, String> give,
      Set<String> taken) {
    Map<String, Map<String, T>> made = new LinkedHashMap<>();
    for (T thing : things) {
      Optional<String> own = ownId.apply(thing);
      if (own.isPresent()) {
        taken.add(own.get());
        give.accept(thing, own.get());
      } else {
        made.computeIfAbsent(Slug.of(name.apply(thing)), key -> new TreeMap<>())
            .put(Slug.fold(name.apply(thing)), thing);
      }
    }
    made.forEach(
        (slug, sharing) ->
            sharing.forEach(
                (folded, thing) -> {
                  boolean alone = sharing.size() == 1 && !taken.contains(prefix + slug);
                  String id = prefix + (alone ? slug : slug + "-" + Slug.mark(folded));
                  for (int again = 2; !taken.add(id); again++) {
                    id = prefix + slug + "-" + Slug.mark(folded + again);
                  }
                  give.accept(thing, id);
                }));
  }
}
