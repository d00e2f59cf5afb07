package dev.dogleg.cli.words;

import java.util.List;
import java.util.Optional;

/** A place in a list of tokens. */
final class TokenStream {
  private final List<String> tokens;
  private int at;

  TokenStream(List<String> tokens) {
    this.tokens = tokens;
  }

  boolean ended() {
    return at >= tokens.size();
  }

  /** The token ahead, or an empty text at the end. */
  String peek() {
    return peek(0);
  }

  String peek(int further) {
    return at + further < tokens.size() ? tokens.get(at + further) : "";
  }

  String next() {
    return tokens.get(at++);
  }

  /** Takes the words ahead where they are exactly these. */
  boolean take(String... words) {
    for (int i = 0; i < words.length; i++) {
      if (!peek(i).equals(words[i])) {
        return false;
      }
    }
    at += words.length;
    return true;
  }

  /** Takes one word where it is any of these. */
  boolean takeAny(String... words) {
    for (String word : words) {
      if (take(word)) {
        return true;
      }
    }
    return false;
  }

  /** Takes a time where one is ahead. */
  Optional<ClockTime> time() {
    Optional<ClockTime> time = ClockTime.of(peek());
    if (time.isPresent()) {
      at++;
    }
    return time;
  }
}
