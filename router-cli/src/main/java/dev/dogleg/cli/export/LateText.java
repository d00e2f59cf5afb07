package dev.dogleg.cli.export;

import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.model.HowToTell;
import dev.dogleg.plan.late.LateChoice;
import dev.dogleg.plan.late.Promise.Kind;
import dev.dogleg.plan.late.PromiseKept;
import dev.dogleg.time.TimeWindow;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The choices of a late day as a person reads them on a terminal of 80 columns. */
public final class LateText {
  private static final int COLUMNS = 80;
  private static final int TEXT_COLUMNS = 36;
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);

  private final LateSheet sheet;
  private final List<String> lines = new ArrayList<>();

  private LateText(LateSheet sheet) {
    this.sheet = sheet;
  }

  /**
   * The printed choices.
   *
   * @param sheet the rest of a day
   * @return lines of at most 80 columns where names allow
   */
  public static List<String> of(LateSheet sheet) {
    return new LateText(sheet).write();
  }

  private List<String> write() {
    lines.add(
        DATE.format(sheet.shift().day().date())
            + ", "
            + sheet.groomer()
            + ": the rest from "
            + sheet.clock(sheet.nowSeconds()));
    wrap(
        "",
        doors(sheet.done())
            + " done, "
            + sheet.left().size()
            + " to go; "
            + sheet.standing()
            + ".");
    for (String rule : sheet.answer().rulesGone()) {
      wrap("", "Cannot hold any more: " + rule(rule) + ".");
    }
    int number = 1;
    for (LateChoice choice : sheet.answer().choices()) {
      lines.add("");
      choice(number++, choice);
    }
    lines.add("");
    lines.add("Read this while parked, never while driving. Nobody is rushed: minutes are as");
    lines.add("planned. The animal comes before any promise, and the vet's word first.");
    return List.copyOf(lines);
  }

  private static String doors(int count) {
    return count == 1 ? "1 door" : count + " doors";
  }

  /** A rule's name, or whose wish to be first. */
  private String rule(String name) {
    StopLabel label = name.startsWith("first: ") ? sheet.stops().get(name.substring(7)) : null;
    return label == null ? "the rule \"" + name + "\"" : label.who() + " first";
  }

  private void choice(int number, LateChoice choice) {
    String title =
        switch (choice.kind()) {
          case KEEP -> "Keep the order";
          case REORDER -> "Another order";
          case MOVE -> sheet.stops().get(choice.moved().orElseThrow()).who() + " to another day";
        };
    lines.add(number + ". " + title + (choice.recommended() ? " (recommended)" : ""));
    for (PlannedStop stop : choice.plan().stops()) {
      row(choice, stop);
    }
    sums(choice);
    tellings(choice);
  }

  private void row(LateChoice choice, PlannedStop stop) {
    boolean anchor = sheet.atAnchor(stop.visitId());
    switch (stop.kind()) {
      case LEAVE -> {
        if (sheet.anchor().isEmpty()) {
          line(stop.leaveSeconds(), "", "leave", "");
        }
      }
      case VISIT -> {
        if (anchor) {
          line(stop.leaveSeconds(), "", "leave", "");
        } else {
          String door = Integer.toString(sheet.numbers().get(stop.visitId()));
          String who = sheet.stops().get(stop.visitId()).who();
          line(stop.arriveSeconds(), door, who, promise(choice, stop.visitId()));
          if (stop.startSeconds() >= stop.arriveSeconds() + 60) {
            lines.add(" ".repeat(11) + "groom starts " + sheet.clock(stop.startSeconds()));
          }
        }
      }
      case BREAK -> {
        int minutes =
            choice.request().shift().breakRule().map(rule -> rule.lengthSeconds() / 60).orElse(0);
        int late = choice.lateness().breakLateSeconds();
        line(
            stop.startSeconds(),
            "",
            "break, " + minutes + " min",
            late > 0 ? late(late) + " after its time" : "");
      }
      case WATER -> line(stop.arriveSeconds(), "", "water", "");
      case HOME -> line(stop.arriveSeconds(), "", "home", overtime(choice));
    }
  }

  private void line(int seconds, String door, String what, String remark) {
    List<String> wrapped = Wrap.lines(what, TEXT_COLUMNS);
    String first = " %5s %2s  %-" + TEXT_COLUMNS + "s %s";
    lines.add(
        String.format(Locale.ROOT, first, sheet.clock(seconds), door, wrapped.get(0), remark)
            .stripTrailing());
    wrapped.stream().skip(1).forEach(more -> lines.add(" ".repeat(11) + more));
  }

  private String promise(LateChoice choice, String visitId) {
    Optional<PromiseKept> kept = kept(choice, visitId);
    if (kept.isEmpty()) {
      return "";
    }
    PromiseKept one = kept.get();
    boolean told = one.promise().kind() == Kind.TOLD;
    if (one.kept()) {
      return told ? "told " + spans(one.promise().windows()) + ", kept" : "";
    }
    return told
        ? "told " + spans(one.promise().windows()) + ", " + late(one.lateSeconds()) + " late"
        : late(one.lateSeconds()) + " later than asked for";
  }

  private static Optional<PromiseKept> kept(LateChoice choice, String visitId) {
    return choice.promises().stream()
        .filter(one -> one.promise().visitId().equals(visitId))
        .findFirst();
  }

  private static String late(int seconds) {
    return Amounts.minutesUp(seconds) + " min";
  }

  private String spans(List<TimeWindow> windows) {
    List<String> spans = new ArrayList<>();
    for (TimeWindow window : windows) {
      boolean open = window.toSeconds() == TimeWindow.DAY_END;
      spans.add(
          sheet.clock(window.fromSeconds()) + "-" + (open ? "" : sheet.clock(window.toSeconds())));
    }
    return String.join(", ", spans);
  }

  private String overtime(LateChoice choice) {
    if (choice.beyondOvertimeSeconds() > 0) {
      return late(choice.beyondOvertimeSeconds()) + " beyond the most overtime";
    }
    int after = choice.endSeconds() - sheet.shift().hours().toSeconds();
    return after > 0 ? late(after) + " overtime" : "";
  }

  private void sums(LateChoice choice) {
    long told = choice.promises().stream().filter(one -> one.promise().kind() == Kind.TOLD).count();
    int broken = choice.lateness().toldBroken();
    String kept = told == 0 ? "" : ", " + (told - broken) + " of " + told + " told times kept";
    String proof =
        choice.proven()
            ? choice.kind() == LateChoice.Kind.KEEP ? "" : "; no order can beat this"
            : "; not proven: a better rest may exist";
    wrap(" ", "Driving " + Amounts.spoken(choice.driveSeconds()) + kept + proof + ".");
  }

  /** What to tell whom: names and spans only. */
  private void tellings(LateChoice choice) {
    for (PromiseKept one : choice.promises()) {
      if (!one.kept()) {
        String was =
            (one.promise().kind() == Kind.TOLD ? "told " : "asked for ")
                + spans(one.promise().windows());
        String id = one.promise().visitId();
        wrap(" ", "> " + how(id) + ": now " + anew(sheet, choice, one) + " (" + was + ")");
      }
    }
    choice.moved().ifPresent(id -> wrap(" ", "> " + how(id) + ": ask for another day"));
    for (NoRoom reason : choice.leftOut()) {
      String id = reason.visitId();
      String why = NoRoomText.why(reason, shown(choice));
      wrap(" ", "> " + how(id) + ": no room any more today, ask for another day (" + why + ")");
    }
    for (String id : sheet.left()) {
      boolean waiting =
          !choice.order().contains(id)
              && choice.moved().filter(id::equals).isEmpty()
              && choice.leftOut().stream().noneMatch(one -> one.visitId().equals(id));
      if (waiting) {
        wrap(" ", "> " + how(id) + ": from the waiting list, not made today");
      }
    }
  }

  private PlannedDay shown(LateChoice choice) {
    return new PlannedDay(
        choice.plan(),
        sheet.groomer(),
        sheet.van(),
        sheet.places(),
        sheet.stops(),
        List.of(),
        choice.request().seed());
  }

  private String how(String visitId) {
    HowToTell tell = sheet.tell().get(visitId);
    String who = sheet.stops().get(visitId).client();
    if (tell == null) {
      return who;
    }
    return switch (tell) {
      case TEXT -> "Text " + who;
      case CALL -> "Call " + who;
      case NEIGHBOUR -> "Tell " + who + " through the neighbour";
      case NOBODY -> who + " (wants no message)";
    };
  }

  private void wrap(String indent, String text) {
    List<String> wrapped = Wrap.lines(text, COLUMNS - indent.length() - 2);
    lines.add(indent + wrapped.get(0));
    wrapped.stream().skip(1).forEach(more -> lines.add(indent + "  " + more));
  }

  /**
   * Spans told anew, for the notes of a plan.
   *
   * @param sheet the rest of a day
   * @param choice one of its choices
   * @return by visit id, only for what is broken
   */
  static Map<String, String> notes(LateSheet sheet, LateChoice choice) {
    Map<String, String> notes = new TreeMap<>();
    for (PromiseKept one : choice.promises()) {
      if (!one.kept()) {
        notes.put(
            one.promise().visitId(),
            late(one.lateSeconds()) + " late, tell " + anew(sheet, choice, one));
      }
    }
    return notes;
  }

  /** The span to tell instead of a broken one. */
  private static String anew(LateSheet sheet, LateChoice choice, PromiseKept one) {
    TimeWindow span = sheet.anew(choice, one.promise().visitId());
    return sheet.clock(span.fromSeconds()) + "-" + sheet.clock(span.toSeconds());
  }
}
