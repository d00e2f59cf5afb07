package dev.dogleg.address;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * Reads a typed address in every way its words allow and asks the index which reading is true.
 *
 * <p>Maintainers: no grammar of any country is built in. A street is a run of words whose key the
 * index knows; a number is a run of words of a number's form; what is left over must be explained
 * by {@link RestReader}. Only where no run of words is a street as typed are typing errors assumed,
 * and then every street within reach is a candidate.
 */
final class Finder {
  private static final int MOST_WORDS = 40;
  private static final int LONGEST_STREET = 9;
  private static final int MOST_NUMBERS = 4;
  private static final int MOST_READINGS = 24;
  private static final int SHORTEST_POSTCODE = 4;
  private static final int LETTERS_FOR_ONE_ERROR = 4;
  private static final int LETTERS_FOR_TWO_ERRORS = 8;
  private static final Pattern LONG_NUMBER = Pattern.compile("\\d{5,}|[a-z]\\d{3,}");
  private static final Pattern FOUR_DIGITS = Pattern.compile("\\d{4}");
  private static final Pattern DIGITS = Pattern.compile("\\d+");

  private final IndexView index;
  private final FoldingTable table;
  private final StreetKeys keys;
  private final Set<String> countries;
  private final StreetAnswers answers;

  Finder(IndexView index, FoldingTable table, Set<String> countries) {
    this.index = index;
    this.table = table;
    this.keys = new StreetKeys(table);
    this.countries = countries;
    this.answers = new StreetAnswers(index);
  }

  /**
   * The best answers, several where streets that differ are equally good; empty where no street.
   */
  List<Answer> find(AddressQuery query) throws IOException {
    List<Token> words = Token.words(query.text());
    if (words.isEmpty() || words.size() > MOST_WORDS) {
      return List.of();
    }
    List<NumberSpan> numbers = NumberSpan.find(words, table);
    List<Answer> typed = answerAll(query, words, numbers, asTyped(words));
    List<Answer> doubtful = new ArrayList<>();
    for (Answer answer : typed) {
      if (isDoubtful(words, answer)) {
        doubtful.add(answer);
      }
    }
    typed.removeAll(doubtful);
    List<Answer> best = best(typed);
    if (!best.isEmpty() && !best.get(0).fitting().isEmpty()) {
      return best;
    }
    List<Answer> misspelt = answerAll(query, words, numbers, misspelt(words, numbers));
    if (!best.isEmpty() && !best.get(0).rest().streetLonger()) {
      // The street exists as typed, elsewhere: another spelling must be confirmed by the town.
      misspelt.removeIf(
          answer -> answer.fitting().stream().noneMatch(c -> c.fit() == Locality.Fit.AGREES));
    }
    List<Answer> corrected = allBest(misspelt);
    List<Answer> second = best(doubtful);
    boolean explainsMore =
        second.isEmpty()
            || second.get(0).fitting().isEmpty()
            || (!corrected.isEmpty()
                && corrected.get(0).rest().unexplained() < second.get(0).rest().unexplained());
    if (!corrected.isEmpty() && explainsMore) {
      return corrected;
    }
    if (!second.isEmpty() && !second.get(0).fitting().isEmpty()) {
      return second;
    }
    if (best.isEmpty()) {
      best = allBest(answerAll(query, words, numbers, withoutType(words)));
    }
    return !best.isEmpty() ? best : !second.isEmpty() ? second : misspelt;
  }

  /** Words that mean nothing stand beside the street, or the street is a town: look further. */
  private boolean isDoubtful(List<Token> words, Answer answer) throws IOException {
    if (answer.rest().unexplained() == 0) {
      return false;
    }
    StreetSpan street = answer.street();
    String name = Token.glued(words, street.from(), street.to());
    return answer.rest().besideStreet() || index.has(Fields.AREA, Set.of(name));
  }

  private List<Answer> answerAll(
      AddressQuery query, List<Token> words, List<NumberSpan> numbers, List<StreetSpan> streets)
      throws IOException {
    List<Answer> found = new ArrayList<>();
    for (StreetSpan street : streets.subList(0, Math.min(MOST_READINGS, streets.size()))) {
      boolean postcodeAmongThem = false;
      List<NumberSpan> near = nearest(words, street, numbers);
      for (NumberSpan number : near) {
        String glued = Token.glued(words, number.from(), number.to());
        boolean postcode =
            glued.length() >= SHORTEST_POSTCODE && index.has(Fields.POSTCODE, Set.of(glued));
        postcodeAmongThem |= postcode;
        Rest rest = rest(query, words, street, number);
        Answer answer = answers.answer(street, number, adjacent(words, street, number), rest);
        if (!postcode || answer.grade() == Grade.EXACT) {
          found.add(answer);
        }
      }
      if (near.isEmpty() || postcodeAmongThem) {
        found.add(answers.answer(street, rest(query, words, street, null)));
      }
    }
    return found;
  }

  private Rest rest(AddressQuery query, List<Token> words, StreetSpan street, NumberSpan number)
      throws IOException {
    return new RestReader(words, table, keys, index, countries, street, number).read(query);
  }

  /** The longest number at each start, nearest to the street first, postcodes left out. */
  private List<NumberSpan> nearest(List<Token> words, StreetSpan street, List<NumberSpan> numbers)
      throws IOException {
    List<NumberSpan> free = new ArrayList<>();
    Set<String> postcodes = new HashSet<>();
    for (NumberSpan number : numbers) {
      boolean inside = free.stream().anyMatch(other -> other.overlaps(number.from(), number.to()));
      if (!number.overlaps(street.from(), street.to()) && !inside) {
        free.add(number);
        String glued = Token.glued(words, number.from(), number.to());
        boolean oneWord = number.to() - number.from() == 1;
        if (oneWord
            && glued.length() >= SHORTEST_POSTCODE
            && index.has(Fields.POSTCODE, Set.of(glued))) {
          postcodes.add(number.key());
        }
      }
    }
    dropIfOthers(free, number -> postcodes.contains(number.key()));
    dropIfOthers(free, number -> LONG_NUMBER.matcher(number.key()).matches());
    int chunk = words.get(street.from()).chunk();
    dropIfOthers(
        free, number -> words.get(number.from()).chunk() > chunk && number.from() >= street.to());
    dropIfOthers(free, number -> FOUR_DIGITS.matcher(number.key()).matches());
    free.sort(
        Comparator.comparingInt((NumberSpan number) -> gap(street, number))
            .thenComparingInt(NumberSpan::from));
    return free.subList(0, Math.min(MOST_NUMBERS, free.size()));
  }

  private static void dropIfOthers(List<NumberSpan> spans, Predicate<NumberSpan> unlikely) {
    if (!spans.stream().allMatch(unlikely)) {
      spans.removeIf(unlikely);
    }
  }

  private static boolean onlyNumbers(List<Token> words, StreetSpan longer, StreetSpan shorter) {
    for (int i = longer.from(); i < longer.to(); i++) {
      boolean shared = i >= shorter.from() && i < shorter.to();
      if (!shared && !words.get(i).plain().matches("\\d{1,5}[a-z]?")) {
        return false;
      }
    }
    return true;
  }

  private static int gap(StreetSpan street, NumberSpan number) {
    return number.to() <= street.from() ? street.from() - number.to() : number.from() - street.to();
  }

  private boolean adjacent(List<Token> words, StreetSpan street, NumberSpan number) {
    int gap = gap(street, number);
    boolean prefix =
        gap == 1 && number.from() > 0 && RestReader.isNumberWord(table, words, number.from() - 1);
    return gap == 0 || prefix;
  }

  /** Runs of words that are streets of the map as they stand, longest first. */
  private List<StreetSpan> asTyped(List<Token> words) throws IOException {
    List<StreetSpan> found = new ArrayList<>();
    for (int from = 0; from < words.size(); from++) {
      int chunk = words.get(from).chunk();
      for (int to = from + 1;
          to <= words.size() && to - from <= LONGEST_STREET && words.get(to - 1).chunk() == chunk;
          to++) {
        List<Token> span = words.subList(from, to);
        if (span.stream().allMatch(word -> DIGITS.matcher(word.plain()).matches())) {
          continue;
        }
        Set<String> strict = keys.strict(span);
        if (index.has(Fields.STRICT, strict)) {
          found.add(new StreetSpan(from, to, Fields.STRICT, strict, 0));
        }
        Set<String> loose = keys.loose(span);
        if (index.has(Fields.LOOSE, loose)) {
          found.add(new StreetSpan(from, to, Fields.LOOSE, loose, 0));
        }
      }
    }
    return longest(words, found);
  }

  /** Drops what is part of a longer street, unless the longer one only adds a number. */
  private static List<StreetSpan> longest(List<Token> words, List<StreetSpan> found) {
    List<StreetSpan> kept = new ArrayList<>(found);
    kept.removeIf(
        span ->
            found.stream()
                .anyMatch(other -> other.contains(span) && !onlyNumbers(words, other, span)));
    kept.sort(Comparator.comparingInt((StreetSpan span) -> span.from() - span.to()));
    return kept;
  }

  /** Runs of words beside a number that are streets but for one or two letters. */
  private List<StreetSpan> misspelt(List<Token> words, List<NumberSpan> numbers)
      throws IOException {
    List<StreetSpan> found = new ArrayList<>();
    Set<String> asked = new HashSet<>();
    Set<Integer> starts = new LinkedHashSet<>(Set.of(0));
    Set<Integer> ends = new LinkedHashSet<>(Set.of(words.size()));
    for (NumberSpan number : numbers) {
      starts.add(number.to());
      ends.add(number.from());
    }
    for (int i = 1; i < words.size(); i++) {
      if (words.get(i).chunk() != words.get(i - 1).chunk()) {
        starts.add(i);
        ends.add(i);
      }
    }
    for (int from = 0; from < words.size(); from++) {
      for (int to = from + 1; to <= Math.min(words.size(), from + LONGEST_STREET); to++) {
        if (words.get(to - 1).chunk() != words.get(from).chunk()) {
          break;
        }
        if ((starts.contains(from) || ends.contains(to)) && leavesANumber(numbers, from, to)) {
          addMisspelt(found, asked, words, from, to);
        }
      }
    }
    return longest(words, found);
  }

  /** Words that swallow every number are no street: the house number is among them. */
  private static boolean leavesANumber(List<NumberSpan> numbers, int from, int to) {
    return numbers.isEmpty()
        || numbers.stream().anyMatch(number -> number.to() <= from || number.from() >= to);
  }

  private void addMisspelt(
      List<StreetSpan> found, Set<String> asked, List<Token> words, int from, int to)
      throws IOException {
    if (index.has(Fields.AREA, Set.of(Token.glued(words, from, to)))) {
      return;
    }
    List<Token> span = words.subList(from, to);
    List<Set<String>> fixed = keys.fixedWords(span);
    for (String key : keys.spelled(span)) {
      long letters = key.chars().filter(Character::isLetter).count();
      int most = letters >= LETTERS_FOR_TWO_ERRORS ? 2 : letters >= LETTERS_FOR_ONE_ERROR ? 1 : 0;
      if (!asked.add(from + " " + to + " " + key)) {
        continue;
      }
      for (Map.Entry<String, Integer> alike : index.alike(key, most, fixed).entrySet()) {
        found.add(
            new StreetSpan(from, to, Fields.SPELLED, Set.of(alike.getKey()), alike.getValue()));
      }
    }
  }

  /** Runs of words that are streets but for a left-out word like Street or Lane. */
  private List<StreetSpan> withoutType(List<Token> words) throws IOException {
    List<StreetSpan> found = new ArrayList<>();
    for (int from = 0; from < words.size(); from++) {
      for (int to = from + 1; to <= Math.min(words.size(), from + LONGEST_STREET); to++) {
        List<Token> span = words.subList(from, to);
        if (span.get(span.size() - 1).chunk() != span.get(0).chunk()) {
          break;
        }
        boolean typed = span.stream().anyMatch(keys::isType);
        boolean telling =
            span.stream().anyMatch(w -> w.plain().length() > 2 && !w.startsWithDigit());
        Set<String> core = keys.loose(span);
        if (!typed && telling && index.has(Fields.CORE, core)) {
          found.add(new StreetSpan(from, to, Fields.CORE, core, 0));
        }
      }
    }
    return longest(words, found);
  }

  /** The one best reading. */
  private static List<Answer> best(List<Answer> found) {
    return found.stream().min(ORDER).map(List::of).orElse(List.of());
  }

  /** Every reading that fits and is as good as the best but for its street. */
  private static List<Answer> allBest(List<Answer> found) {
    List<Answer> fitting = new ArrayList<>(found);
    fitting.removeIf(answer -> answer.fitting().isEmpty());
    if (fitting.isEmpty()) {
      return List.of();
    }
    Answer best = fitting.stream().min(ORDER).orElseThrow();
    fitting.removeIf(
        answer ->
            answer.adjacent() != best.adjacent()
                || (answer.grade().compareTo(Grade.INTERPOLATED) > 0
                    && answer.grade() != best.grade())
                || answer.rest().unexplained() > best.rest().unexplained() + 1);
    fitting.sort(ORDER);
    return fitting;
  }

  private static final Comparator<Answer> ORDER =
      Comparator.comparing((Answer answer) -> !answer.adjacent())
          .thenComparing(answer -> answer.rest().streetLonger())
          .thenComparing(answer -> answer.rest().unexplained())
          .thenComparing(Answer::grade)
          .thenComparing(Answer::fit)
          .thenComparing(answer -> answer.street().errors())
          .thenComparing(answer -> answer.street().from() - answer.street().to())
          .thenComparing(answer -> answer.street().field().equals(Fields.LOOSE))
          .thenComparing(answer -> answer.street().keys().toString());
}
