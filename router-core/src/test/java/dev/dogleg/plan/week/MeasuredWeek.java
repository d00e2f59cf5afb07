package dev.dogleg.plan.week;

import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;

/**
 * One planned week and what it took: clock, processor seconds of the whole process (all threads,
 * compiler and collector included), heap.
 *
 * <p>Heap is the sum of the greatest use of each heap pool since just before the week, so it holds
 * garbage not yet collected: never too small, and the larger the more heap is given.
 */
final class MeasuredWeek {
  /** A moment: seconds since the start on the clock and of the processor. */
  record Moment(double clock, double processor) {}

  private record Better(Moment at, int leftOut, long cost, int leftOutBound, long costBound) {}

  private final WeekPlan plan;
  private final List<Better> course;
  private final Moment searched;
  private final Moment end;
  private final long heapBytes;

  private MeasuredWeek(
      WeekPlan plan, List<Better> course, Moment searched, Moment end, long heapBytes) {
    this.plan = plan;
    this.course = List.copyOf(course);
    this.searched = searched;
    this.end = end;
    this.heapBytes = heapBytes;
  }

  /**
   * Plans a week.
   *
   * @param week the week
   * @param processorSeconds after so many processor seconds it is stopped
   */
  static MeasuredWeek of(WeekRequest week, double processorSeconds) {
    System.gc();
    heapPools().forEach(MemoryPoolMXBean::resetPeakUsage);
    Stopwatch watch = new Stopwatch();
    List<Better> course = new ArrayList<>();
    AtomicReference<Moment> heard = new AtomicReference<>(new Moment(0, 0));
    WeekPlan plan =
        WeekPlanner.plan(
            week,
            (leftOut, cost, leftOutBound, costBound, steps) -> {
              Moment now = watch.now();
              course.add(new Better(now, leftOut, cost, leftOutBound, costBound));
              heard.set(now);
            },
            () -> {
              Moment now = watch.now();
              heard.set(now);
              return now.processor() > processorSeconds;
            });
    Moment end = watch.now();
    long heap = heapPools().stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
    return new MeasuredWeek(plan, course, heard.get(), end, heap);
  }

  private static List<MemoryPoolMXBean> heapPools() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(pool -> pool.getType() == MemoryType.HEAP)
        .toList();
  }

  private static final class Stopwatch {
    private final long startNanos = System.nanoTime();
    private final long startProcessor = processorNanos();

    Moment now() {
      return new Moment(
          (System.nanoTime() - startNanos) / 1e9, (processorNanos() - startProcessor) / 1e9);
    }

    private static long processorNanos() {
      return ((com.sun.management.OperatingSystemMXBean)
              ManagementFactory.getOperatingSystemMXBean())
          .getProcessCpuTime();
    }
  }

  WeekPlan plan() {
    return plan;
  }

  boolean proven() {
    return plan.proof().kind() == Proof.Kind.PROVEN_BEST;
  }

  /** {@return when the plan was handed over, with its reasons} */
  Moment end() {
    return end;
  }

  /** {@return the first week told} */
  Moment first() {
    return course.stream().findFirst().map(Better::at).orElse(end);
  }

  /**
   * {@return the first week told that leaves out as many as the last and costs at most 1 % more}
   */
  Moment withinOnePercent() {
    return course.stream()
        .filter(
            better ->
                better.leftOut == plan.leftOutCounted()
                    && better.cost * 100 <= plan.costSixtieths() * 101)
        .findFirst()
        .map(Better::at)
        .orElse(end);
  }

  /**
   * {@return when the planner last asked whether to stop or told of something better: about the end
   * of search and proof; what follows are orders, times and reasons}
   */
  Moment searched() {
    return searched;
  }

  /** {@return the first bound on the cost told under the last bound on the number; 0: none} */
  long firstCostBound() {
    return course.stream()
        .filter(better -> better.leftOutBound == plan.proof().leftOutBound())
        .mapToLong(Better::costBound)
        .filter(bound -> bound > 0)
        .findFirst()
        .orElse(0);
  }

  /** {@return whether as many are left out as the bound says, and the bound of the cost speaks} */
  boolean hasGap() {
    return plan.leftOutCounted() == plan.proof().leftOutBound() && plan.proof().costBound() > 0;
  }

  /** {@return how far the cost can be above the least, in percent of the cost} */
  double gapPercent() {
    long cost = plan.costSixtieths();
    return cost == 0 ? 0 : 100.0 * (cost - Math.min(cost, plan.proof().costBound())) / cost;
  }

  double heapMegabytes() {
    return heapBytes / 1e6;
  }

  /** {@return visits served, for each van-day of the week} */
  double doorsADay() {
    return (double) stops(PlannedStop.Kind.VISIT) / plan.days().size();
  }

  /** {@return water stops of the week} */
  long waterStops() {
    return stops(PlannedStop.Kind.WATER);
  }

  /** {@return minutes of drive for each visit, ways home included} */
  double driveMinutesADoor() {
    long seconds =
        plan.days().stream()
            .flatMap(day -> day.stops().stream())
            .mapToLong(PlannedStop::driveSeconds)
            .sum();
    return seconds / 60.0 / Math.max(1, stops(PlannedStop.Kind.VISIT));
  }

  private long stops(PlannedStop.Kind kind) {
    return plan.days().stream()
        .flatMap(day -> day.stops().stream())
        .filter(stop -> stop.kind() == kind)
        .count();
  }
}
