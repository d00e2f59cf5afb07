package dev.dogleg.address;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.Predicate;

/**
 * Types an address as people do: the list of variations is the one of the issue, written here with
 * words of its own, not derived from the folding table.
 */
final class TypedVariations {
  /** Written in full, and the short forms people use. Common practice of each language. */
  private static final String[][] SHORT = {
    {"Street", "St", "St.", "Str"},
    {"Avenue", "Ave", "Av.", "Ave."},
    {"Road", "Rd", "Rd."},
    {"Boulevard", "Blvd", "Bd"},
    {"Drive", "Dr"},
    {"Lane", "Ln"},
    {"Place", "Pl"},
    {"Court", "Ct"},
    {"Turnpike", "Tpke"},
    {"Parkway", "Pkwy"},
    {"Terrace", "Ter"},
    {"Expressway", "Expy"},
    {"Straße", "Str.", "Strasse", "Str"},
    {"Strasse", "Str.", "Str"},
    {"Platz", "Pl."},
    {"Avinguda", "Av.", "Avda."},
    {"Carrer", "C/", "C."},
    {"Passeig", "Pg.", "Pg"},
    {"Plaça", "Pl.", "Plaza"},
    {"Carretera", "Ctra.", "Ctra"},
    {"Chemin", "Ch."},
    {"Impasse", "Imp."},
    {"Square", "Sq."},
    {"Allée", "All."},
    {"North", "N", "N."},
    {"South", "S"},
    {"East", "E"},
    {"West", "W"},
    {"Saint", "St", "St."},
    {"Sainte", "Ste"},
    {"Sant", "St."},
    {"Doctor", "Dr."},
    {"Général", "Gal"},
  };

  private static final String[] ONES = {
    "",
    "First",
    "Second",
    "Third",
    "Fourth",
    "Fifth",
    "Sixth",
    "Seventh",
    "Eighth",
    "Ninth",
    "Tenth",
    "Eleventh",
    "Twelfth",
    "Thirteenth",
    "Fourteenth",
    "Fifteenth",
    "Sixteenth",
    "Seventeenth",
    "Eighteenth",
    "Nineteenth"
  };
  private static final String[] TENTHS = {
    "",
    "",
    "Twentieth",
    "Thirtieth",
    "Fortieth",
    "Fiftieth",
    "Sixtieth",
    "Seventieth",
    "Eightieth",
    "Ninetieth"
  };
  private static final String[] TENS = {
    "", "", "Twenty", "Thirty", "Forty", "Fifty", "Sixty", "Seventy", "Eighty", "Ninety"
  };

  /** Kinds of variation, in the order they are applied. */
  enum Kind {
    ABBREVIATION,
    ORDINAL,
    NUMBER_FORM,
    TYPING_ERROR,
    DIACRITICS,
    WRONG_POSTCODE,
    MISSING_POSTCODE,
    MISSING_TOWN,
    ORDER,
    UNIT,
    POSTAL_LINE,
    PUNCTUATION,
    CASE
  }

  /** A typed text and how it came about. */
  record Typed(String text, List<Kind> kinds) {}

  private final Country country;
  private final Predicate<String> otherStreet;
  private final SplittableRandom random;

  TypedVariations(Country country, Predicate<String> isStreetOfMap, long seed) {
    this.country = country;
    this.otherStreet = isStreetOfMap;
    this.random = new SplittableRandom(seed);
  }

  Typed type(OwnAddresses.Own own) {
    int wanted = 1 + random.nextInt(3);
    List<Kind> chosen = new ArrayList<>();
    for (int tries = 0; tries < 40 && chosen.size() < wanted; tries++) {
      Kind kind = Kind.values()[random.nextInt(Kind.values().length)];
      if (!chosen.contains(kind) && applies(kind, own)) {
        chosen.add(kind);
      }
    }
    return apply(own, chosen);
  }

  private boolean applies(Kind kind, OwnAddresses.Own own) {
    return switch (kind) {
      case ABBREVIATION -> !shortened(own.street()).equals(own.street());
      case ORDINAL -> own.street().matches(".*\\b\\d{1,3}(st|nd|rd|th)\\b.*");
      case NUMBER_FORM -> !own.number().matches("\\d+");
      case TYPING_ERROR -> letters(own.street()) >= 6;
      case DIACRITICS -> !own.street().matches("\\p{ASCII}*");
      case WRONG_POSTCODE, MISSING_POSTCODE -> !own.postcode().isEmpty();
      case MISSING_TOWN -> !own.city().isEmpty();
      default -> true;
    };
  }

  private Typed apply(OwnAddresses.Own own, List<Kind> kinds) {
    String street = own.street();
    String number = own.number();
    String postcode = own.postcode();
    String city = own.city();
    boolean numberFirst = country.numberFirst;
    if (kinds.contains(Kind.TYPING_ERROR)) {
      street = mistyped(street);
    }
    if (kinds.contains(Kind.ABBREVIATION)) {
      street = shortened(street);
    }
    if (kinds.contains(Kind.ORDINAL)) {
      street = ordinal(street);
    }
    if (kinds.contains(Kind.NUMBER_FORM)) {
      number = otherForm(number);
    }
    if (kinds.contains(Kind.DIACRITICS)) {
      street = withoutMarks(street);
      city = withoutMarks(city);
    }
    if (kinds.contains(Kind.MISSING_POSTCODE)) {
      postcode = "";
    } else if (kinds.contains(Kind.WRONG_POSTCODE)) {
      postcode = wrong(postcode);
    }
    if (kinds.contains(Kind.MISSING_TOWN)) {
      city = "";
    }
    if (kinds.contains(Kind.ORDER)) {
      numberFirst = !numberFirst;
    }
    String door = numberFirst ? number + " " + street : street + " " + number;
    if (kinds.contains(Kind.UNIT)) {
      door = withUnit(door);
    }
    String town =
        country == Country.US ? (city + " " + postcode).strip() : (postcode + " " + city).strip();
    String line = town.isEmpty() ? door : door + ", " + town;
    if (kinds.contains(Kind.POSTAL_LINE)) {
      line = (random.nextBoolean() ? "Fam. Quillfeather, " : "") + line + ", " + country.name;
    }
    if (kinds.contains(Kind.PUNCTUATION)) {
      line = otherPunctuation(line, street);
    }
    if (kinds.contains(Kind.CASE)) {
      line = random.nextBoolean() ? line.toLowerCase(Locale.ROOT) : line.toUpperCase(Locale.ROOT);
    }
    return new Typed(line, kinds);
  }

  private String shortened(String street) {
    for (String[] row : SHORT) {
      String form = row[1 + random.nextInt(row.length - 1)];
      if (street.matches(".*(^| |-)" + row[0] + "( |$).*")) {
        return street.replaceFirst("(^| |-)" + row[0] + "( |$)", "$1" + form + "$2");
      }
      String tail = row[0].toLowerCase(Locale.ROOT);
      if (row[0].startsWith("Stra") && street.endsWith(tail)) {
        return street.substring(0, street.length() - tail.length()) + form.toLowerCase(Locale.ROOT);
      }
      for (int i = 1; i < row.length; i++) {
        // And the other way: the map has the short form, people type the long one.
        if (street.matches(".*(^| )" + java.util.regex.Pattern.quote(row[i]) + "( .*)")) {
          return street.replaceFirst(
              "(^| )" + java.util.regex.Pattern.quote(row[i]) + " ", "$1" + row[0] + " ");
        }
      }
    }
    return street;
  }

  private String ordinal(String street) {
    java.util.regex.Matcher found =
        java.util.regex.Pattern.compile("\\b(\\d{1,3})(st|nd|rd|th)\\b").matcher(street);
    if (!found.find()) {
      return street;
    }
    int n = Integer.parseInt(found.group(1));
    String word = found.group(1);
    if (n < 100 && n > 0 && random.nextBoolean()) {
      word = n < 20 ? ONES[n] : n % 10 == 0 ? TENTHS[n / 10] : TENS[n / 10] + "-" + ONES[n % 10];
    }
    return street.substring(0, found.start()) + word + street.substring(found.end());
  }

  private String otherForm(String number) {
    if (number.matches("\\d+-\\d+.*")) {
      String[] dashes = {"–", " - ", "- "};
      return number.replaceFirst("-", dashes[random.nextInt(dashes.length)]);
    }
    if (number.matches("\\d+ ?[A-Za-z]+")) {
      String digits = number.replaceFirst(" ?[A-Za-z]+$", "");
      String letters = number.substring(number.length() - (number.length() - digits.length()));
      letters = letters.strip();
      return random.nextBoolean()
          ? digits + " " + letters
          : digits
              + (random.nextBoolean()
                  ? letters.toUpperCase(Locale.ROOT)
                  : letters.toLowerCase(Locale.ROOT));
    }
    return "No. " + number;
  }

  private static int letters(String text) {
    return (int) text.chars().filter(Character::isLetter).count();
  }

  /** One wrong letter, two in long names, in words of at least four letters. */
  private String mistyped(String street) {
    for (int tries = 0; tries < 50; tries++) {
      String typed = slip(street);
      if (letters(street) >= 12 && random.nextInt(3) == 0) {
        typed = slip(typed);
      }
      if (!typed.equals(street) && !otherStreet.test(typed)) {
        return typed;
      }
    }
    return street;
  }

  private String slip(String street) {
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < street.length(); i++) {
      if (Character.isLetter(street.charAt(i)) && wordLength(street, i) >= 4) {
        places.add(i);
      }
    }
    if (places.isEmpty()) {
      return street;
    }
    int at = places.get(random.nextInt(places.size()));
    char letter = (char) ('a' + random.nextInt(26));
    return switch (random.nextInt(4)) {
      case 0 -> street.substring(0, at) + street.substring(at + 1);
      case 1 -> street.substring(0, at) + letter + street.substring(at);
      case 2 -> street.substring(0, at) + letter + street.substring(at + 1);
      default -> {
        if (at + 1 < street.length() && Character.isLetter(street.charAt(at + 1))) {
          yield street.substring(0, at)
              + street.charAt(at + 1)
              + street.charAt(at)
              + street.substring(at + 2);
        }
        yield street.substring(0, at) + street.charAt(at) + street.substring(at);
      }
    };
  }

  private static int wordLength(String text, int at) {
    int from = at;
    int to = at;
    while (from > 0 && Character.isLetterOrDigit(text.charAt(from - 1))) {
      from--;
    }
    while (to < text.length() && Character.isLetterOrDigit(text.charAt(to))) {
      to++;
    }
    boolean digits = text.substring(from, to).chars().anyMatch(Character::isDigit);
    return digits ? 0 : to - from;
  }

  private String withoutMarks(String text) {
    boolean german = country == Country.DE || country == Country.LI;
    String spelled = text.replace("ß", "ss");
    if (german && random.nextBoolean()) {
      spelled =
          spelled
              .replace("ä", "ae")
              .replace("ö", "oe")
              .replace("ü", "ue")
              .replace("Ä", "Ae")
              .replace("Ö", "Oe")
              .replace("Ü", "Ue");
    }
    return Normalizer.normalize(spelled, Normalizer.Form.NFD).replaceAll("\\p{M}+", "");
  }

  /** One digit wrong, or two neighbours swapped. */
  private String wrong(String postcode) {
    List<Integer> digits = new ArrayList<>();
    for (int i = 0; i < postcode.length(); i++) {
      if (Character.isDigit(postcode.charAt(i))) {
        digits.add(i);
      }
    }
    char[] typed = postcode.toCharArray();
    int at = digits.get(random.nextInt(digits.size()));
    if (random.nextBoolean()
        && at + 1 < typed.length
        && Character.isDigit(typed[at + 1])
        && typed[at] != typed[at + 1]) {
      char first = typed[at];
      typed[at] = typed[at + 1];
      typed[at + 1] = first;
    } else {
      typed[at] = (char) ('0' + (typed[at] - '0' + 1 + random.nextInt(9)) % 10);
    }
    return new String(typed);
  }

  private String withUnit(String door) {
    String[] after =
        switch (country) {
          case US -> new String[] {", Apt 4B", " #3", ", Unit 12", " 2nd Floor", ", Suite 5"};
          case DE, LI -> new String[] {", 2. OG", ", Whg. 7", ", 3. Stock", " Hinterhaus", ", EG"};
          case AD -> new String[] {", 2n 1a", ", pis 3", ", esc. B", ", 1r 2a", ", baixos"};
          case MC -> new String[] {", 3e étage", ", bât. B", ", appt 12", ", esc. A"};
        };
    if (country == Country.US && random.nextInt(4) == 0) {
      return "Flat 2, " + door;
    }
    return door + after[random.nextInt(after.length)];
  }

  private String otherPunctuation(String line, String street) {
    return switch (random.nextInt(4)) {
      case 0 -> line.replace(",", "");
      case 1 -> "  " + line.replace(", ", " ,  ") + " .";
      case 2 -> line.replace(", ", "\n");
      default ->
          street.indexOf('-') > 0
              ? line.replace(street, street.replace('-', ' '))
              : line.replace(".", "");
    };
  }
}
