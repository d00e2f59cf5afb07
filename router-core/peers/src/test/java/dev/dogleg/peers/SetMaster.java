package dev.dogleg.peers;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The week as set partitioning over a pool that holds every set of every van-day: first the count,
 * then the cost with the count fixed. Linear programs by GLOP, whole numbers by SCIP with gap 0
 * (both of OR-Tools).
 *
 * <p>The linear program serves to leave away columns that no better answer can hold: with any
 * prices at all, the prices of the rows plus each day's cheapest column is a bound, and a column
 * that is dearer than its day's cheapest by more than what the bound leaves is in no better answer.
 * Its tolerances cannot make a wrong answer.
 */
final class SetMaster {
  private static final int FIRST_TRY = 500;
  private static final double ROUNDING = 1e-5;

  private final int bookings;
  private final List<DaySets> pool;

  /**
   * The best of the pool.
   *
   * @param leftOutCounted fewest counted bookings left out
   * @param costSixtieths least cost with so many
   * @param countBound what the linear program says of the count, in fractions
   * @param columns columns in the pool
   * @param chosen the columns taken
   * @param near the columns of the last whole-number program, those that a better answer might
   *     hold, likeliest first
   */
  record Best(
      int leftOutCounted,
      long costSixtieths,
      double countBound,
      int columns,
      List<Column> chosen,
      List<Column> near) {}

  /** A column: a set of a day, or (day -1) one booking left out. */
  record Column(int day, long set, long count, long cost) {}

  @SuppressWarnings("ArrayRecordComponent")
  private record Relaxed(double bound, double[] above) {}

  private record Answer(long cost, List<Column> chosen) {}

  private final List<Column> columns = new ArrayList<>();

  private SetMaster(WeekRequest week, List<DaySets> pool) {
    this.pool = pool;
    bookings = week.bookings().size();
    for (int b = 0; b < bookings; b++) {
      WeekBooking booking = week.bookings().get(b);
      columns.add(new Column(-1, 1L << b, booking.counted() ? 1 : 0, booking.leftOutSixtieths()));
    }
    for (DaySets sets : pool) {
      for (int k = 0; k < sets.size(); k++) {
        columns.add(new Column(sets.day(), sets.sets()[k], 0, sets.costs()[k]));
      }
    }
  }

  static Best solve(WeekRequest week, List<DaySets> pool) {
    return new SetMaster(week, pool).solve();
  }

  private Best solve() {
    Relaxed count = relax(-1);
    int fewest = (int) Math.ceil(count.bound - ROUNDING);
    while (true) {
      Relaxed cost = relax(fewest);
      int[] kept = cheapest(cost, FIRST_TRY);
      Answer found = whole(kept, fewest, Long.MAX_VALUE);
      if (found == null) {
        kept = upTo(count, fewest - count.bound + ROUNDING);
        found = whole(kept, fewest, Long.MAX_VALUE);
      }
      if (found != null) {
        int[] all = upTo(cost, found.cost - 1 - cost.bound + 0.5);
        Answer better = whole(all, fewest, found.cost);
        found = better == null ? found : better;
        return new Best(
            fewest, found.cost, count.bound, columns.size(), found.chosen, columnsOf(all, cost));
      }
      fewest++;
    }
  }

  private List<Column> columnsOf(int[] kept, Relaxed cost) {
    return Arrays.stream(kept)
        .boxed()
        .sorted(Comparator.comparingDouble(c -> cost.above[c]))
        .map(columns::get)
        .toList();
  }

  private int[] range() {
    return IntStream.range(0, columns.size()).toArray();
  }

  /** The columns least above their day's cheapest, and leaving out whatever must be. */
  private int[] cheapest(Relaxed relaxed, int most) {
    return IntStream.range(0, columns.size())
        .boxed()
        .sorted(
            Comparator.comparing((Integer c) -> columns.get(c).day >= 0)
                .thenComparing(c -> relaxed.above[c]))
        .limit(most)
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private int[] upTo(Relaxed relaxed, double most) {
    return IntStream.range(0, columns.size()).filter(c -> relaxed.above[c] <= most).toArray();
  }

  /** The linear program over the whole pool; a count of -1 asks for the least count. */
  private Relaxed relax(int count) {
    Program program = new Program("GLOP", range(), count, Long.MAX_VALUE);
    if (program.solver.solve() != MPSolver.ResultStatus.OPTIMAL) {
      throw new IllegalStateException("no linear program solved");
    }
    double[] price = new double[bookings];
    for (int b = 0; b < bookings; b++) {
      price[b] = program.cover[b].dualValue();
    }
    double countPrice = count < 0 ? 0 : program.counted.dualValue();
    program.solver.delete();
    double[] above = new double[columns.size()];
    double[] least = new double[pool.size()];
    double bound = countPrice * Math.max(0, count) + Arrays.stream(price).sum();
    for (int c = 0; c < above.length; c++) {
      Column column = columns.get(c);
      above[c] = (count < 0 ? column.count : column.cost) - countPrice * column.count;
      for (long rest = column.set; rest != 0; rest &= rest - 1) {
        above[c] -= price[Long.numberOfTrailingZeros(rest)];
      }
      if (column.day >= 0) {
        least[column.day] = Math.min(least[column.day], above[c]);
      } else if (above[c] < 0) {
        bound += above[c];
        above[c] = 0;
      }
    }
    for (int c = 0; c < above.length; c++) {
      int day = columns.get(c).day;
      above[c] -= day < 0 ? 0 : least[day];
    }
    return new Relaxed(bound + Arrays.stream(least).sum(), above);
  }

  /** Least cost below a limit with the count given, in whole numbers; null where there is none. */
  private Answer whole(int[] kept, int count, long below) {
    Program program = new Program("SCIP", kept, count, below);
    MPSolverParameters exact = new MPSolverParameters();
    exact.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
    MPSolver.ResultStatus status = program.solver.solve(exact);
    Answer answer = null;
    if (status == MPSolver.ResultStatus.OPTIMAL) {
      answer = program.inWholeNumbers(count);
    } else if (status != MPSolver.ResultStatus.INFEASIBLE) {
      throw new IllegalStateException("not solved: " + status);
    }
    program.solver.delete();
    return answer;
  }

  private final class Program {
    private final int[] kept;
    private final MPSolver solver;
    private final MPVariable[] used;
    private final MPConstraint[] cover = new MPConstraint[bookings];
    private final MPConstraint counted;

    Program(String name, int[] kept, int count, long below) {
      this.kept = kept;
      solver = MPSolver.createSolver(name);
      for (int b = 0; b < bookings; b++) {
        cover[b] = solver.makeConstraint(1, 1);
      }
      MPConstraint[] days = new MPConstraint[pool.size()];
      for (int d = 0; d < days.length; d++) {
        days[d] = solver.makeConstraint(0, 1);
      }
      counted =
          solver.makeConstraint((double) Math.max(0, count), count < 0 ? bookings : (double) count);
      MPConstraint better = below == Long.MAX_VALUE ? null : solver.makeConstraint(0, below - 1.0);
      MPObjective objective = solver.objective();
      objective.setMinimization();
      used =
          name.equals("GLOP")
              ? solver.makeNumVarArray(kept.length, 0, MPSolver.infinity())
              : solver.makeBoolVarArray(kept.length);
      for (int k = 0; k < kept.length; k++) {
        Column column = columns.get(kept[k]);
        for (long rest = column.set; rest != 0; rest &= rest - 1) {
          cover[Long.numberOfTrailingZeros(rest)].setCoefficient(used[k], 1);
        }
        if (column.day >= 0) {
          days[column.day].setCoefficient(used[k], 1);
        }
        counted.setCoefficient(used[k], (double) column.count);
        double value = count < 0 ? column.count : column.cost;
        objective.setCoefficient(used[k], value);
        if (better != null) {
          better.setCoefficient(used[k], value);
        }
      }
    }

    Answer inWholeNumbers(int count) {
      long covered = 0;
      long days = 0;
      long left = 0;
      long cost = 0;
      List<Column> chosen = new ArrayList<>();
      for (int k = 0; k < kept.length; k++) {
        if (used[k].solutionValue() > 0.5) {
          Column column = columns.get(kept[k]);
          long day = column.day < 0 ? 0 : 1L << column.day;
          if ((covered & column.set) != 0 || (days & day) != 0) {
            throw new IllegalStateException("served twice");
          }
          covered |= column.set;
          days |= day;
          left += column.count;
          cost += column.cost;
          chosen.add(column);
        }
      }
      if (Long.bitCount(covered) != bookings || left != count) {
        throw new IllegalStateException("the program's answer does not hold");
      }
      return new Answer(cost, chosen);
    }
  }
}
