package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** What makes a run useless, and what does not. */
class RunBufferTest {
  @Test
  void aCheaperRunWithMoreGreyWaterDoesNotReplaceOneOfManyStops() {
    RunBuffer runs = new RunBuffer(30, true);
    runs.add(0, 0, 0, false, 0, 1, 0);
    runs.add(1, 1, 100, false, 0, 0, 4);
    assertEquals(2, runs.size);
  }

  @Test
  void anEarlierCheaperRunWithFullerTanksDoes() {
    RunBuffer runs = new RunBuffer(30, true);
    runs.add(1, 1, 100, false, 5, 5, 1);
    runs.add(0, 1, 50, false, 5, 5, 1);
    runs.add(2, 2, 200, false, 6, 6, 2);
    assertEquals(1, runs.size);
  }
}
