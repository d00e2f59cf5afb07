package dev.dogleg.cli.command;

import dev.dogleg.cli.export.WholeFiles;
import dev.dogleg.cli.ics.CalendarEntry;
import dev.dogleg.cli.ics.OwnerCalendar;
import dev.dogleg.cli.tell.AtDoor;
import dev.dogleg.cli.tell.Writer;
import dev.dogleg.cli.told.ToldBook;
import dev.dogleg.cli.told.ToldRow.Told;
import dev.dogleg.model.Booking;
import dev.dogleg.model.DateSpan;
import dev.dogleg.model.WallSpan;
import dev.dogleg.time.WorkDay;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes a calendar file for each client who wants one: every visit of the plan that was told. */
final class CalendarFiles {
  private final BookInput input;
  private final Writer writer;
  private final ToldBook told;
  private final Set<String> bookings;

  CalendarFiles(BookInput input, Writer writer, ToldBook told) {
    this.input = input;
    this.writer = writer;
    this.told = told;
    this.bookings = input.book().bookings().stream().map(Booking::id).collect(Collectors.toSet());
  }

  /**
   * Writes the files.
   *
   * @param folder where; readable by their owner only
   * @param doors visits of the plan
   * @param now when the files are made
   * @return the files
   * @throws IOException where one cannot be written
   */
  List<Path> write(Path folder, List<AtDoor> doors, Instant now) throws IOException {
    Map<String, List<CalendarEntry>> entries = new TreeMap<>();
    for (AtDoor door : doors) {
      Optional<WallSpan> span = span(door);
      if (door.client().calendar() && span.isPresent()) {
        entries
            .computeIfAbsent(door.client().id(), id -> new ArrayList<>())
            .add(entry(door, span.get()));
      }
    }
    WholeFiles files = new WholeFiles(folder);
    entries.forEach(
        (client, some) ->
            files.put(
                client + ".ics", OwnerCalendar.text(input.book().business().name(), some, now)));
    return files.write();
  }

  private Optional<WallSpan> span(AtDoor door) {
    Optional<WallSpan> last =
        door.bookings().stream()
            .flatMap(id -> told.binding(id, DateSpan.of(door.date()), bookings).stream())
            .map(Told::span)
            .findFirst();
    return last.or(door::promised);
  }

  private CalendarEntry entry(AtDoor door, WallSpan span) {
    WorkDay day = new WorkDay(door.date(), input.book().business().zone());
    String booking = door.bookings().get(0);
    return new CalendarEntry(
        String.join(";", door.bookings()),
        day.wallAt(WallSpan.elapsed(span.fromSeconds(), day)).toInstant(),
        day.wallAt(WallSpan.elapsed(span.toSeconds(), day)).toInstant(),
        writer.title(door),
        writer.calendar(door, span),
        told.changes(booking, door.date()));
  }
}
