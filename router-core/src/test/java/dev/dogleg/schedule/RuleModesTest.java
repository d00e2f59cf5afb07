package dev.dogleg.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.oracle.RandomTerms;
import dev.dogleg.plan.SeededDays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The small numbers that stand for what was served never ask or charge more than the rules do. */
class RuleModesTest {
  private static final int SEEDS = 400;

  private int named;
  private int priced;
  private int forbidden;

  @Test
  void noStepOfARandomOrderIsDearerOrLessAllowedThanTheRulesSay() {
    for (int seed = 1; seed <= SEEDS; seed++) {
      DayRequest day = RandomTerms.on(seed, SeededDays.day(seed, 3 + seed % 5, 1, seed % 2 == 0));
      SplittableRandom random = new SplittableRandom(seed);
      StepTerms terms = DayModel.of(day).steps();
      RuleModes modes = terms.modes(1 + random.nextInt(40));
      named += modes.size() > 1 ? 1 : 0;
      for (int walk = 0; walk < 20; walk++) {
        walk(day.visits().size(), terms, modes, random, "seed " + seed);
      }
    }
    assertTrue(
        named > SEEDS / 4 && priced > 100 && forbidden > 100,
        named + " days, " + priced + " prices, " + forbidden + " forbidden steps");
  }

  private void walk(int n, StepTerms terms, RuleModes modes, SplittableRandom random, String on) {
    long[] served = new long[1];
    int last = n;
    int mode = modes.of(served, 0);
    assertEquals(0, mode, on);
    for (int place = 1; place <= n; place++) {
      int next = random.nextInt(n);
      if ((served[0] >>> next & 1) != 0) {
        return;
      }
      boolean may = terms.may(served, 0, last, next, place);
      int then = modes.after(mode, next);
      if (then < 0) {
        forbidden++;
        assertFalse(may, on);
      }
      if (!may) {
        return;
      }
      long price = modes.price(mode, next);
      priced += price > 0 ? 1 : 0;
      long charged =
          terms.price(served, 0, last, next, place) - (last < n ? terms.leastPrice(last, next) : 0);
      assertTrue(price <= charged, on + ": " + price + " above " + charged);
      served[0] |= 1L << next;
      assertEquals(modes.of(served, 0), then, on);
      mode = then;
      last = next;
      ends(terms, modes, served, last, mode, on);
    }
  }

  private void ends(
      StepTerms terms, RuleModes modes, long[] served, int last, int mode, String on) {
    long end = modes.endPrice(mode);
    if (end == RuleModes.FORBIDDEN) {
      forbidden++;
      assertFalse(terms.mayEnd(served, 0, last), on);
    } else {
      priced += end > 0 ? 1 : 0;
      assertTrue(end <= terms.endPrice(served, 0, last), on);
    }
  }
}
