package dev.dogleg.peers;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;

/**
 * {@code docs/TIMING.md} once more, as constraints over a circuit; for days without traffic. A
 * third reading that shares no code with planner or audit.
 */
final class ConstraintDay {
  private static final long BOOKED = 1L << 40;

  private final DayRequest request;
  private final DayShift shift;
  private final int n;
  private final CpModel model = new CpModel();
  private final CircuitConstraint circuit = model.addCircuit();
  private final LinearExprBuilder cost = LinearExpr.newBuilder();
  private final LinearExprBuilder waiting = LinearExpr.newBuilder();
  private final IntVar leaveHome;
  private final IntVar end;
  private final IntVar breakStart;
  private final List<Literal> breaks = new ArrayList<>();
  private final List<IntVar> arrive = new ArrayList<>();
  private final List<IntVar> leave = new ArrayList<>();
  private final List<BoolVar> skipped = new ArrayList<>();
  private final List<BoolVar> asFirst = new ArrayList<>();
  private final List<BoolVar> asLast = new ArrayList<>();
  private long value;

  ConstraintDay(DayRequest request) {
    this.request = request;
    shift = request.shift();
    n = request.visits().size();
    leaveHome = time("leave");
    end = time("end");
    breakStart = model.newIntVar(0, TimeWindow.DAY_END, "break");
    waiting.addTerm(end, 1).addTerm(leaveHome, -1);
    for (int i = 0; i < n; i++) {
      arrive.add(time("arrive" + i));
      leave.add(time("leave" + i));
      skipped.add(model.newBoolVar("skip" + i));
      asFirst.add(model.newBoolVar("first" + i));
      asLast.add(model.newBoolVar("last" + i));
    }
    legs();
    for (int i = 0; i < n; i++) {
      stop(i, request.visits().get(i));
    }
    breakNeeded();
    prices();
  }

  private IntVar time(String name) {
    return model.newIntVar(shift.hours().fromSeconds(), shift.latestEndSeconds(), name);
  }

  private void legs() {
    BoolVar idle = model.newBoolVar("idle");
    circuit.addArc(n, n, idle);
    model.addEquality(end, shift.hours().fromSeconds()).onlyEnforceIf(idle);
    model.addEquality(leaveHome, shift.hours().fromSeconds()).onlyEnforceIf(idle);
    for (int i = 0; i < n; i++) {
      int place = request.visits().get(i).place();
      circuit.addArc(i, i, skipped.get(i));
      circuit.addArc(n, i, asFirst.get(i));
      leg(asFirst.get(i), shift.startPlace(), place, leaveHome, arrive.get(i));
      circuit.addArc(i, n, asLast.get(i));
      leg(asLast.get(i), place, shift.endPlace(), leave.get(i), end);
      for (int j = 0; j < n; j++) {
        if (i != j) {
          BoolVar arc = model.newBoolVar("leg" + i + "_" + j);
          circuit.addArc(i, j, arc);
          leg(arc, place, request.visits().get(j).place(), leave.get(i), arrive.get(j));
        }
      }
    }
  }

  private void leg(Literal arc, int from, int to, IntVar left, IntVar reached) {
    if (!request.travel().reaches(from, to)) {
      model.addEquality(arc, 0);
      return;
    }
    int drive = request.travel().driveSeconds(from, to, 0);
    long metres = request.travel().lengthMetres(from, to);
    long kilometres = Math.floorDiv(metres * request.prices().kilometreSeconds() * 60 + 500, 1000);
    model
        .addEquality(reached, LinearExpr.newBuilder().addTerm(left, 1).add(drive))
        .onlyEnforceIf(arc);
    cost.addTerm(arc, 60L * drive + kilometres);
    waiting.addTerm(arc, -drive);
  }

  private void stop(int i, Visit visit) {
    Literal served = skipped.get(i).not();
    int service = visit.serviceSeconds();
    IntVar start = time("start" + i);
    model.addGreaterOrEqual(start, arrive.get(i)).onlyEnforceIf(served);
    LinearExprBuilder done = LinearExpr.newBuilder().addTerm(start, 1).add(service);
    model.addLessOrEqual(done, visit.doneBySeconds()).onlyEnforceIf(served);
    model.addLessOrEqual(done, leave.get(i)).onlyEnforceIf(served);
    waiting.addTerm(served, -service);
    List<Literal> windows = new ArrayList<>(List.of(skipped.get(i)));
    for (TimeWindow window : visit.arriveWithin()) {
      BoolVar chosen = model.newBoolVar("window");
      model.addLessOrEqual(arrive.get(i), window.toSeconds()).onlyEnforceIf(chosen);
      model.addGreaterOrEqual(start, window.fromSeconds()).onlyEnforceIf(chosen);
      windows.add(chosen);
    }
    model.addExactlyOne(windows);
    List<Literal> stays = new ArrayList<>(List.of(skipped.get(i)));
    for (TimeWindow window : visit.vanWithin()) {
      BoolVar chosen = model.newBoolVar("van");
      model.addGreaterOrEqual(arrive.get(i), window.fromSeconds()).onlyEnforceIf(chosen);
      model.addLessOrEqual(leave.get(i), window.toSeconds()).onlyEnforceIf(chosen);
      stays.add(chosen);
    }
    model.addExactlyOne(stays);
    if (visit.first()) {
      model.addBoolOr(List.of(skipped.get(i), asFirst.get(i)));
    }
    shift.breakRule().ifPresent(rule -> breakAt(i, rule, start, done, served));
  }

  private void breakAt(
      int i, BreakRule rule, IntVar start, LinearExprBuilder done, Literal served) {
    LinearExprBuilder over =
        LinearExpr.newBuilder().addTerm(breakStart, 1).add(rule.lengthSeconds());
    BoolVar before = model.newBoolVar("before" + i);
    model.addImplication(before, served);
    model.addImplication(before, asFirst.get(i).not());
    model.addGreaterOrEqual(breakStart, arrive.get(i)).onlyEnforceIf(before);
    model.addLessOrEqual(over, start).onlyEnforceIf(before);
    BoolVar after = model.newBoolVar("after" + i);
    model.addImplication(after, served);
    model.addImplication(after, asLast.get(i).not());
    model.addGreaterOrEqual(breakStart, done).onlyEnforceIf(after);
    model.addLessOrEqual(over, leave.get(i)).onlyEnforceIf(after);
    breaks.add(before);
    breaks.add(after);
  }

  private void breakNeeded() {
    if (shift.breakRule().isEmpty()) {
      return;
    }
    BreakRule rule = shift.breakRule().orElseThrow();
    BoolVar taken = model.newBoolVar("taken");
    LinearExprBuilder count = LinearExpr.newBuilder();
    breaks.forEach(place -> count.addTerm(place, 1));
    model.addEquality(count, taken);
    model
        .addLinearConstraint(
            breakStart, rule.startWithin().fromSeconds(), rule.startWithin().toSeconds())
        .onlyEnforceIf(taken);
    BoolVar several = model.newBoolVar("several");
    LinearExprBuilder served = LinearExpr.newBuilder();
    skipped.forEach(skip -> served.addTerm(skip.not(), 1));
    model.addGreaterOrEqual(served, 2).onlyEnforceIf(several);
    model.addLessOrEqual(served, 1).onlyEnforceIf(several.not());
    model.addImplication(taken, several);
    model
        .addLessOrEqual(end, rule.startWithin().fromSeconds())
        .onlyEnforceIf(new Literal[] {several, taken.not()});
    waiting.addTerm(taken, -rule.lengthSeconds());
  }

  private void prices() {
    Prices prices = request.prices();
    IntVar waited = model.newIntVar(0, TimeWindow.DAY_END, "waited");
    model.addEquality(waited, waiting);
    IntVar overtime = model.newIntVar(0, TimeWindow.DAY_END, "overtime");
    model.addGreaterOrEqual(
        overtime, LinearExpr.newBuilder().addTerm(end, 1).add(-shift.hours().toSeconds()));
    cost.addTerm(waited, prices.waitingMinuteSeconds());
    cost.addTerm(overtime, prices.overtimeMinuteSeconds());
    cost.addTerm(end, prices.endMinuteSeconds());
    cost.add(-(long) prices.endMinuteSeconds() * shift.hours().fromSeconds());
    for (int i = 0; i < n; i++) {
      Visit visit = request.visits().get(i);
      cost.addTerm(skipped.get(i), visit.booked() ? BOOKED : visit.leftOutSixtieths());
    }
    model.minimize(cost);
  }

  /** Solves to proven optimality with one worker. */
  void solve() {
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(1).setRandomSeed(1);
    CpSolverStatus status = solver.solve(model);
    if (status != CpSolverStatus.OPTIMAL) {
      throw new IllegalStateException("not proven: " + status);
    }
    value = Math.round(solver.objectiveValue());
  }

  long leftOutBooked() {
    return value / BOOKED;
  }

  long cost() {
    return value % BOOKED;
  }
}
