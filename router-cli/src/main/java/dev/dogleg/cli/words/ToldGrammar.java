package dev.dogleg.cli.words;

import dev.dogleg.fault.Severity;
import dev.dogleg.model.ToldTime;
import dev.dogleg.model.WallSpan;
import dev.dogleg.model.When;
import dev.dogleg.model.WhenChoice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a told time: one span for arrival, {@code 10:00-11:00}. */
public final class ToldGrammar {
  private static final String EXPECTED = "one span for arrival like 10:00-11:00 was expected";

  private ToldGrammar() {}

  /**
   * Reads a cell. What cannot be read stops the run: somebody was told something.
   *
   * @param cell its text, not blank
   * @param usual hours usually worked
   * @return the told time; code {@code bad-told-time} and the codes of {@link WhenGrammar}, all
   *     stopping the run but for notes
   */
  public static Reading<ToldTime> read(String cell, WallSpan usual) {
    Reading<When> read = WhenGrammar.read(cell, usual);
    List<Remark> remarks = new ArrayList<>();
    for (Remark remark : read.remarks()) {
      Severity severity = remark.severity() == Severity.ASIDE ? Severity.STOP : remark.severity();
      remarks.add(new Remark(remark.code(), severity, remark.expected(), remark.hint()));
    }
    if (read.value().isEmpty()) {
      return new Reading<>(Optional.empty(), remarks);
    }
    List<WhenChoice> choices = read.value().get().choices();
    WhenChoice only = choices.get(0);
    boolean plain =
        choices.size() == 1
            && only.days().isEmpty()
            && only.doneByWallSeconds() == WallSpan.OPEN
            && only.vanWithin().equals(WhenChoice.ANY.vanWithin())
            && !only.first()
            && only.arriveWithin().toSeconds() != WallSpan.OPEN;
    return plain
        ? new Reading<>(Optional.of(new ToldTime(only.arriveWithin())), remarks)
        : Reading.none(new Remark("bad-told-time", Severity.STOP, EXPECTED, ""));
  }
}
