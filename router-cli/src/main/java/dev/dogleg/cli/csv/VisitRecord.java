package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.ClockGrammar;
import dev.dogleg.cli.words.DateGrammar;
import dev.dogleg.cli.words.DecimalGrammar;
import dev.dogleg.cli.words.Reading;
import dev.dogleg.cli.words.Remark;
import dev.dogleg.fault.Severity;
import dev.dogleg.groom.learn.LoggedDrive;
import dev.dogleg.groom.learn.LoggedVisit;
import dev.dogleg.groom.learn.VisitOutcome;
import dev.dogleg.model.BookedPet;
import dev.dogleg.model.DateSpan;
import dev.dogleg.model.Groomer;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Makes a visit of one row of the visit log. */
final class VisitRecord {
  private static final int MOST_MINUTES = 720;
  private static final int MOST_DRIVE_SECONDS = 36_000;
  private static final Map<String, Column> ROAD_CLASSES =
      Map.of(
          "motorway", Column.MOTORWAY_MINUTES,
          "main", Column.MAIN_MINUTES,
          "street", Column.STREET_MINUTES,
          "service", Column.SERVICE_MINUTES);

  private final Cells cells;
  private final Context context;
  private final LocalDate today;

  private VisitRecord(Cells cells, Context context, LocalDate today) {
    this.cells = cells;
    this.context = context;
    this.today = today;
  }

  /** The visit of a row, or empty where it is set aside. */
  static Optional<LoggedVisit> read(
      Cells cells, LoggedPets pets, Context context, LocalDate today) {
    return new VisitRecord(cells, context, today).read(pets);
  }

  private Optional<LoggedVisit> read(LoggedPets pets) {
    VisitOutcome outcome =
        cells.read(Column.OUTCOME, VisitRecord::outcome).orElse(VisitOutcome.DONE);
    Optional<LocalDate> date = date();
    List<BookedPet> done = pets.of(cells);
    Optional<String> groomer = groomer();
    Optional<Integer> arrived = time(Column.ARRIVED);
    Optional<Integer> started = time(Column.STARTED);
    Optional<Integer> ended = time(Column.DONE);
    Optional<Integer> left = time(Column.LEFT);
    boolean timed = outcome == VisitOutcome.DONE || outcome == VisitOutcome.CUT_SHORT;
    if (timed) {
      needed(Column.STARTED);
      needed(Column.DONE);
      inOrder(Column.STARTED, arrived, started);
      inOrder(Column.DONE, started, ended);
      inOrder(Column.LEFT, ended, left);
      length(started, ended, done.size());
    }
    Optional<LoggedDrive> drive = drive(arrived.or(() -> started));
    if (cells.bad() || date.isEmpty() || groomer.isEmpty() || done.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new LoggedVisit(
            cells.row().where(),
            date.get(),
            groomer.get(),
            done,
            timed ? ended.orElseThrow() - started.orElseThrow() : 0,
            outcome,
            drive));
  }

  private void needed(Column column) {
    if (!cells.has(column)) {
      cells.aside("missing-cell", column, "a time like 9:30 was expected", "");
    }
  }

  private Optional<LocalDate> date() {
    if (!cells.has(Column.DATE)) {
      cells.aside("missing-cell", Column.DATE, "a date was expected", "2027-03-02");
      return Optional.empty();
    }
    Optional<DateSpan> span =
        cells.read(Column.DATE, text -> DateGrammar.read(text, context.dateOrder()));
    if (span.isPresent() && !span.get().single()) {
      cells.aside("bad-date", Column.DATE, "one day was expected", "");
    } else if (span.isPresent() && span.get().from().isAfter(today)) {
      cells.aside(
          "date-in-future",
          Column.DATE,
          "a day that is past was expected; today is " + today,
          "check the year");
    }
    return span.map(DateSpan::from);
  }

  private Optional<String> groomer() {
    List<Groomer> all = context.card().map(card -> card.business().groomers()).orElseThrow();
    if (cells.has(Column.GROOMER)) {
      return CrewCells.groomer(cells, context);
    }
    if (all.size() > 1) {
      cells.aside(
          "missing-cell", Column.GROOMER, "one of the card's groomers was expected", "who came?");
      return Optional.empty();
    }
    return Optional.of(all.get(0).id());
  }

  private Optional<Integer> time(Column column) {
    return cells.read(column, text -> ClockGrammar.read(text, context.usualHours()));
  }

  private void inOrder(Column column, Optional<Integer> before, Optional<Integer> after) {
    if (before.isPresent() && after.isPresent() && after.get() < before.get()) {
      cells.aside(
          "times-out-of-order",
          column,
          "arrived, started, done, left in this order was expected",
          "are two of them swapped, or morning and afternoon?");
    }
  }

  private void length(Optional<Integer> started, Optional<Integer> ended, int pets) {
    if (started.isEmpty() || ended.isEmpty() || ended.get() < started.get()) {
      return;
    }
    int minutes = (ended.get() - started.get()) / 60;
    int most = Math.min(MOST_MINUTES, PetRecord.MOST_MINUTES * Math.max(1, pets));
    if (minutes < PetRecord.LEAST_MINUTES || minutes > most) {
      cells.aside(
          "absurd-minutes",
          Column.DONE,
          minutes
              + " minutes after the start; "
              + PetRecord.LEAST_MINUTES
              + " to "
              + most
              + " were expected",
          "");
    }
  }

  /** The drive; what is wrong with it does not set the visit aside. */
  private Optional<LoggedDrive> drive(Optional<Integer> arrived) {
    Optional<Integer> planned = seconds(Column.PLANNED_DRIVE_MINUTES);
    Optional<Integer> driven = seconds(Column.DRIVE_MINUTES);
    Optional<String> band = band(arrived, driven);
    Map<String, Integer> classes = new LinkedHashMap<>();
    ROAD_CLASSES.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(
            entry ->
                seconds(entry.getValue()).ifPresent(part -> classes.put(entry.getKey(), part)));
    boolean both = planned.orElse(0) > 0 && driven.orElse(0) > 0;
    return both && band.isPresent()
        ? Optional.of(new LoggedDrive(planned.get(), driven.get(), band.get(), classes))
        : Optional.empty();
  }

  private Optional<Integer> seconds(Column column) {
    return cells.readOrLook(column, text -> DecimalGrammar.read(text, 60, 0, MOST_DRIVE_SECONDS));
  }

  private Optional<String> band(Optional<Integer> arrived, Optional<Integer> driven) {
    if (!cells.has(Column.BAND)) {
      return arrived.map(at -> BandHours.at(Math.max(0, at - driven.orElse(0))));
    }
    Optional<String> band = BandHours.named(cells.text(Column.BAND));
    if (band.isEmpty()) {
      cells.add(
          "unknown-band",
          Severity.LOOK,
          Column.BAND,
          "a traffic band was expected; the drive is passed over",
          String.join(", ", BandHours.names()));
    }
    return band;
  }

  private static Reading<VisitOutcome> outcome(String text) {
    return switch (text.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ")) {
      case "done", "finished", "complete", "completed", "ok" -> Reading.of(VisitOutcome.DONE);
      case "cut short", "stopped", "broken off" -> Reading.of(VisitOutcome.CUT_SHORT);
      case "no show", "nobody there", "not there" -> Reading.of(VisitOutcome.NO_SHOW);
      case "refused", "turned away" -> Reading.of(VisitOutcome.REFUSED);
      default ->
          Reading.none(
              Remark.aside(
                  "unknown-outcome", "done, cut short, no show or refused was expected", ""));
    };
  }
}
