package dev.dogleg.plan.week;

/** Measures what weighing odds does to told times, and what it costs; lines for the ledger. */
public final class PromisedWeeksLedger {
  private PromisedWeeksLedger() {}

  /**
   * Measures.
   *
   * @param args bookings, first seed, last seed, price of a broken promise in seconds of driving
   */
  public static void main(String[] args) {
    int bookings = Integer.parseInt(args[0]);
    int first = Integer.parseInt(args[1]);
    int last = Integer.parseInt(args[2]);
    long price = 60L * Integer.parseInt(args[3]);
    Sum without = new Sum();
    Sum with = new Sum();
    int more = 0;
    for (int seed = first; seed <= last; seed++) {
      PromisedWeeks weeks = new PromisedWeeks(seed, bookings);
      PromisedWeeks.Figures plain = weeks.without();
      PromisedWeeks.Figures weighed = weeks.with(price);
      more += plain.leftOut() == weighed.leftOut() ? 0 : 1;
      without.add(plain);
      with.add(weighed);
    }
    System.out.printf(
        "%d weeks of %d bookings, a broken promise %d s%n without odds: %s%n with odds:    %s%n"
            + " another number left out in %d weeks%n",
        last - first + 1, bookings, price / 60, without, with, more);
  }

  /** Figures of some weeks together. */
  private static final class Sum {
    private int weeks;
    private int told;
    private double kept;
    private int under;
    private long drive;

    void add(PromisedWeeks.Figures figures) {
      weeks++;
      told += figures.told();
      kept += figures.kept();
      under += figures.under();
      drive += figures.driveSeconds();
    }

    @Override
    public String toString() {
      return "%d told times, %.2f of 100 kept, %d under 95; %.1f min of driving a week"
          .formatted(told, 100 * kept / told, under, drive / 60.0 / weeks);
    }
  }
}
