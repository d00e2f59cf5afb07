package dev.dogleg.cli.words;

import dev.dogleg.model.DateSpan;
import dev.dogleg.model.Tag;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads tags: {@code senior; heart; contagious until 2027-03-20}. */
public final class TagGrammar {
  private static final Pattern PARTS = Pattern.compile("[;,]");
  private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0]+");
  private static final Pattern UNTIL =
      Pattern.compile("(?s)(.+?)\\s+(?:until|till|to)\\s+(.+)", Pattern.CASE_INSENSITIVE);

  private TagGrammar() {}

  /**
   * Reads a cell. What is no tag is left out and said; the others stand.
   *
   * @param cell its text
   * @param order how the card writes dates
   * @return tags in their order, each name once; codes {@code bad-tag} and those of {@link
   *     DateGrammar}, all to be looked at
   */
  public static Reading<List<Tag>> read(String cell, DateOrder order) {
    List<Tag> tags = new ArrayList<>();
    List<Remark> remarks = new ArrayList<>();
    for (String part : PARTS.split(cell, -1)) {
      if (!part.isBlank()) {
        one(part.strip(), order, remarks)
            .filter(tag -> tags.stream().noneMatch(other -> other.name().equals(tag.name())))
            .ifPresent(tags::add);
      }
    }
    return new Reading<>(Optional.of(List.copyOf(tags)), remarks);
  }

  private static Optional<Tag> one(String text, DateOrder order, List<Remark> remarks) {
    Matcher until = UNTIL.matcher(text);
    boolean dated = until.matches();
    String name = name(dated ? until.group(1) : text);
    if (!Tag.isName(name)) {
      remarks.add(
          Remark.look(
              "bad-tag",
              "a tag of letters, digits and hyphens was expected, at most 60 characters",
              "it is left out"));
      return Optional.empty();
    }
    if (!dated) {
      return Optional.of(Tag.of(name));
    }
    Reading<DateSpan> date = DateGrammar.read(until.group(2), order);
    for (Remark remark : date.remarks()) {
      remarks.add(Remark.look(remark.code(), remark.expected(), "the tag is taken as lasting"));
    }
    Optional<LocalDate> last = date.value().map(DateSpan::to);
    return Optional.of(new Tag(name, last));
  }

  /**
   * The name of a tag as it is compared.
   *
   * @param text as written
   * @return lower case, spaces as hyphens
   */
  public static String name(String text) {
    return SPACES.matcher(text.strip().toLowerCase(Locale.ROOT)).replaceAll("-");
  }
}
