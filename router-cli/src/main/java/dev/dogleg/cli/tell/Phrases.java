package dev.dogleg.cli.tell;

import dev.dogleg.cli.told.ToldEvent;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.groom.TableRow;
import java.text.Normalizer;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Templates and words of every language: the starter's, with a business's own laid over them. */
public final class Phrases {
  /** Name of the table, in {@code seeds} and in a book folder. */
  public static final String FILE = "text-templates.csv";

  private final Map<String, Language> languages = new TreeMap<>();
  private final Map<String, Set<ToldEvent>> words = new HashMap<>();

  private Phrases() {}

  /**
   * The phrases in force.
   *
   * @param starter rows of the starter table
   * @param own a business's own rows, only those that differ
   * @param faults takes what is wrong with a row ({@code missing-cell}, {@code unknown-phrase},
   *     {@code unknown-field}, {@code bad-template}, {@code template-start}, {@code bad-pattern}:
   *     it is set aside and the starter's holds) and {@code language-not-complete} (to be looked
   *     at: that language is not used)
   * @return the phrases
   */
  public static Phrases of(List<TableRow> starter, List<TableRow> own, Faults faults) {
    Map<String, Map<Phrase, String>> texts = new TreeMap<>();
    Map<String, Where> last = new HashMap<>();
    List<TableRow> rows = new ArrayList<>(starter);
    rows.addAll(own);
    for (TableRow row : rows) {
      List<Fault> wrong = wrong(row);
      if (wrong.isEmpty()) {
        texts
            .computeIfAbsent(tag(row.cell("language")), tag -> new EnumMap<>(Phrase.class))
            .put(Phrase.of(row.cell("what")).orElseThrow(), row.cell("text"));
        last.put(tag(row.cell("language")), row.where());
      }
      wrong.forEach(faults::add);
    }
    Phrases phrases = new Phrases();
    texts.forEach((tag, some) -> phrases.add(tag, some, last.get(tag), faults));
    return phrases;
  }

  private void add(String tag, Map<Phrase, String> texts, Where where, Faults faults) {
    List<String> missing =
        Arrays.stream(Phrase.values())
            .filter(phrase -> !texts.containsKey(phrase))
            .map(Phrase::word)
            .toList();
    texts.forEach(
        (phrase, text) ->
            phrase
                .answer()
                .ifPresent(
                    answer ->
                        Arrays.stream(text.split(";"))
                            .map(Phrases::fold)
                            .filter(word -> !word.isEmpty())
                            .forEach(
                                word ->
                                    words
                                        .computeIfAbsent(word, key -> new LinkedHashSet<>())
                                        .add(answer))));
    if (missing.isEmpty()) {
      languages.put(tag, new Language(tag, texts));
    } else {
      faults.add(
          new Fault(
              "language-not-complete",
              Severity.LOOK,
              where.at("language"),
              tag,
              "rows for " + String.join(", ", missing) + " were expected too",
              "until then this language is not used"));
    }
  }

  private static List<Fault> wrong(TableRow row) {
    for (String column : List.of("language", "what", "text")) {
      if (row.cell(column).isEmpty()) {
        return List.of(fault(row, column, "missing-cell", "a cell with text was expected"));
      }
    }
    Optional<Phrase> phrase = Phrase.of(row.cell("what"));
    if (phrase.isEmpty()) {
      String known =
          Arrays.stream(Phrase.values()).map(Phrase::word).collect(Collectors.joining(", "));
      return List.of(fault(row, "what", "unknown-phrase", "one of " + known + " was expected"));
    }
    String text = row.cell("text");
    if (phrase.get().message()) {
      return MessageTemplate.wrong(text, phrase.get().fields()).stream()
          .map(wrong -> fault(row, "text", wrong.code(), wrong.expected()))
          .toList();
    }
    Locale locale = Locale.forLanguageTag(tag(row.cell("language")));
    boolean sound =
        switch (phrase.get()) {
          case DATE -> formats(text, locale, LocalDate.of(2027, 3, 1));
          case TIME -> formats(text, locale, LocalTime.NOON);
          default -> true;
        };
    return sound
        ? List.of()
        : List.of(
            fault(row, "text", "bad-pattern", "a pattern like EEEE d MMMM or HH:mm was expected"));
  }

  private static boolean formats(String pattern, Locale locale, TemporalAccessor sample) {
    try {
      return !DateTimeFormatter.ofPattern(pattern, locale).format(sample).isBlank();
    } catch (IllegalArgumentException | DateTimeException bad) {
      return false;
    }
  }

  private static Fault fault(TableRow row, String column, String code, String expected) {
    return new Fault(
        code,
        Severity.ASIDE,
        row.where().at(column),
        row.cell(column),
        expected,
        "the starter's text is used");
  }

  private static String tag(String cell) {
    return cell.replace('_', '-').toLowerCase(Locale.ROOT);
  }

  /**
   * Whether texts can be written in a language.
   *
   * @param tag BCP 47
   * @return true for a language that is there, or whose plain form is ({@code en} for {@code
   *     en-GB})
   */
  public boolean knows(String tag) {
    return languages.containsKey(tag(tag)) || languages.containsKey(plain(tag));
  }

  private static String plain(String tag) {
    return tag(tag).replaceFirst("-.*", "");
  }

  /** The language of a tag that is known. */
  Language language(String tag) {
    Language exact = languages.get(tag(tag));
    return exact != null ? exact : languages.get(plain(tag));
  }

  /** {@return tags of the languages, in the alphabet's order} */
  public List<String> tags() {
    return List.copyOf(languages.keySet());
  }

  /**
   * What an owner's reply means. Words of every language count; a stop word goes before all others.
   *
   * @param reply as the owner wrote it
   * @return stopped, resumed, confirmed, refused or no answer; empty where it is none of the words
   */
  public Optional<ToldEvent> answer(String reply) {
    Set<ToldEvent> meant = words.getOrDefault(fold(reply), Set.of());
    return meant.contains(ToldEvent.STOPPED)
        ? Optional.of(ToldEvent.STOPPED)
        : meant.stream().findFirst();
  }

  /**
   * A stop word inside a longer reply: a person decides what was meant.
   *
   * @param reply as the owner wrote it
   * @return the word, or empty
   */
  public Optional<String> stopWordIn(String reply) {
    String folded = " " + fold(reply) + " ";
    return words.entrySet().stream()
        .filter(entry -> entry.getValue().contains(ToldEvent.STOPPED))
        .map(Map.Entry::getKey)
        .filter(word -> folded.contains(" " + word + " "))
        .min(String::compareTo);
  }

  /** Case, accents, punctuation and blanks do not matter in a reply. */
  private static String fold(String reply) {
    return Normalizer.normalize(reply, Normalizer.Form.NFD)
        .toLowerCase(Locale.ROOT)
        .replaceAll("\\p{M}+", "")
        .replaceAll("[^\\p{L}\\p{N}]+", " ")
        .strip();
  }
}
