package dev.dogleg.arrival;

import dev.dogleg.itinerary.DaySpread;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;

/** Measures times to tell for a week of five days; a line for the ledger. */
public final class ArrivalLedger {
  private static final int DAYS = 5;
  private static final int DOORS = 7;
  private static final int ROUNDS = 41;

  private ArrivalLedger() {}

  /**
   * Measures.
   *
   * @param args none
   */
  public static void main(String[] args) {
    List<SpreadDays> week = new ArrayList<>();
    for (int seed = 1; seed <= DAYS; seed++) {
      week.add(SpreadDays.of(seed, DOORS, 0));
    }
    List<Double> millis = new ArrayList<>();
    for (int round = 0; round < ROUNDS; round++) {
      long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      for (SpreadDays day : week) {
        TimesToTell.eveningBefore(
            day.request(),
            day.plan().stops(),
            CourseTerms.fine(day.services(), DaySpread.STARTER),
            SpanTerms.EVENING_BEFORE);
      }
      long spent = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
      millis.add(spent / 1e6);
    }
    List<Double> warm = millis.subList(ROUNDS / 2, ROUNDS).stream().sorted().toList();
    System.out.printf(
        "times to tell, %d days of %d doors: first %.0f ms, warm median %.1f ms, most %.1f ms of the processor%n",
        DAYS, DOORS, millis.get(0), warm.get(warm.size() / 2), warm.get(warm.size() - 1));
  }
}
