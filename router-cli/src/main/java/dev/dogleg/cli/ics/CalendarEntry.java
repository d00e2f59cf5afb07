package dev.dogleg.cli.ics;

import java.time.Instant;
import java.util.Objects;

/**
 * A told visit in an owner's calendar.
 *
 * @param key names the visit for good, for example the id of its booking; a hash of it is the
 *     entry's identifier
 * @param from the van is at the door from then
 * @param to and not later than then
 * @param title what the calendar shows
 * @param text what stands under it
 * @param changes how often what was told has changed, 0 or more
 */
public record CalendarEntry(
    String key, Instant from, Instant to, String title, String text, int changes) {
  /** Checks the order of the times; control characters become blanks. */
  public CalendarEntry {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(text, "text");
    title = title.replaceAll("\\p{Cntrl}", " ");
    text = text.replaceAll("\\p{Cntrl}", " ");
    if (to.isBefore(from) || changes < 0) {
      throw new IllegalArgumentException("no entry: " + from + ".." + to + ", " + changes);
    }
  }
}
