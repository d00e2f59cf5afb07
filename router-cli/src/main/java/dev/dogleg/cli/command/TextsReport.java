package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.export.Wrap;
import dev.dogleg.cli.tell.Silence;
import dev.dogleg.cli.tell.Telling;
import dev.dogleg.cli.tell.TextSize;
import dev.dogleg.cli.tell.ToTell;
import dev.dogleg.cli.told.HandOver;
import dev.dogleg.model.HowToTell;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** Prints who is told what: names, never a phone. */
final class TextsReport {
  private static final int COLUMNS = 80;
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

  private final Console console;
  private final ZonedDateTime now;

  TextsReport(Console console, ZonedDateTime now) {
    this.console = console;
    this.now = now;
  }

  /** Says what was finished of a run that was cut short. */
  void finished(HandOver.Finished finished) {
    if (finished.rows().isEmpty()) {
      return;
    }
    console.warn(
        finished.moved().isEmpty()
            ? "The run before was cut short after its texts were handed over: they are not written"
                + " again."
            : "The run before was cut short before its texts were handed over: they are in place"
                + " now.");
    written(finished.moved());
  }

  /** Says who is told what. */
  void told(Telling telling, LocalDate date) {
    console.say(DAY.format(date));
    for (ToTell one : telling.toTell()) {
      wrapped(
          "%s, %s: %s"
              .formatted(
                  one.door().client().name() + day(one.door().date(), date), one.span(), how(one)));
    }
    for (Silence one : telling.silent()) {
      wrapped(
          one.door().client().name() + day(one.door().date(), date) + ": nothing, " + one.why());
    }
    if (telling.toTell().isEmpty()) {
      console.say(" Nobody is to be told anything.");
      return;
    }
    console.say("");
    console.say(" " + sums(telling.toTell()));
    console.say(" Dogleg sends nothing. Look at this while parked, never while driving.");
  }

  private static String day(LocalDate date, LocalDate plain) {
    return date.equals(plain) ? "" : " (" + date + ")";
  }

  private String how(ToTell one) {
    String when = one.sendAt().isAfter(now) ? " on " + TIME.format(one.sendAt()) : " now";
    String what = one.occasion().word();
    String how =
        switch (one.how()) {
          case TEXT -> {
            TextSize size = TextSize.of(one.message());
            yield "text, "
                + size.segments()
                + (size.segments() == 1 ? " segment" : " segments")
                + (size.ucs2() ? " (a letter outside the GSM alphabet)" : "");
          }
          case CALL -> "call";
          default -> "through the neighbour";
        };
    return what + ", " + how + when + (one.remark().isEmpty() ? "" : ", " + one.remark());
  }

  private static String sums(List<ToTell> all) {
    long texts = all.stream().filter(one -> one.how() == HowToTell.TEXT).count();
    long calls = all.stream().filter(one -> one.how() == HowToTell.CALL).count();
    long neighbours = all.size() - texts - calls;
    int segments =
        all.stream()
            .filter(one -> one.how() == HowToTell.TEXT)
            .mapToInt(one -> TextSize.of(one.message()).segments())
            .sum();
    return "Texts: %d, segments: %d. Calls: %d. Through a neighbour: %d."
        .formatted(texts, segments, calls, neighbours);
  }

  private void wrapped(String line) {
    List<String> lines = Wrap.lines(line, COLUMNS - 4);
    console.say("  " + lines.get(0));
    lines.stream().skip(1).forEach(rest -> console.say("    " + rest));
  }

  /** Says which files were written. */
  void written(List<Path> files) {
    files.forEach(file -> console.say("Written: " + file));
  }
}
