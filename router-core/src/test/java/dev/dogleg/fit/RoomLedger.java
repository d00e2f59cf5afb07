package dev.dogleg.fit;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.BenchmarkPage;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Times whole tables of room ahead and writes them into docs/BENCHMARKS.md: a minute. */
public final class RoomLedger {
  private static final int WEEKS = Integer.getInteger("dogleg.room.weeks", 6);
  private static final int DOORS = Integer.getInteger("dogleg.room.doors", 30);

  /** Minutes of kinds of client, small to heavy coat, as the starter tables have them roughly. */
  private static final int[] KIND_MINUTES = {110, 135, 180, 215, 225};

  private RoomLedger() {}

  /**
   * Runs.
   *
   * @param args none
   * @throws Exception where the page cannot be written
   */
  public static void main(String[] args) throws Exception {
    StringBuilder rows = new StringBuilder();
    for (int planned : List.of(30, 20, 10)) {
      rows.append(row(planned));
    }
    String text =
        "Command: `java -cp router-core/target/classes:router-core/target/test-classes:LIBS"
            + " -Ddogleg.root=. -Ddogleg.room.weeks="
            + WEEKS
            + " dev.dogleg.fit.RoomLedger`\n`RoomAhead.of` as a library call, the planned days"
            + " planned once more in it: weeks of `QuestionWeeks` (one van, traffic, a third told"
            + " an hour), seeds 1.."
            + WEEKS
            + ", with 30 bookings, which nearly fill a week, and fewer; "
            + KIND_MINUTES.length
            + " kinds of client ("
            + KIND_MINUTES[0]
            + " to "
            + KIND_MINUTES[KIND_MINUTES.length - 1]
            + " minutes) at each of "
            + DOORS
            + " doors of one zone, an hour told by quarter hours and kept in 95 of 100 (starter's"
            + " spread of days, grooms as planned), five minutes of margin, second"
            + " round. "
            + BenchmarkPage.machine()
            + "\n\n| bookings | tables | cells | with a time to tell | median s a table | slowest s |\n"
            + "|---|---|---|---|---|---|\n"
            + rows;
    BenchmarkPage.write("Room ahead", text);
    System.out.println(text);
  }

  private static String row(int planned) {
    List<Double> seconds = new ArrayList<>();
    int cells = 0;
    int open = 0;
    for (int round = 0; round < 2; round++) {
      for (int seed = 1; seed <= WEEKS; seed++) {
        QuestionWeeks questions = QuestionWeeks.of(seed, DOORS, planned);
        Table table = table(questions);
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        RoomAhead answer =
            RoomAhead.of(table.week, questions.placed(), table.question, number -> {});
        double took = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e9;
        if (round == 1) {
          seconds.add(took);
          cells += answer.rooms().size();
          open += (int) answer.rooms().stream().filter(room -> !room.spans().isEmpty()).count();
        }
      }
    }
    seconds.sort(null);
    return "| %d | %d | %d | %d | %.1f | %.1f |\n"
        .formatted(
            planned,
            seconds.size(),
            cells,
            open,
            seconds.get(seconds.size() / 2),
            seconds.get(seconds.size() - 1));
  }

  private record Table(WeekRequest week, RoomQuestion question) {}

  /** The newcomers' doors, each asked for by every kind, on every day and at any hour. */
  private static Table table(QuestionWeeks questions) {
    WeekRequest week = questions.week();
    List<WeekBooking> all = new ArrayList<>(week.bookings());
    List<RoomAsk> asks = new ArrayList<>();
    for (int minutes : KIND_MINUTES) {
      List<WeekBooking> doors = new ArrayList<>();
      for (WeekBooking newcomer : questions.newcomers()) {
        String id = newcomer.id() + "-" + minutes;
        List<DayChoice> choices = new ArrayList<>();
        for (int day = 0; day < week.days().size(); day++) {
          choices.add(
              new DayChoice(
                  day,
                  Visit.booked(id, newcomer.choices().get(0).visit().place(), 60 * minutes),
                  0));
        }
        doors.add(new WeekBooking(id, true, 0, choices));
      }
      all.addAll(doors);
      asks.add(new RoomAsk("everywhere", minutes + " min", doors));
    }
    return new Table(
        new WeekRequest(week.days(), all, week.prices(), week.seed(), week.effort()),
        new RoomQuestion(
            asks, 3_600, 900, 300, false, OptionalInt.of(950), DayRequest.USUAL_EFFORT));
  }
}
