package dev.dogleg.cli.tell;

import dev.dogleg.cli.told.Occasion;
import dev.dogleg.cli.told.ToldBook;
import dev.dogleg.cli.told.ToldEvent;
import dev.dogleg.cli.told.ToldRow;
import dev.dogleg.cli.told.ToldRow.Told;
import dev.dogleg.model.HowToTell;
import dev.dogleg.model.WallSpan;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Decides who hears what, visit by visit: a text, a call, or nothing.
 *
 * <p>A told span may only be narrowed, never moved; whose time did not change hears nothing.
 */
public final class Telling {
  private final ToldBook before;
  private final Writer writer;
  private final ZonedDateTime now;
  private final int eveningSeconds;
  private final List<ToTell> toTell = new ArrayList<>();
  private final List<Silence> silent = new ArrayList<>();

  /**
   * Begins.
   *
   * @param before what was told before
   * @param writer writes the messages
   * @param now the clock, in the owners' time zone
   * @param eveningSeconds when the evening's texts go out, wall-clock seconds
   */
  public Telling(ToldBook before, Writer writer, ZonedDateTime now, int eveningSeconds) {
    this.before = Objects.requireNonNull(before, "before");
    this.writer = Objects.requireNonNull(writer, "writer");
    this.now = Objects.requireNonNull(now, "now");
    this.eveningSeconds = eveningSeconds;
  }

  /**
   * A visit of a day that is to be told the evening before, or asked for.
   *
   * @param door the visit
   * @param moved what was told of the same booking for another day that it has no more; empty where
   *     nothing was
   */
  public void evening(AtDoor door, Optional<ToldRow> moved) {
    if (mute(door)) {
      return;
    }
    if (door.toBeAsked()) {
      ask(door);
      return;
    }
    Optional<ToldRow> last = last(door);
    Optional<WallSpan> within = within(door);
    if (within.isEmpty()) {
      look(door, "the plan is not within what was told: " + door.promised().orElseThrow());
    } else if (last.isPresent() && !otherwise(last.get(), door)) {
      silent.add(new Silence(door, already(last.get()), false));
    } else if (last.isPresent() || moved.isPresent()) {
      Told old = last.or(() -> moved).flatMap(ToldRow::told).orElseThrow();
      ZonedDateTime sent = old.sendAt().atZoneSameInstant(now.getZone());
      ZonedDateTime wanted = sent.isAfter(now) ? sent : now;
      tell(door, Occasion.CHANGED, within.get(), wanted, Optional.of(old.date()));
    } else if (door.agreedDay().isPresent()) {
      tell(door, Occasion.CHANGED, within.get(), now, door.agreedDay());
    } else {
      ZonedDateTime evening = at(door.date().minusDays(1), eveningSeconds, now);
      tell(
          door,
          Occasion.EVENING,
          within.get(),
          evening.isAfter(now) ? evening : now,
          Optional.empty());
    }
  }

  /**
   * The door that the van has just left for.
   *
   * @param door the visit, with the narrow span
   */
  public void onMyWay(AtDoor door) {
    if (mute(door)) {
      return;
    }
    if (door.toBeAsked()) {
      look(door, "nobody agreed to this day yet");
      return;
    }
    boolean late = door.promised().filter(told -> door.arriveWall() > told.toSeconds()).isPresent();
    Optional<ToldRow> last = last(door).filter(row -> fresh(row) && !late);
    if (last.isPresent()) {
      silent.add(new Silence(door, already(last.get()), false));
      return;
    }
    Optional<WallSpan> within = late ? Optional.of(door.span()) : within(door);
    tell(
        door,
        late ? Occasion.LATE : Occasion.ON_MY_WAY,
        within.orElseGet(door::span),
        now,
        Optional.empty());
  }

  private static boolean fresh(ToldRow row) {
    Occasion occasion = row.told().orElseThrow().occasion();
    return occasion == Occasion.ON_MY_WAY || occasion == Occasion.LATE;
  }

  private void ask(AtDoor door) {
    Optional<ToldRow> last = last(door, true);
    Optional<ToldEvent> answer = last.flatMap(before::answer);
    if (last.isEmpty()) {
      tell(door, Occasion.ASK, door.span(), now, door.agreedDay());
    } else if (answer.isEmpty()) {
      silent.add(new Silence(door, "asked already, no answer noted yet", false));
    } else if (answer.get() == ToldEvent.CONFIRMED) {
      look(door, "said yes to this day: write it into the book's date");
    } else {
      look(door, "asked already: " + answer.get().word() + "; call, or plan another day");
    }
  }

  /** Those who hear nothing at all. */
  private boolean mute(AtDoor door) {
    if (door.client().tell() == HowToTell.NOBODY) {
      silent.add(new Silence(door, "wants to be told nothing", false));
      return true;
    }
    if (!door.booked()) {
      look(door, "from the waiting list: agree on it first, then make it booked");
      return true;
    }
    return false;
  }

  private Optional<ToldRow> last(AtDoor door) {
    return last(door, false);
  }

  /** What was told (or asked) last of the visit on its day. */
  private Optional<ToldRow> last(AtDoor door, boolean asked) {
    return door.bookings().stream()
        .flatMap(id -> before.last(id, door.date()).stream())
        .filter(
            row ->
                asked
                    || row.told().orElseThrow().occasion() != Occasion.ASK
                    || before.answer(row).filter(ToldEvent.CONFIRMED::equals).isPresent())
        .max(Comparator.comparingInt(ToldRow::run));
  }

  /** Whether what binds by now is neither what was told last nor a part of it. */
  private static boolean otherwise(ToldRow last, AtDoor door) {
    WallSpan told = last.told().orElseThrow().span();
    return door.promised().filter(binds -> !told.holds(binds) && !binds.holds(told)).isPresent();
  }

  /** The span to tell inside what binds already; empty where the plan does not keep that. */
  private static Optional<WallSpan> within(AtDoor door) {
    if (door.promised().isEmpty()) {
      return Optional.of(door.span());
    }
    WallSpan told = door.promised().get();
    if (door.arriveWall() > told.toSeconds()) {
      return Optional.empty();
    }
    int from = Math.max(door.span().fromSeconds(), told.fromSeconds());
    int to = Math.min(door.span().toSeconds(), told.toSeconds());
    return Optional.of(from <= to ? new WallSpan(from, to) : told);
  }

  private void tell(
      AtDoor door,
      Occasion occasion,
      WallSpan span,
      ZonedDateTime wanted,
      Optional<LocalDate> oldDate) {
    ZonedDateTime sendAt = QuietHours.next(wanted);
    boolean underWay = occasion == Occasion.ON_MY_WAY || occasion == Occasion.LATE;
    ZonedDateTime tooLate = at(door.date(), underWay ? span.toSeconds() : span.fromSeconds(), now);
    if (!sendAt.isBefore(tooLate)) {
      look(
          door,
          "too late to tell: texts and calls go out from 8:00 to 21:00, next at "
              + sendAt.toLocalDateTime());
      return;
    }
    HowToTell how = door.client().tell();
    String remark = "";
    if (how == HowToTell.TEXT && before.stopped(door.client().id())) {
      how = HowToTell.CALL;
      remark = "wants no texts";
    } else if (how == HowToTell.TEXT && door.client().phone().isEmpty()) {
      how = HowToTell.CALL;
      remark = "has no phone number in the book";
    }
    String message =
        how == HowToTell.TEXT
            ? writer.message(door, occasion, span, oldDate)
            : writer.spoken(door, occasion, span, oldDate);
    toTell.add(new ToTell(door, occasion, span, how, message, sendAt, remark));
  }

  private static ZonedDateTime at(LocalDate date, int wallSeconds, ZonedDateTime clock) {
    return wallSeconds == WallSpan.MIDNIGHT
        ? date.plusDays(1).atStartOfDay(clock.getZone())
        : date.atTime(LocalTime.ofSecondOfDay(wallSeconds)).atZone(clock.getZone());
  }

  private String already(ToldRow row) {
    String answer = before.answer(row).map(event -> ", " + event.word()).orElse("");
    return "told already: " + row.told().orElseThrow().span() + answer;
  }

  private void look(AtDoor door, String why) {
    silent.add(new Silence(door, why, true));
  }

  /** {@return who is to hear something, in the order of the visits} */
  public List<ToTell> toTell() {
    return List.copyOf(toTell);
  }

  /** {@return visits of which nothing is told now, and why} */
  public List<Silence> silent() {
    return List.copyOf(silent);
  }
}
