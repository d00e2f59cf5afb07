package dev.dogleg.address;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** All keys under which the names of one street are indexed. */
final class NameKeys {
  private final Set<String> strict = new LinkedHashSet<>();
  private final Set<String> loose = new LinkedHashSet<>();
  private final Set<String> core = new LinkedHashSet<>();
  private final Set<String> spelled = new LinkedHashSet<>();

  NameKeys(StreetKeys keys, Set<String> names) {
    for (String name : names) {
      List<Token> words = Token.words(name);
      strict.addAll(keys.strict(words));
      loose.addAll(keys.loose(words));
      core.addAll(keys.core(words));
      spelled.add(Token.glued(words, 0, words.size()));
    }
    spelled.addAll(loose);
    spelled.remove("");
  }

  Set<String> strict() {
    return strict;
  }

  Set<String> loose() {
    return loose;
  }

  Set<String> core() {
    return core;
  }

  /** What typing errors are sought in: the loose keys, and the words as they are spelled. */
  Set<String> spelled() {
    return spelled;
  }
}
