package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LedgerOptionsTest {
  @Test
  void seedsTakeTurnsOnTheMaps() {
    LedgerOptions options = LedgerOptions.of("map=grid,brindlewick", "seeds=1..4");
    assertEquals("brindlewick", options.map(1));
    assertEquals("grid", options.map(2));
    assertEquals(4, options.lastSeed());
  }

  @Test
  void loadsHaveWords() {
    // 150 bookings of 5 vans are 30 a van; 40 of one van are a third more than 30.
    assertEquals(1.15, LedgerOptions.of("bookings=150", "vans=5", "load=usual").fill(), 1e-9);
    assertEquals(1.15 * 4 / 3, LedgerOptions.of("bookings=40", "load=usual").fill(), 1e-9);
    // Seven doors on each of five days are 35 of 40.
    assertEquals(40.0 / 35, LedgerOptions.of("bookings=40", "load=short").fill(), 1e-9);
  }

  @Test
  void termsAreTold() {
    LedgerOptions options = LedgerOptions.of("terms=water");
    assertFalse(options.rules());
    assertTrue(options.water());
    assertEquals("none", LedgerOptions.of("terms=none").terms());
  }

  @ParameterizedTest
  @ValueSource(strings = {"bookings", "sizes=3", "terms=all"})
  void whatIsNotKnownIsRefused(String word) {
    assertThrows(IllegalArgumentException.class, () -> LedgerOptions.of(word));
  }
}
