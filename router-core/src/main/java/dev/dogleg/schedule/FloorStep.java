package dev.dogleg.schedule;

/**
 * Carries lower bounds on the rest of a day backwards over one stop, one break, one leg.
 *
 * <p>Maintainers: legs are seen as {@link LegCells}. A door may always be waited at, and its van
 * windows count only by their ends: both make the day easier, so bounds hold. Whoever really
 * arrives later could arrive earlier and wait; where waiting costs more than driving, the
 * difference is taken off a cell. Mutable scratch; one thread.
 */
public final class FloorStep {
  private final DayModel day;
  private final long wait;
  private final long dearerWait;
  private long near;
  private final CostFloor shifted = new CostFloor(32);
  private final CostFloor turned = new CostFloor(32);
  private final CostFloor homeBy = new CostFloor(3);
  private final CostFloor way = new CostFloor(32);
  private final CostFloor other = new CostFloor(32);
  private final CostFloor both = new CostFloor(32);

  /**
   * Steps of one day.
   *
   * @param day the day
   * @param near flat pieces that differ by at most this much become one
   */
  public FloorStep(DayModel day, long near) {
    this.day = day;
    this.near = near;
    wait = day.waitPrice();
    dearerWait = Math.max(0, wait - day.drivePrice());
  }

  /** From now on flat pieces that differ by at most {@code most} are one. */
  void join(long most) {
    near = most;
  }

  /**
   * Bound of leaving a door for the end place.
   *
   * @param i door left
   * @param endBy last second at the end place
   * @param first first second of leaving
   * @param last last second of leaving
   * @param out receives the bound
   */
  public void home(int i, int endBy, int first, int last, CostFloor out) {
    homeBy.clear();
    int late = day.dearerEndFrom();
    homeUntil(Math.min(day.to(), late < 0 ? day.to() : late), endBy);
    homeUntil(Math.max(day.to(), late), endBy);
    long rate = day.endCost(endBy) - day.endCost(endBy - 1);
    homeBy.add(endBy, day.endCost(endBy), rate, 0);
    leg(homeBy, i, day.end(), first, last, out);
  }

  private void homeUntil(int free, int endBy) {
    if (free < endBy) {
      homeBy.add(free, day.endCost(free), day.endCost(free) - day.endCost(free - 1), 0);
    }
  }

  /**
   * Bound at leaving a node from that at arriving at a door.
   *
   * @param arriving bound at arriving at {@code j}
   * @param i node left
   * @param j door or end place reached
   * @param first first second of leaving
   * @param last last second of leaving
   * @param out receives the bound
   */
  public void leg(CostFloor arriving, int i, int j, int first, int last, CostFloor out) {
    out.clear();
    if (!day.reaches(i, j) || arriving.empty()) {
      return;
    }
    LegCells cells = day.cells(i, j);
    long fixed = day.legPrice(i, j);
    int start = first;
    int k = 0;
    int end = arriving.last();
    for (int cell = cells.at(first); start <= last && cell < cells.size; cell++) {
      int drive = cells.least[cell];
      int stop = Math.min(last, cells.until[cell]);
      long price =
          fixed + day.drivePrice() * drive - dearerWait * (cells.most[cell] - cells.least[cell]);
      while (k > 0 && arriving.until[k - 1] >= start + drive) {
        k--;
      }
      while (k < arriving.size && arriving.until[k] < start + drive) {
        k++;
      }
      int reached = Math.min(stop, end - drive);
      while (start <= reached) {
        int tail = Math.min(reached, arriving.until[k] - drive);
        out.add(tail, price + arriving.in(k, tail + drive), arriving.slope[k], near);
        start = tail + 1;
        if (start <= reached) {
          k++;
        }
      }
      k = Math.min(k, arriving.size - 1);
      if (start <= stop) {
        out.add(stop, CostFloor.NONE, 0, near);
        start = stop + 1;
      }
    }
    out.close();
  }

  /**
   * Bound at arriving at a door, whatever its service.
   *
   * @param ready bound at being ready to leave it
   * @param j door
   * @param out receives the bound
   */
  public void arriving(CostFloor ready, int j, CostFloor out) {
    int[] services = day.steps().services(j);
    arriving(ready, j, services[0], out);
    for (int s = 1; s < services.length; s++) {
      arriving(ready, j, services[s], other);
      least(out, other);
    }
  }

  /**
   * Bound at arriving at a door.
   *
   * @param ready bound at being ready to leave it
   * @param j door
   * @param service seconds of the service there
   * @param out receives the bound
   */
  public void arriving(CostFloor ready, int j, int service, CostFloor out) {
    DoorLimits[] ways = day.doors.ways[j];
    arriving(ready, ways[0], service, out);
    if (ways.length > 1) {
      out.raise(ways[0].price);
      for (int w = 1; w < ways.length; w++) {
        arriving(ready, ways[w], service, way);
        way.raise(ways[w].price);
        least(out, way);
      }
    }
  }

  /** Makes a bound the lesser of itself and another. */
  private void least(CostFloor floor, CostFloor with) {
    if (!with.empty()) {
      both.lesser(floor, with, day.from(), day.latestEnd(), 0);
      floor.swap(both);
    }
  }

  private void arriving(CostFloor ready, DoorLimits door, int service, CostFloor out) {
    out.clear();
    if (ready.empty()) {
      return;
    }
    int latest = door.latestArrival(service);
    int vanFrom = door.vanFrom[0];
    int k = 0;
    for (int w = 0; w < door.arriveFrom.length; w++) {
      int open = Math.max(door.arriveFrom[w], vanFrom);
      int close = Math.min(door.arriveTo[w], latest);
      int start = w == 0 ? open : Math.max(open, door.arriveTo[w - 1] + 1);
      if (open + service > ready.last()) {
        break;
      }
      while (ready.until[k] < open + service) {
        k++;
      }
      out.add(Math.min(open, close), waited(ready.in(k, open + service), open, close), -wait, near);
      for (int at = start; at <= close && k < ready.size; ) {
        while (k < ready.size && ready.until[k] < at + service) {
          k++;
        }
        if (k < ready.size) {
          int tail = Math.min(close, ready.until[k] - service);
          out.add(tail, ready.in(k, tail + service), ready.slope[k], near);
          at = tail + 1;
        }
      }
      k = Math.min(k, ready.size - 1);
    }
    out.close();
  }

  private long waited(long atOpen, int open, int close) {
    return open <= close ? atOpen : atOpen + wait * (open - close);
  }

  /**
   * Bound at arriving at a door where the break comes before the service, whatever that is.
   *
   * @param ready bound at being ready to leave it
   * @param j door
   * @param out receives the bound
   */
  public void arrivingForBreak(CostFloor ready, int j, CostFloor out) {
    int[] services = day.steps().services(j);
    arrivingForBreak(ready, j, services[0], out);
    for (int s = 1; s < services.length; s++) {
      arrivingForBreak(ready, j, services[s], other);
      least(out, other);
    }
  }

  /**
   * Bound at arriving at a door where the break comes before the service; liked hours are left out.
   *
   * @param ready bound at being ready to leave it
   * @param j door
   * @param service seconds of the service there
   * @param out receives the bound
   */
  public void arrivingForBreak(CostFloor ready, int j, int service, CostFloor out) {
    shifted.clear();
    int open = Math.max(day.doors.arriveFrom[j][0], day.doors.vanFrom[j][0]);
    if (!ready.empty() && open + service <= ready.last()) {
      int k = ready.piece(open + service);
      shifted.add(open, ready.in(k, open + service), -wait, near);
      for (; k < ready.size; k++) {
        shifted.add(ready.until[k] - service, ready.value[k], ready.slope[k], near);
      }
    }
    breakFrom(shifted, Math.min(day.breakTo(), day.latestArrival(j)), out);
  }

  /**
   * Bound at being ready to leave a door where the break comes first.
   *
   * @param after bound at leaving after it
   * @param out receives the bound
   */
  public void breakFirst(CostFloor after, CostFloor out) {
    breakFrom(after, day.breakTo(), out);
  }

  /** Bound at being ready for a break that starts by {@code latest} from that after it. */
  private void breakFrom(CostFloor after, int latest, CostFloor out) {
    out.clear();
    int length = day.breakLength();
    int first = day.breakFrom();
    if (after.empty() || first + length > after.last()) {
      return;
    }
    int head = Math.min(first, latest);
    int k = after.piece(first + length);
    out.add(head, waited(after.in(k, first + length), first, head), -wait, near);
    for (int at = first + 1; at <= latest && k < after.size; ) {
      while (k < after.size && after.until[k] < at + length) {
        k++;
      }
      if (k < after.size) {
        int tail = Math.min(latest, after.until[k] - length);
        out.add(tail, after.in(k, tail + length), after.slope[k], near);
        at = tail + 1;
      }
    }
    out.close();
  }

  /**
   * Counts in that a door may be left later: waiting there, then leaving.
   *
   * @param floor bound at leaving; becomes the bound at being ready to leave
   * @param first first second of its first piece
   */
  public void linger(CostFloor floor, int first) {
    if (!pays(floor)) {
      return;
    }
    turned.clear();
    int n = floor.size;
    long best = floor.value[n - 1];
    int bestAt = floor.until[n - 1];
    // Collected from the end; a piece needs at most two, kept as (first second, value there,
    // slope).
    for (int k = n - 1; k >= 0; k--) {
      int tail = floor.until[k];
      int head = k == 0 ? first : floor.until[k - 1] + 1;
      long waitingTail = best + wait * (bestAt - tail);
      long valueTail = floor.in(k, tail);
      int cut = tail;
      if (waitingTail < valueTail) {
        long rate = wait + floor.slope[k];
        long far =
            valueTail >= CostFloor.NONE || rate <= 0
                ? Integer.MAX_VALUE
                : (valueTail - waitingTail) / rate;
        cut = (int) Math.max(head - 1L, tail - far - 1);
        push(tail, waitingTail, -wait);
      }
      if (cut >= head) {
        push(cut, floor.in(k, cut), floor.slope[k]);
      }
      long lineHead = cut >= head ? floor.in(k, head) : CostFloor.NONE;
      long waitHead = best + wait * (bestAt - head);
      if (lineHead < waitHead) {
        best = lineHead;
        bestAt = head;
      }
    }
    floor.clear();
    for (int k = turned.size - 1; k >= 0; k--) {
      floor.add(turned.until[k], turned.value[k], turned.slope[k], near);
    }
    floor.close();
  }

  private void push(int last, long value, long slope) {
    turned.room();
    turned.until[turned.size] = last;
    turned.value[turned.size] = value;
    turned.slope[turned.size] = slope;
    turned.size++;
  }

  private boolean pays(CostFloor floor) {
    for (int k = 0; k + 1 < floor.size; k++) {
      if (floor.in(k + 1, floor.until[k] + 1) + wait < floor.value[k]) {
        return true;
      }
    }
    return false;
  }
}
