package dev.dogleg.cli.ics;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/**
 * Writes an owner's calendar file (RFC 5545). Times are UTC, so that no time zone need travel
 * along; the owner's calendar shows them in its own.
 */
public final class OwnerCalendar {
  private static final int MOST_OCTETS = 75;

  private OwnerCalendar() {}

  /**
   * A file.
   *
   * @param business name of the business; a part of every identifier
   * @param entries told visits of one owner, at least one: a calendar without entries is none
   * @param now when the file is made
   * @return text, lines ended by CR LF and no longer than 75 octets
   */
  public static String text(String business, List<CalendarEntry> entries, Instant now) {
    Calendar calendar = new Calendar();
    calendar.add(new ProdId("-//Dogleg//Dogleg//EN"));
    calendar.add(ImmutableVersion.VERSION_2_0);
    for (CalendarEntry entry : entries) {
      VEvent event = new VEvent(false);
      event.add(new Uid(uid(business, entry.key())));
      event.add(new DtStamp(now));
      event.add(new DtStart<>(entry.from()));
      event.add(new DtEnd<>(entry.to()));
      event.add(new Summary(entry.title()));
      event.add(new Description(entry.text()));
      event.add(new Sequence(entry.changes()));
      calendar.add(event);
    }
    StringWriter written = new StringWriter();
    try {
      new CalendarOutputter(true).output(calendar, written);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return folded(written.toString());
  }

  /** Names the visit without saying whose it is. */
  private static String uid(String business, String key) {
    byte[] name = ("dogleg\n" + business + "\n" + key).getBytes(StandardCharsets.UTF_8);
    return UUID.nameUUIDFromBytes(name).toString();
  }

  /**
   * Folds lines by octets. The library folds by characters: its lines grow longer than 75 octets
   * where letters take several, and a character beyond the first plane may be cut in two.
   */
  private static String folded(String text) {
    StringBuilder folded = new StringBuilder();
    for (String line : text.replace("\r\n ", "").split("\r\n")) {
      int octets = 0;
      for (int at = 0; at < line.length(); ) {
        int sign = line.codePointAt(at);
        int width = sign < 0x80 ? 1 : sign < 0x800 ? 2 : sign < 0x10000 ? 3 : 4;
        if (octets + width > MOST_OCTETS) {
          folded.append("\r\n ");
          octets = 1;
        }
        folded.appendCodePoint(sign);
        octets += width;
        at += Character.charCount(sign);
      }
      folded.append("\r\n");
    }
    return folded.toString();
  }
}
