package dev.dogleg.arrival;

/**
 * How spans are chosen that are told to owners.
 *
 * @param keptPermille share of told times to be kept, in thousandths, 500..999
 * @param widthMinutePrice what a minute of width is worth, 0..1000
 * @param waitMinutePrice what a minute of the van's waiting is worth, in the same coin, 0..1000
 * @param roundSeconds spans begin and end on multiples of this by the day's clock, 60..3600
 * @param leastWidthSeconds no span is narrower, 0..14,400
 */
public record SpanTerms(
    int keptPermille,
    int widthMinutePrice,
    int waitMinutePrice,
    int roundSeconds,
    int leastWidthSeconds) {

  /**
   * The evening before: 95 of 100 kept (the US cable rule asks as much, 47 CFR 76.309), quarter
   * hours, half an hour at least.
   */
  public static final SpanTerms EVENING_BEFORE = new SpanTerms(950, 5, 20, 900, 1_800);

  /** On the way: 95 of 100 kept, five minutes, twenty at least. */
  public static final SpanTerms ON_MY_WAY = new SpanTerms(950, 5, 20, 300, 1_200);

  /** Checks the ranges. */
  public SpanTerms {
    check("keptPermille", keptPermille, 500, 999);
    check("widthMinutePrice", widthMinutePrice, 0, 1000);
    check("waitMinutePrice", waitMinutePrice, 0, 1000);
    check("roundSeconds", roundSeconds, 60, 3_600);
    check("leastWidthSeconds", leastWidthSeconds, 0, 14_400);
  }

  private static void check(String name, int value, int least, int most) {
    if (value < least || value > most) {
      throw new IllegalArgumentException(
          name + " must lie in " + least + ".." + most + ", was " + value);
    }
  }

  /**
   * The same terms with another target.
   *
   * @param permille share of told times to be kept
   * @return the terms
   */
  public SpanTerms keeping(int permille) {
    return new SpanTerms(
        permille, widthMinutePrice, waitMinutePrice, roundSeconds, leastWidthSeconds);
  }
}
