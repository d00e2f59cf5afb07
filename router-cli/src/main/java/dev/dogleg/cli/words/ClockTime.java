package dev.dogleg.cli.words;

import dev.dogleg.model.WallSpan;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time of day as written. {@code 15:00}, {@code 09:30}, {@code 0930} and {@code 3pm} say which
 * half of the day they mean; {@code 3} and {@code 3:30} do not.
 *
 * @param seconds wall-clock seconds as read before noon
 * @param open whether it could be twelve hours later too
 * @param fullDay whether only the 24-hour clock writes it so: {@code 13} to {@code 24} without pm
 */
record ClockTime(int seconds, boolean open, boolean fullDay) {
  private static final Pattern TIME =
      Pattern.compile("(\\d{1,2})(?:[:.h](\\d{2})(?::(\\d{2}))?|h)?(am|pm)?");
  private static final Pattern FOUR = Pattern.compile("(\\d{2})(\\d{2})(am|pm)?");
  private static final int HALF_DAY = 43_200;

  /** Reads a token in lower case, or gives nothing where it is no time. */
  static Optional<ClockTime> of(String token) {
    if (token.equals("noon") || token.equals("midday")) {
      return Optional.of(new ClockTime(HALF_DAY, false, false));
    }
    Matcher time = TIME.matcher(token);
    if (time.matches()) {
      return of(time.group(1), time.group(2), time.group(3), time.group(4));
    }
    Matcher four = FOUR.matcher(token);
    return four.matches()
        ? of(four.group(1), four.group(2), null, four.group(3))
        : Optional.empty();
  }

  private static Optional<ClockTime> of(String hours, String minutes, String secs, String half) {
    int hour = Integer.parseInt(hours);
    int minute = minutes == null ? 0 : Integer.parseInt(minutes);
    int second = secs == null ? 0 : Integer.parseInt(secs);
    if (minute > 59 || second > 59) {
      return Optional.empty();
    }
    if (half != null) {
      if (hour < 1 || hour > 12) {
        return Optional.empty();
      }
      hour = hour % 12 + (half.equals("pm") ? 12 : 0);
      return Optional.of(new ClockTime(hour * 3600 + minute * 60 + second, false, false));
    }
    int seconds = hour * 3600 + minute * 60 + second;
    if (seconds > WallSpan.MIDNIGHT) {
      return Optional.empty();
    }
    boolean zero = hours.length() == 2 && hours.charAt(0) == '0';
    return Optional.of(new ClockTime(seconds, hour >= 1 && hour <= 11 && !zero, hour >= 13));
  }

  /** {@return every wall-clock second it could mean, earliest first} */
  int[] readings() {
    return open ? new int[] {seconds, seconds + HALF_DAY} : new int[] {seconds};
  }
}
