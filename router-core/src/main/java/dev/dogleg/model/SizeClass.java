package dev.dogleg.model;

/**
 * Size of a pet by its weight; limits are a planning estimate of this project (common practice, no
 * source).
 */
public enum SizeClass {
  /** Under 5 kg. */
  TINY(0),
  /** 5 kg to under 10 kg. */
  SMALL(5_000),
  /** 10 kg to under 20 kg. */
  MEDIUM(10_000),
  /** 20 kg to under 40 kg. */
  LARGE(20_000),
  /** 40 kg and more. */
  GIANT(40_000);

  private final int fromGrams;

  SizeClass(int fromGrams) {
    this.fromGrams = fromGrams;
  }

  /** {@return least weight of the class in grams, inclusive} */
  public int fromGrams() {
    return fromGrams;
  }

  /**
   * The class of a weight.
   *
   * @param grams weight, 0 or more
   * @return the class
   */
  public static SizeClass ofGrams(int grams) {
    SizeClass found = TINY;
    for (SizeClass size : values()) {
      if (grams >= size.fromGrams) {
        found = size;
      }
    }
    return found;
  }
}
