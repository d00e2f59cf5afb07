package dev.dogleg.address;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Keys under which a street is found: its words in full and plain spelling, glued together.
 *
 * <p>An abbreviation may mean several words ({@code St}: street, saint), a marked letter has two
 * plain spellings ({@code ü}: u, ue), so a name has several keys; map and query share a key where
 * they may mean the same. Words are glued because people part and join them at will ({@code
 * Benderer Strasse}, {@code Bendererstrasse}).
 */
final class StreetKeys {
  private static final int MOST_KEYS = 32;

  private final FoldingTable table;
  private final Map<String, String> secondLetters = new HashMap<>();
  private final Set<String> suffixes;

  StreetKeys(FoldingTable table) {
    this.table = table;
    this.suffixes = table.words("suffix");
    for (FoldingTable.Row row : table.rows()) {
      if (row.group().equals("letter")) {
        secondLetters.put(row.typed(), row.means());
      }
    }
  }

  /** Keys with every word. */
  Set<String> strict(List<Token> words) {
    return keys(words, false);
  }

  /** Keys without the small words that people leave out (de la, the, and). */
  Set<String> loose(List<Token> words) {
    return keys(words, true);
  }

  /**
   * Keys in which typing errors are sought: abbreviations in full, and the words as spelled, unless
   * one of them is so short that an error in it would be another word (N, S).
   */
  Set<String> spelled(List<Token> words) {
    Set<String> found = new LinkedHashSet<>();
    boolean shortWord = false;
    List<Token> full = new ArrayList<>();
    for (Token word : words) {
      boolean abbreviated = word.plain().length() < 3 && !meanings(word.plain()).isEmpty();
      shortWord |= abbreviated;
      String means = abbreviated ? meanings(word.plain()).iterator().next() : word.plain();
      full.add(new Token(means, means, word.chunk(), word.joint(), word.aside()));
    }
    found.addAll(loose(shortWord ? full : words));
    if (!shortWord) {
      found.add(Token.glued(words, 0, words.size()));
    }
    return found;
  }

  /** For each word that is a known kind or direction of street, the forms a key may have it in. */
  List<Set<String>> fixedWords(List<Token> words) {
    List<Set<String>> fixed = new ArrayList<>();
    for (Token word : words) {
      if (isType(word) || isDirection(word)) {
        Set<String> forms = new LinkedHashSet<>(meanings(word.plain()));
        if (word.plain().length() > 2) {
          forms.add(word.plain());
        }
        fixed.add(forms);
      }
    }
    return fixed;
  }

  private Set<String> meanings(String plain) {
    Set<String> found = new LinkedHashSet<>();
    for (String group : List.of("type", "direction", "title", "ordinal")) {
      found.addAll(table.meanings(group, plain));
    }
    return found;
  }

  /** Keys without words for the kind of street; empty where nothing telling is left. */
  Set<String> core(List<Token> words) {
    List<Token> left = new ArrayList<>();
    for (Token word : words) {
      if (!isType(word)) {
        left.add(word);
      }
    }
    boolean telling = left.stream().anyMatch(w -> w.plain().length() > 2 && !w.startsWithDigit());
    return left.size() == words.size() || !telling ? Set.of() : keys(left, true);
  }

  /** Whether a word says what kind of street it is, in full or abbreviated. */
  boolean isType(Token word) {
    return table.knows("type", word.plain());
  }

  boolean isDirection(Token word) {
    return table.knows("direction", word.plain());
  }

  private Set<String> keys(List<Token> words, boolean dropSmall) {
    List<String> keys = List.of("");
    for (int i = 0; i < words.size(); i++) {
      Token word = words.get(i);
      if (dropSmall && words.size() > 1 && table.lists("small", word.plain())) {
        continue;
      }
      Set<String> readings;
      if (i + 1 < words.size() && isOrdinalOfTens(word, words.get(i + 1))) {
        int tens = Integer.parseInt(table.meanings("tens", word.plain()).get(0));
        int ones = Integer.parseInt(table.meanings("ordinal", words.get(i + 1).plain()).get(0));
        readings = Set.of(Integer.toString(tens + ones));
        i++;
      } else {
        readings = readings(word);
      }
      List<String> longer = new ArrayList<>();
      for (String key : keys) {
        for (String reading : readings) {
          if (longer.size() < MOST_KEYS) {
            longer.add(key + reading);
          }
        }
      }
      keys = longer;
    }
    Set<String> unique = new LinkedHashSet<>(keys);
    unique.remove("");
    return unique;
  }

  private boolean isOrdinalOfTens(Token word, Token next) {
    if (!table.lists("tens", word.plain())) {
      return false;
    }
    List<String> ones = table.meanings("ordinal", next.plain());
    return ones.size() == 1 && ones.get(0).length() == 1;
  }

  private Set<String> readings(Token word) {
    Set<String> readings = new LinkedHashSet<>();
    String plain = word.plain();
    if (word.startsWithDigit()) {
      readings.add(withoutEnding(plain));
      return readings;
    }
    readings.addAll(meanings(plain));
    if (readings.isEmpty() || plain.length() < 3) {
      readings.add(plain);
    }
    for (String suffix : suffixes) {
      if (plain.endsWith(suffix) && plain.length() >= suffix.length() + 2) {
        String stem = plain.substring(0, plain.length() - suffix.length());
        table.meanings("suffix", suffix).forEach(means -> readings.add(stem + means));
      }
    }
    String second = secondSpelling(word.raw());
    if (!second.equals(plain)) {
      readings.add(second);
    }
    return readings;
  }

  private String withoutEnding(String plain) {
    int digits = 0;
    while (digits < plain.length() && Character.isDigit(plain.charAt(digits))) {
      digits++;
    }
    String ending = plain.substring(digits);
    if (!ending.isEmpty() && table.lists("ending", ending)) {
      return plain.substring(0, digits);
    }
    return plain;
  }

  private String secondSpelling(String raw) {
    StringBuilder text = new StringBuilder(raw.length() + 2);
    for (int i = 0; i < raw.length(); i++) {
      String letter = raw.substring(i, i + 1);
      text.append(secondLetters.getOrDefault(letter, letter));
    }
    return Letters.plain(text.toString());
  }
}
