package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Weighing odds keeps more of what was told, and leaves nobody out for it. */
class PromisedWeeksKeepMoreTest {
  @Test
  void moreToldTimesAreKept() {
    double without = 0;
    double with = 0;
    int told = 0;
    for (int seed = 1; seed <= 6; seed++) {
      PromisedWeeks weeks = new PromisedWeeks(seed, 16);
      PromisedWeeks.Figures plain = weeks.without();
      PromisedWeeks.Figures weighed = weeks.with(60L * 3_600);
      assertEquals(plain.leftOut(), weighed.leftOut(), "seed " + seed);
      assertEquals(plain.told(), weighed.told(), "seed " + seed);
      without += plain.kept();
      with += weighed.kept();
      told += plain.told();
    }
    String said = "of " + told + " told times " + without + " and " + with + " are kept";
    assertTrue(with > without, said);
  }
}
