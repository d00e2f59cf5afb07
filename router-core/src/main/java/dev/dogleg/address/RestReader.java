package dev.dogleg.address;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Explains the words of a typed address that are neither its street nor its number. */
final class RestReader {
  private static final int LONGEST_NAME = 6;
  private static final int SHORTEST_POSTCODE = 4;
  private static final Pattern DIGIT = Pattern.compile("\\d");
  private static final Pattern DIGITS = Pattern.compile("\\d+");
  private static final Pattern FLAT = Pattern.compile("\\d{1,3}[a-z]{0,3}");
  private static final Pattern POSTCODE = Pattern.compile("\\d{4,6}|[a-z]{2}\\d{3,5}");
  private static final Pattern OUTWARD = Pattern.compile("[a-z]{1,2}\\d[a-z\\d]?");

  private final List<Token> words;
  private final FoldingTable table;
  private final StreetKeys keys;
  private final IndexView index;
  private final Set<String> countries;
  private final int streetFrom;
  private final int streetTo;
  private final int numberFrom;
  private final int numberTo;
  private final boolean[] used;
  private final Set<String> postcodes = new LinkedHashSet<>();
  private final Set<String> knownTowns = new LinkedHashSet<>();
  private final Set<String> otherTowns = new LinkedHashSet<>();
  private boolean postcodeKnown;
  private boolean streetLonger;
  private boolean beside;
  private boolean abroad;
  private boolean besideStreet;
  private int unexplained;

  RestReader(
      List<Token> words,
      FoldingTable table,
      StreetKeys keys,
      IndexView index,
      Set<String> countries,
      StreetSpan street,
      NumberSpan number) {
    this.words = words;
    this.table = table;
    this.keys = keys;
    this.index = index;
    this.countries = countries;
    this.streetFrom = street.from();
    this.streetTo = street.to();
    this.numberFrom = number == null ? street.from() : number.from();
    this.numberTo = number == null ? street.from() : number.to();
    this.used = new boolean[words.size()];
  }

  /** Reads the words, then the postcode and town known from elsewhere. */
  Rest read(AddressQuery query) throws IOException {
    use(streetFrom, streetTo);
    use(numberFrom, numberTo);
    readNotes();
    readPostcodes();
    readTownsWithNumbers();
    readUnits();
    readNames();
    addHints(query);
    List<String> towns = new ArrayList<>(knownTowns.isEmpty() ? otherTowns : knownTowns);
    Locality locality =
        new Locality(List.copyOf(postcodes), towns, !knownTowns.isEmpty(), postcodeKnown);
    return new Rest(locality, streetLonger, beside, abroad, besideStreet, unexplained);
  }

  private void use(int from, int to) {
    for (int i = from; i < to; i++) {
      used[i] = true;
    }
  }

  private boolean free(int i) {
    return i >= 0 && i < words.size() && !used[i];
  }

  private boolean inStreetChunk(int i) {
    return words.get(i).chunk() == words.get(streetFrom).chunk();
  }

  /**
   * "Opposite 12 Mill Lane" is no address; "12 Mill Lane, behind the church" is one with a note.
   */
  private void readNotes() {
    int first = Math.min(streetFrom, numberTo > numberFrom ? numberFrom : streetFrom);
    for (int i = 0; i < words.size(); i++) {
      if (!used[i] && table.lists("beside", words.get(i).plain())) {
        if (i < first && words.get(i).chunk() == words.get(first).chunk()) {
          beside = true;
          used[i] = true;
        } else {
          int chunk = words.get(i).chunk();
          for (int j = i; j < words.size() && words.get(j).chunk() == chunk && !used[j]; j++) {
            used[j] = true;
          }
        }
      } else if (!used[i] && table.lists("person", words.get(i).plain())) {
        for (int j = i; j < words.size() && free(j) && sameChunk(i, j); j++) {
          used[j] = true;
        }
      } else if (!used[i] && table.lists("noise", words.get(i).plain())) {
        used[i] = true;
      }
    }
    int before = numberFrom - 1;
    if (free(before) && isNumberWord(table, words, before)) {
      used[before] = true;
    }
  }

  /** A word that only announces the number; a lone N does so with a sign after it (n° 12). */
  static boolean isNumberWord(FoldingTable table, List<Token> words, int at) {
    String plain = words.get(at).plain();
    return table.lists("number", plain) && (plain.length() > 1 || words.get(at + 1).joint() == '.');
  }

  private void readPostcodes() throws IOException {
    for (int i = 0; i < words.size(); i++) {
      for (int length = 2; length >= 1; length--) {
        if (!free(i) || !free(i + length - 1)) {
          continue;
        }
        String code = Token.glued(words, i, i + length);
        boolean known = index.has(Fields.POSTCODE, Set.of(code));
        if (known || looksLikePostcode(i, length, code)) {
          postcodes.add(code);
          postcodeKnown |= known;
          use(i, i + length);
          readBesidePostcode(i, i + length);
        }
      }
    }
  }

  private boolean looksLikePostcode(int i, int length, String code) {
    if (length == 2) {
      return OUTWARD.matcher(words.get(i).plain()).matches()
          && words.get(i + 1).plain().matches("\\d[a-z]{2}");
    }
    return code.length() >= SHORTEST_POSTCODE && POSTCODE.matcher(code).matches();
  }

  /** The country's letters before a postcode (D-69120), the four digits after one (11428-1234). */
  private void readBesidePostcode(int from, int to) {
    if (free(from - 1)
        && words.get(from).joint() == '-'
        && words.get(from - 1).plain().matches("[a-z]{1,3}")) {
      used[from - 1] = true;
    }
    if (free(to) && words.get(to).joint() == '-' && words.get(to).plain().matches("\\d{4}")) {
      used[to] = true;
    }
  }

  /** Towns whose name holds a number, before what looks like a flat is set aside. */
  private void readTownsWithNumbers() throws IOException {
    for (int i = 0; i < words.size(); i++) {
      for (int length = 2; length <= LONGEST_NAME && free(i); length++) {
        int last = i + length - 1;
        boolean whole = free(last) && sameChunk(i, last);
        String name = whole ? Token.glued(words, i, i + length) : "";
        boolean mixed = DIGIT.matcher(name).find() && !DIGITS.matcher(name).matches();
        if (mixed && index.has(Fields.AREA, Set.of(name))) {
          knownTowns.add(name);
          use(i, i + length);
        }
      }
    }
  }

  private void readUnits() {
    for (int i = 0; i < words.size(); i++) {
      if (used[i]) {
        continue;
      }
      Token word = words.get(i);
      if (word.joint() == '#') {
        used[i] = true;
      } else if (table.lists("unit", word.plain())
          && !(inStreetChunk(i) && i < streetFrom && i + 1 == streetFrom)) {
        used[i] = true;
        if (free(i + 1) && isUnitNumber(words.get(i + 1)) && sameChunk(i, i + 1)) {
          used[i + 1] = true;
        }
        if (free(i - 1) && isUnitNumber(words.get(i - 1)) && sameChunk(i, i - 1)) {
          used[i - 1] = true;
        }
      }
    }
    for (int i = 0; i < words.size(); i++) {
      // What is left of short numbers is a floor or a door: 2n 1a, 3/7.
      if (!used[i] && FLAT.matcher(words.get(i).plain()).matches()) {
        used[i] = true;
        unexplained++;
      }
    }
  }

  private boolean sameChunk(int a, int b) {
    return words.get(a).chunk() == words.get(b).chunk();
  }

  private static boolean isUnitNumber(Token word) {
    return word.plain().matches("[a-z]?\\d{1,4}[a-z]{0,3}|[a-z]");
  }

  private void readNames() throws IOException {
    for (int i = 0; i < words.size(); i++) {
      if (used[i]) {
        continue;
      }
      int length = readName(i);
      if (length > 0) {
        use(i, i + length);
        continue;
      }
      Token word = words.get(i);
      used[i] = true;
      if (word.aside()) {
        continue;
      }
      if (table.lists("small", word.plain()) && !joinsStreet(i)) {
        continue;
      }
      unexplained++;
      besideStreet |= inStreetChunk(i) && (i == streetTo || i < streetFrom);
      if (joinsStreet(i)) {
        streetLonger = true;
      } else if (i > streetFrom) {
        readUnknownTown(i);
      }
    }
  }

  /** Length of the longest known name that begins at a word; 0 where none does. */
  private int readName(int i) throws IOException {
    int most = 0;
    while (most < LONGEST_NAME && free(i + most) && sameChunk(i, i + most)) {
      most++;
    }
    for (int length = most; length >= 1; length--) {
      String name = Token.glued(words, i, i + length);
      boolean startsDirection = i == streetTo && keys.isDirection(words.get(i)) && length == 1;
      if (!startsDirection && index.has(Fields.AREA, Set.of(name))) {
        knownTowns.add(name);
        return length;
      }
      boolean state = table.lists("state", name) || table.knows("state", spaced(i, i + length));
      boolean stateHere = countries.isEmpty() || countries.contains("us");
      if (index.has(Fields.WIDE_NAME, Set.of(name)) || (state && stateHere && i >= streetTo)) {
        return length;
      }
      boolean alone = length == most && (i == 0 || used[i - 1] || !sameChunk(i, i - 1));
      String country = name.length() > 3 || alone ? Countries.code(name) : "";
      if (!country.isEmpty() && i >= streetTo) {
        abroad |= !countries.isEmpty() && !countries.contains(country);
        return length;
      }
    }
    return 0;
  }

  private String spaced(int from, int to) {
    StringBuilder text = new StringBuilder();
    for (int i = from; i < to; i++) {
      text.append(i == from ? "" : " ").append(words.get(i).plain());
    }
    return text.toString();
  }

  /** Whether a word that nothing explains stands so that it would belong to the street's name. */
  private boolean joinsStreet(int i) {
    if (!inStreetChunk(i)) {
      return false;
    }
    boolean numberFirst = numberTo > numberFrom && numberFrom < streetFrom;
    if (i < streetFrom) {
      return !numberFirst || i >= numberTo;
    }
    boolean justAfter = i == streetTo;
    return justAfter && (keys.isDirection(words.get(i)) || keys.isType(words.get(i)));
  }

  private void readUnknownTown(int from) {
    StringBuilder name = new StringBuilder();
    for (int i = from; i < words.size() && sameChunk(from, i) && i < from + LONGEST_NAME; i++) {
      if (i != from && used[i]) {
        break;
      }
      name.append(words.get(i).plain());
      if (name.length() > 2) {
        otherTowns.add(name.toString());
      }
    }
  }

  private void addHints(AddressQuery query) throws IOException {
    if (!query.postcode().isBlank()) {
      String code = Letters.bare(query.postcode());
      postcodes.add(code);
      postcodeKnown |= index.has(Fields.POSTCODE, Set.of(code));
    }
    if (!query.town().isBlank()) {
      String town = Letters.bare(query.town());
      if (index.has(Fields.AREA, Set.of(town))) {
        knownTowns.add(town);
      } else if (!index.has(Fields.WIDE_NAME, Set.of(town))) {
        otherTowns.add(town);
      }
    }
  }
}
