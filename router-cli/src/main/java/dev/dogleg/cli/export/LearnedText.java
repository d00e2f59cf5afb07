package dev.dogleg.cli.export;

import dev.dogleg.groom.LearnedKind;
import dev.dogleg.groom.LearnedRow;
import dev.dogleg.groom.learn.DriveScore;
import dev.dogleg.groom.learn.HeldBackScore;
import dev.dogleg.groom.learn.Lesson;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a person is told about a lesson: from how much, and how far estimates are off. */
public final class LearnedText {
  private LearnedText() {}

  /**
   * How many rows of the log were not learned from.
   *
   * @param setAside rows with faults
   * @param odd visits unlike everything else
   * @param cutShort visits stopped before their end
   * @param noShow nobody was there
   * @param refused refused at the door
   * @param later visits after the last day that counts
   */
  public record NotUsed(int setAside, int odd, int cutShort, int noShow, int refused, int later) {}

  /**
   * The lines.
   *
   * @param lesson what was learned
   * @param until last day that counts
   * @param notUsed what was not learned from
   * @param known score of known pets, or empty
   * @param fresh score of new pets, or empty
   * @return lines of at most 80 signs
   */
  public static List<String> lines(
      Lesson lesson,
      LocalDate until,
      NotUsed notUsed,
      Optional<HeldBackScore> known,
      Optional<HeldBackScore> fresh) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Learned from "
            + count(lesson.visits(), "visit")
            + " of "
            + count(lesson.pets(), "pet")
            + " up to "
            + until
            + ".");
    List<String> left = notUsed(notUsed);
    if (!left.isEmpty()) {
      lines.addAll(Wrap.lines("Not learned from: " + String.join(", ", left) + ".", 80));
    }
    lines.add("");
    if (known.isEmpty() && fresh.isEmpty()) {
      lines.add("Too few visits to hold any back: how far estimates are off is not known.");
    } else {
      lines.add("Held back and asked for    visits   mean error, min   inside P10-P90");
      lines.add("                                    before  after     before   after");
      known.ifPresent(score -> lines.add(score("known pets, last visit", score)));
      fresh.ifPresent(score -> lines.add(score("new pets, first visit", score)));
      lines.add("before: tables and card; after: learned without these visits; 80 % is right");
    }
    lesson.drives().ifPresent(score -> lines.add(drives(score)));
    lines.add("");
    lesson.learned().rows().stream()
        .filter(row -> row.kind() == LearnedKind.PACE)
        .forEach(row -> lines.add(pace(row)));
    return lines;
  }

  private static List<String> notUsed(NotUsed counts) {
    List<String> left = new ArrayList<>();
    add(left, counts.setAside(), "set aside");
    add(left, counts.odd(), "unlike all others");
    add(left, counts.cutShort(), "cut short");
    add(left, counts.noShow(), "nobody there");
    add(left, counts.refused(), "refused");
    add(left, counts.later(), "later");
    return left;
  }

  private static void add(List<String> left, int count, String what) {
    if (count > 0) {
      left.add(count + " " + what);
    }
  }

  private static String score(String who, HeldBackScore score) {
    return String.format(
        Locale.ROOT,
        "%-26s %6d    %6.1f %6.1f     %4d %%  %4d %%",
        who,
        score.visits(),
        score.errorBeforeMinutes(),
        score.errorAfterMinutes(),
        Math.round(100.0 * score.insideBefore() / score.visits()),
        Math.round(100.0 * score.insideAfter() / score.visits()));
  }

  private static String drives(DriveScore score) {
    return String.format(
        Locale.ROOT,
        "%d drives: mean error %.1f min as planned, %.1f with what they taught",
        score.drives(),
        score.errorBeforeMinutes(),
        score.errorAfterMinutes());
  }

  private static String pace(LearnedRow row) {
    return String.format(
        Locale.ROOT,
        "Pace of %s: %.2f of the tables' minutes, from %s.",
        row.what(),
        row.factorPermille() / 1000.0,
        count(row.visits(), "visit"));
  }

  private static String count(int number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }
}
