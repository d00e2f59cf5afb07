package dev.dogleg.schedule;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.travel.TravelTimes;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One day as timing and planner compute on it: its doors, its legs, its shift and its prices.
 *
 * <p>Visits are numbered 0..n-1 <i>in id order</i>, so that nothing depends on the order of the
 * input; {@link #start()} = n is the start place, {@link #end()} = n+1 the end place. Immutable;
 * the arrays are not handed out.
 *
 * <p>Maintainers: times are any {@code int}, not only those of {@link TimeWindow}, and the price of
 * a driven second is a field, so that published benchmarks with finer units are days too.
 */
public final class DayModel {
  final DayDoors doors;
  final TravelTimes travel;
  final DayTerms terms;
  private final ShiftTimes times;
  private final DayPrices prices;
  private final DayLegs legs;
  private final StepTerms steps;

  private DayModel(
      TravelTimes travel,
      DayDoors doors,
      ShiftTimes times,
      DayTerms terms,
      DayPrices prices,
      DayLegs legs) {
    this.travel = travel;
    this.doors = doors;
    this.times = times;
    this.terms = terms;
    this.prices = prices;
    this.legs = legs;
    steps = new StepTerms(this, prices);
  }

  /**
   * A plain day in any unit of time, as published benchmarks have it: place 0 is the start, places
   * 1..n are booked visits without service, one arrival window each; waiting is free.
   *
   * @param travel travel times
   * @param open for each visit the first instant of its window
   * @param close for each visit the last instant of its window
   * @param endPlace place reached at the end
   * @param from earliest leaving of the start place
   * @param latestEnd last instant at the end place
   * @param drivePrice price of a unit of driving
   * @param endPrice price of a unit by which the day ends later
   * @return the day
   */
  public static DayModel plain(
      TravelTimes travel,
      int[] open,
      int[] close,
      int endPlace,
      int from,
      int latestEnd,
      long drivePrice,
      long endPrice) {
    DayDoors doors = DayDoors.plain(open, close, endPlace, from, latestEnd);
    return new DayModel(
        travel,
        doors,
        ShiftTimes.plain(from, latestEnd),
        DayTerms.NONE,
        DayPrices.plain(drivePrice, endPrice),
        new DayLegs(new LegMemory(travel, from, latestEnd), doors.place, 0));
  }

  /** The same day with other prices: every price times {@code scale}, and one more per second. */
  private DayModel priced(long scale, long perSecond, int latestEnd) {
    return new DayModel(
        travel,
        scale == 1 ? doors : doors.priced(scale),
        times.endingBy(latestEnd),
        terms,
        prices.times(scale, perSecond),
        legs.priced(scale));
  }

  /**
   * The same day with some of its visits, which share what the legs have remembered.
   *
   * @param visits numbers of visits, rising; visit k of the part is {@code visits[k]}
   * @return the day; its {@link #requestIndex} is that of the whole
   */
  public DayModel part(int[] visits) {
    int n = size();
    int others = doors.place.length - n;
    int[] nodes = Arrays.copyOf(visits, visits.length + others);
    for (int k = 0; k < others; k++) {
      nodes[visits.length + k] = n + k;
    }
    return new DayModel(travel, doors.part(visits, terms), times, terms, prices, legs.part(nodes));
  }

  /**
   * The day of a request.
   *
   * @param request the request
   * @return its model
   */
  public static DayModel of(DayRequest request) {
    return of(request, LegMemory.of(request.travel(), request.shift()));
  }

  /**
   * The day of a request that shares what is known of its legs.
   *
   * @param request the request
   * @param memory legs of the same travel times over a span that holds the request's shift
   * @return its model
   * @throws IllegalArgumentException where the memory does not speak of such a day
   */
  public static DayModel of(DayRequest request, LegMemory memory) {
    List<Visit> given = request.visits();
    int[] order =
        IntStream.range(0, given.size())
            .boxed()
            .sorted(Comparator.comparing(index -> given.get(index).id()))
            .mapToInt(Integer::intValue)
            .toArray();
    DayShift shift = request.shift();
    DayTerms terms = request.terms();
    ShiftTimes times = ShiftTimes.of(shift);
    if (!memory.speaksOf(request.travel(), times.from(), times.latestEnd())) {
      throw new IllegalArgumentException("legs of other travel times, or of a shorter day");
    }
    DayDoors doors = DayDoors.of(given, order, shift.startPlace(), shift.endPlace(), terms);
    return new DayModel(
        request.travel(),
        doors,
        times,
        terms,
        DayPrices.of(request.prices(), terms),
        new DayLegs(memory, doors.place, request.prices().kilometreSeconds()));
  }

  /**
   * The same day priced so that of two timings of equal cost the one of less driving and waiting is
   * cheaper: {@code cost * scale + seconds}.
   *
   * @return the day; {@link #tieScale()} is its scale
   */
  DayModel withTies() {
    return priced(tieScale(), 1, latestEnd());
  }

  /** {@return the same day with nothing priced: only what is possible matters} */
  public DayModel free() {
    return priced(0, 0, latestEnd());
  }

  /**
   * The same day with one price only.
   *
   * @param perSecond price of a driven and of a waited second
   * @return the day
   */
  public DayModel drivingAt(int perSecond) {
    return priced(0, perSecond, latestEnd());
  }

  /**
   * The same day with an earlier latest end.
   *
   * @param latest last second at which the end place may be reached, not after the day's own
   * @return the day
   */
  public DayModel endingBy(int latest) {
    return priced(1, 0, latest);
  }

  /** {@return more than the driven and waited seconds of any day} */
  long tieScale() {
    return (long) latestEnd() - from() + 1;
  }

  /** {@return what the day's terms say of steps} */
  public StepTerms steps() {
    return steps;
  }

  /** {@return number of water places; their nodes follow the end place's} */
  public int waterPlaces() {
    return doors.place.length - doors.size - 2;
  }

  /**
   * A water place.
   *
   * @param number 0..waterPlaces-1, in the order of the terms
   * @return its node
   */
  public int waterNode(int number) {
    return doors.size + 2 + number;
  }

  /** {@return number of visits} */
  public int size() {
    return doors.size;
  }

  /** {@return node number of the start place} */
  public int start() {
    return doors.size;
  }

  /** {@return node number of the end place} */
  public int end() {
    return doors.size + 1;
  }

  /**
   * A visit.
   *
   * @param visit 0..n-1
   * @return the visit of that number, in id order
   */
  public Visit visit(int visit) {
    return doors.visits.get(visit);
  }

  /**
   * Where a visit stood in the request.
   *
   * @param visit 0..n-1
   * @return index into the request's list
   */
  public int requestIndex(int visit) {
    return doors.requestIndex[visit];
  }

  /** {@return earliest leaving of the start place} */
  public int from() {
    return times.from();
  }

  /** {@return last second at which the end place may be reached} */
  public int latestEnd() {
    return times.latestEnd();
  }

  /** {@return whether the shift has a break} */
  public boolean hasBreak() {
    return times.breakLength() > 0;
  }

  /** {@return length of the break; 0 where there is none} */
  public int breakLength() {
    return times.breakLength();
  }

  /** {@return earliest start of the break} */
  public int breakFrom() {
    return times.breakFrom();
  }

  /** {@return latest start of the break} */
  int breakTo() {
    return times.breakTo();
  }

  /** {@return end of the shift, from which overtime counts} */
  int to() {
    return times.to();
  }

  /**
   * Service at a visit or a water place.
   *
   * @param visit 0..n-1, or the node of a water place
   * @return its least seconds, wherever in the day it stands
   */
  public int service(int visit) {
    return doors.service[visit];
  }

  /** {@return whether visit 0..n-1 must be the first of the day} */
  public boolean first(int visit) {
    return doors.first[visit];
  }

  /**
   * Last second at which a door may be reached, and the service begun and ended in time.
   *
   * @param visit 0..n-1
   * @return the least of what the arrival windows, done-by and van-within allow
   */
  public int latestArrival(int visit) {
    return doors.latestArrival(visit);
  }

  /**
   * First second at which a visit's service may start.
   *
   * @param visit 0..n-1
   * @return the later of the first arrival window and the first van window
   */
  public int earliestService(int visit) {
    return doors.earliestService(visit);
  }

  /**
   * Last second at which a door may be left.
   *
   * @param visit 0..n-1
   * @return end of the last van window
   */
  public int latestLeave(int visit) {
    return doors.latestLeave(visit);
  }

  /**
   * Every way to arrive at a visit's door.
   *
   * @param visit 0..n-1
   * @return its gates, at least those that keep no liked hour; prices at the day's scale
   */
  public List<DoorGate> gates(int visit) {
    return Arrays.stream(doors.ways[visit]).flatMap(way -> way.gates().stream()).toList();
  }

  /**
   * Whether a road leads from one node to another.
   *
   * @param i node left
   * @param j node reached
   * @return false where none does
   */
  public boolean reaches(int i, int j) {
    return travel.reaches(doors.place[i], doors.place[j]);
  }

  /**
   * Duration of a leg.
   *
   * @param i node left
   * @param j node reached
   * @param leave leaving time
   * @return seconds
   */
  public int drive(int i, int j, int leave) {
    return legs.spans(i, j).drive(leave);
  }

  /**
   * How long a leg's duration stays as it is.
   *
   * @param i node left
   * @param j node reached
   * @param leave leaving time
   * @return last leaving time of that duration, as {@link TravelTimes#steadyUntil}
   */
  public int steadyUntil(int i, int j, int leave) {
    return legs.spans(i, j).steadyUntil(leave);
  }

  /** A leg seen roughly; a road must lead there. */
  LegCells cells(int i, int j) {
    return legs.cells(i, j);
  }

  /**
   * Least duration of a leg over the whole day.
   *
   * @param i node left
   * @param j node reached
   * @return seconds, a lower bound; 0 where no road leads
   */
  public int leastDrive(int i, int j) {
    return legs.least(i, j);
  }

  /**
   * Least duration of a leg over a span of leaving times.
   *
   * @param i node left
   * @param j node reached
   * @param earliest first leaving time
   * @param latest last leaving time
   * @return seconds, a lower bound
   */
  public int leastDrive(int i, int j, int earliest, int latest) {
    return travel.leastDriveSeconds(doors.place[i], doors.place[j], earliest, latest);
  }

  /**
   * Price of a leg's kilometres.
   *
   * @param i node left
   * @param j node reached
   * @return sixtieths
   */
  public long legPrice(int i, int j) {
    return legs.price(i, j);
  }

  /** {@return price of one driven second, in sixtieths} */
  public long drivePrice() {
    return prices.driven();
  }

  /** {@return price of one waited second, in sixtieths} */
  public long waitPrice() {
    return prices.waited();
  }

  /**
   * Price of ending the day at a time.
   *
   * @param end arrival at the end place
   * @return sixtieths for overtime and for the end itself; never falls as {@code end} rises
   */
  public long endCost(int end) {
    long cost = prices.overtime() * Math.max(0, end - to()) + prices.end() * (end - from());
    return prices.late() == 0 ? cost : cost + prices.late() * Math.max(0, end - prices.lateFrom());
  }

  /** {@return seconds at which the price of a later end rises, besides {@link #to}; or -1} */
  int dearerEndFrom() {
    return prices.late() == 0 ? -1 : prices.lateFrom();
  }
}
