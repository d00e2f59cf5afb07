package dev.dogleg.cli.export;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes seconds and metres the way a table or a person wants them. */
final class Amounts {
  private Amounts() {}

  /** {@return minutes with two decimals: enough to get the whole seconds back} */
  static String minutes(int seconds) {
    return BigDecimal.valueOf(seconds)
        .divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP)
        .toPlainString();
  }

  /** {@return kilometres with three decimals: whole metres} */
  static String kilometres(int metres) {
    return BigDecimal.valueOf(metres, 3).toPlainString();
  }

  /** {@return kilometres with one decimal} */
  static String roughKilometres(long metres) {
    return BigDecimal.valueOf(metres, 3).setScale(1, RoundingMode.HALF_UP).toPlainString();
  }

  /** {@return minutes, rounded half up} */
  static long roughMinutes(long seconds) {
    return Math.floorDiv(seconds + 30, 60);
  }

  /** {@return whole minutes that surely are there} */
  static long fullMinutes(long seconds) {
    return Math.floorDiv(seconds, 60);
  }

  /** {@return minutes, rounded up} */
  static long minutesUp(long seconds) {
    return Math.floorDiv(seconds + 59, 60);
  }

  /** {@return for example {@code 1 h 05 min} or {@code 12 min}} */
  static String spoken(long seconds) {
    long minutes = roughMinutes(seconds);
    return minutes < 60 ? minutes + " min" : "%d h %02d min".formatted(minutes / 60, minutes % 60);
  }

  /** {@return for example {@code 1 minute} or {@code 12 minutes}} */
  static String spokenMinutes(long minutes) {
    return minutes == 1 ? "1 minute" : minutes + " minutes";
  }
}
