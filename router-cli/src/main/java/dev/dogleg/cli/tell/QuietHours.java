package dev.dogleg.cli.tell;

import java.time.LocalTime;
import java.time.ZonedDateTime;

/**
 * Hours in which texts may be sent: not before 8:00 and not after 21:00 at the owner's place.
 *
 * <p>47 CFR 64.1200(c)(1) sets these hours for telephone solicitations by the called party's local
 * time; a word to one's own client is kept to them too. Some places are narrower.
 */
public final class QuietHours {
  private static final LocalTime FIRST = LocalTime.of(8, 0);
  private static final LocalTime LAST = LocalTime.of(21, 0);

  private QuietHours() {}

  /**
   * The first moment from a given one on at which a text may be sent.
   *
   * @param wanted when it would go out, in the owner's time zone
   * @return that moment, or 8:00 of the same or the next day
   */
  public static ZonedDateTime next(ZonedDateTime wanted) {
    LocalTime time = wanted.toLocalTime();
    if (time.isBefore(FIRST)) {
      return at(wanted);
    }
    return time.isAfter(LAST) ? at(wanted.plusDays(1)) : wanted;
  }

  private static ZonedDateTime at(ZonedDateTime day) {
    return day.toLocalDate().atTime(FIRST).atZone(day.getZone());
  }
}
