package dev.dogleg.groom;

import dev.dogleg.model.SizeClass;
import java.util.List;

/** Guesses of a size from a word or from nothing. */
public final class Sizes {
  private Sizes() {}

  /**
   * A size somebody named in a word instead of weighing: the next smaller and the next bigger class
   * are possible too.
   *
   * @param named the class named
   * @return the guess
   */
  public static Likely<SizeClass> named(SizeClass named) {
    List<SizeClass> all = List.of(SizeClass.values());
    int at = all.indexOf(named);
    return Likely.guess(named, all.subList(Math.max(0, at - 1), Math.min(all.size(), at + 2)));
  }

  /**
   * A weighed pet.
   *
   * @param grams weight in grams, 0 or more
   * @return its class, without doubt
   */
  public static Likely<SizeClass> weighed(int grams) {
    return Likely.sure(SizeClass.ofGrams(grams));
  }

  /**
   * A named size narrowed by what the breed can be: both say something.
   *
   * @param named guess from a word
   * @param breed what the breed says
   * @return the word's size, with only those neighbours that the breed allows
   */
  static Likely<SizeClass> narrowed(Likely<SizeClass> named, Likely<SizeClass> breed) {
    return Likely.guess(
        named.taken(), named.mayBe().stream().filter(breed.mayBe()::contains).toList());
  }
}
