package dev.dogleg.cli.export;

import dev.dogleg.fit.DoorChange;
import dev.dogleg.fit.FitAnswer;
import dev.dogleg.fit.FitAnswer.Verdict;
import dev.dogleg.fit.NoDay;
import dev.dogleg.fit.Offer;
import dev.dogleg.fit.WeekOffer;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.WeekNoRoom.Change;
import dev.dogleg.itinerary.WeekNoRoom.ChangeKind;
import dev.dogleg.time.TimeWindow;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** An answer about a newcomer, read at a glance on 80 columns. */
public final class FitText {
  private static final int COLUMNS = 80;
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

  private final FitSheet sheet;
  private final FitAnswer answer;
  private final List<String> lines = new ArrayList<>();

  private FitText(FitSheet sheet) {
    this.sheet = sheet;
    this.answer = sheet.answer();
  }

  /**
   * The answer.
   *
   * @param sheet the answer and what is needed to show it
   * @return lines of at most 80 columns
   */
  public static List<String> lines(FitSheet sheet) {
    return new FitText(sheet).write();
  }

  private List<String> write() {
    verdict();
    minutes();
    int number = 1;
    for (Offer offer : answer.offers()) {
      lines.add("");
      offer(number++, offer);
    }
    if (!answer.furtherDays().isEmpty()) {
      say(
          "",
          "Fits too: "
              + answer.furtherDays().stream().map(this::day).collect(Collectors.joining(", "))
              + ".");
    }
    noDays();
    answer.otherDays().ifPresent(this::otherDays);
    return lines;
  }

  private void verdict() {
    String who = sheet.who() + ", " + sheet.address();
    if (!answer.offers().isEmpty()) {
      Offer best = answer.offers().get(0);
      say(
          "",
          "YES: "
              + who
              + ". Best "
              + day(best.day())
              + ", say "
              + span(best.day(), best.toTell().arriveWithin())
              + ".");
    } else if (answer.verdict() == Verdict.FITS) {
      say("", "YES, if others change their day: " + who + ".");
    } else if (answer.verdict() == Verdict.NEVER_FITS) {
      say("", "NO, proven: " + who + ".");
    } else if (answer.sameDays() == Verdict.NEVER_FITS) {
      say(
          "",
          "NO ROOM while all others keep their day, proven; on other days: not found: "
              + who
              + ".");
    } else {
      say("", "NOT FOUND within the limit, nothing is proven: " + who + ".");
    }
  }

  private void minutes() {
    FitSheet.Minutes minutes = sheet.minutes();
    String text =
        "Planned with " + Amounts.roughMinutes(minutes.plannedSeconds()) + " min at the door";
    if (minutes.spread().isPresent()) {
      text +=
          ", eight of ten take "
              + Amounts.roughMinutes(minutes.endSeconds(false))
              + " to "
              + Amounts.roughMinutes(minutes.endSeconds(true));
    }
    say("  ", text + ".");
    if (!minutes.guessed().isEmpty()) {
      say(
          "  ",
          "A guess: " + String.join(" and ", minutes.guessed()) + ". Ask, and the minutes narrow.");
    }
  }

  private void offer(int number, Offer offer) {
    FitSheet.Day day = sheet.days().get(offer.day());
    say(
        "",
        number
            + ". "
            + day(offer.day())
            + ", "
            + day.groomer()
            + ": at the door "
            + clock(offer.day(), offer.newcomer().arriveSeconds())
            + ", tell "
            + span(offer.day(), offer.toTell().arriveWithin())
            + " (kept in "
            + offer.toTell().keptPermille() / 10
            + " of 100)");
    Offer.DayChange change = offer.changes();
    say(
        "   ",
        signed(change.driveSeconds())
            + " min driving, "
            + (change.driveMetres() < 0 ? "-" : "+")
            + Amounts.roughKilometres(Math.abs(change.driveMetres()))
            + " km, "
            + signed(change.waitSeconds())
            + " min waiting, home "
            + home(offer)
            + ", least spare "
            + Amounts.fullMinutes(offer.spareSeconds())
            + " min");
    say("   ", money(offer.extraCostSixtieths()));
    DayStrip strip = new DayStrip(offer.before(), offer.after(), day.day(), answer.newcomerId());
    lines.addAll(strip.lines());
    say(
        "          ",
        strip.letters().entrySet().stream()
            .map(entry -> entry.getValue() + " " + client(day, entry.getKey()))
            .collect(Collectors.joining(", ")));
    shifts(offer, day);
    say(
        "   ",
        (offer.proven()
                ? "No better order of this day; all other days stay untouched."
                : "Not proven the best order of this day; all other days stay untouched.")
            + (day.otherTimes()
                ? " The plan on file has other times: shifts count from its visits' best order."
                : ""));
  }

  private static String client(FitSheet.Day day, String id) {
    StopLabel label = day.labels().get(id);
    return label == null ? id : label.client();
  }

  private String home(Offer offer) {
    List<PlannedStop> before = offer.before().stops();
    List<PlannedStop> after = offer.after().stops();
    String now = clock(offer.day(), after.get(after.size() - 1).arriveSeconds());
    return before.isEmpty()
        ? now + " (a free day before)"
        : clock(offer.day(), before.get(before.size() - 1).arriveSeconds()) + " -> " + now;
  }

  private void shifts(Offer offer, FitSheet.Day day) {
    List<String> shifted = new ArrayList<>();
    for (DoorChange door : offer.doors()) {
      boolean newcomer = door.visitId().equals(answer.newcomerId());
      int before = door.keptBefore().orElse(door.keptAfter()) / 10;
      int after = door.keptAfter() / 10;
      if (!newcomer && (Math.abs(door.shiftSeconds()) >= 60 || before != after)) {
        String odds = before == after ? "" : ", on time " + before + " -> " + after + " of 100";
        shifted.add(
            client(day, door.visitId())
                + " "
                + signed(door.shiftSeconds())
                + " min"
                + (door.promised() ? " inside the told time" : "")
                + odds);
      }
    }
    say(
        "   ",
        shifted.isEmpty()
            ? "Nobody shifts."
            : "Shift: " + String.join("; ", shifted) + ". Told times are kept.");
  }

  private String money(long sixtieths) {
    long cost = sheet.money().costMinor(sixtieths);
    String currency = sheet.money().currency().getCurrencyCode();
    String text = "cost " + sheet.money().amount(cost) + " " + currency;
    if (sheet.money().priceMinor().isEmpty()) {
      return text + "; its price is not known";
    }
    long price = sheet.money().priceMinor().getAsLong();
    return "price "
        + sheet.money().amount(price)
        + ", "
        + text
        + ", leaves "
        + sheet.money().amount(price - cost);
  }

  private void noDays() {
    if (answer.noDays().isEmpty()) {
      return;
    }
    lines.add("");
    boolean unsaid = answer.noDays().stream().allMatch(no -> no.reason().isEmpty());
    if (!answer.offers().isEmpty() && unsaid) {
      say(
          "",
          "No room (all others staying): "
              + answer.noDays().stream()
                  .map(no -> day(no.day()) + (no.proven() ? "" : " (not proven)"))
                  .collect(Collectors.joining(", "))
              + ".");
      return;
    }
    say(
        "",
        answer.offers().isEmpty()
            ? "While all others keep their day:"
            : "No room while all others keep their day:");
    answer.noDays().forEach(no -> say("  ", day(no.day()) + ": " + why(no) + change(no)));
  }

  private String why(NoDay no) {
    if (no.reason().isEmpty()) {
      return no.proven() ? "no room, proven." : "no room found within the limit.";
    }
    NoRoom reason = no.reason().get();
    return switch (reason.why()) {
      case IMPOSSIBLE_ALONE ->
          "impossible even alone, by "
              + reason.rule()
              + (reason.shortBySeconds() > 0
                  ? ", short by " + Amounts.minutesUp(reason.shortBySeconds()) + " min"
                  : "")
              + ".";
      case IMPOSSIBLE_TOGETHER ->
          "no room beside "
              + reason.withVisits().stream()
                  .map(id -> client(sheet.days().get(no.day()), id))
                  .collect(Collectors.joining(", "))
              + ".";
      case NOT_WORTH_IT, NOT_FOUND -> "no room, proven; no single rule named.";
    };
  }

  private static String change(NoDay no) {
    return no.change()
        .map(change -> " It fits with " + words(change) + ".")
        .orElse(no.proven() ? " No single time moved by up to 4 hours makes room." : "");
  }

  private static String words(Change change) {
    String minutes = Amounts.spokenMinutes(change.seconds() / 60L);
    return change.kind() == ChangeKind.LATER_END
        ? "the day ending " + minutes + " later"
        : "a time asked for wider by " + minutes;
  }

  private void otherDays(WeekOffer week) {
    lines.add("");
    switch (week.verdict()) {
      case FITS -> {
        int day = week.day().getAsInt();
        String moves =
            week.moved().stream()
                .map(
                    move ->
                        sheet.name(move.from(), move.bookingId())
                            + " from "
                            + day(move.from())
                            + " to "
                            + day(move.to()))
                .collect(Collectors.joining("; "));
        PlannedStop stop =
            week.plan().days().get(day).stops().stream()
                .filter(one -> one.visitId().equals(answer.newcomerId()))
                .filter(one -> one.kind() == PlannedStop.Kind.VISIT)
                .findFirst()
                .orElseThrow();
        say(
            "",
            "If others may change their day (told and locked ones stay): "
                + day(day)
                + ", at the door "
                + clock(day, stop.arriveSeconds())
                + ".");
        say("  ", moves.isEmpty() ? "Nobody changes the day." : "Ask: " + moves + ".");
        say("  ", "Over the whole week: " + money(week.extraCostSixtieths()) + ".");
        say("  ", week.proven() ? "No such week is better." : "Not proven, best so far.");
      }
      case NEVER_FITS ->
          say("", "Even if others change their day (told and locked ones stay): no, proven.");
      case NOT_FOUND ->
          say("", "If others change their day: not proven, nothing found so far (--effort).");
    }
  }

  private String day(int number) {
    return DATE.format(sheet.days().get(number).day().date());
  }

  private String span(int number, TimeWindow span) {
    return clock(number, span.fromSeconds()) + "-" + clock(number, span.toSeconds());
  }

  private String clock(int number, int seconds) {
    return CLOCK.format(sheet.days().get(number).day().wallAt(seconds));
  }

  private static String signed(int seconds) {
    long minutes = Amounts.roughMinutes(seconds);
    return minutes < 0 ? Long.toString(minutes) : "+" + minutes;
  }

  private void say(String indent, String text) {
    List<String> wrapped = Wrap.lines(text, COLUMNS - indent.length() - 2);
    lines.add(indent + wrapped.get(0));
    wrapped.stream().skip(1).forEach(line -> lines.add(indent + "  " + line));
  }
}
