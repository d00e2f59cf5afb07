package dev.dogleg.schedule;

import dev.dogleg.travel.TravelTimes;

/** All legs of one day, node to node: steady spans, least duration, price of the kilometres. */
final class DayLegs {
  private final int nodes;
  private final TravelTimes travel;
  private final int[] place;
  private final int from;
  private final int latestEnd;
  private final LegSpans[] spans;
  private final LegCells[] cells;
  private final int[] least;
  private final long[] price;

  /** Legs between nodes at some places, left within a span of the day. */
  DayLegs(TravelTimes travel, int[] place, int from, int latestEnd, long kilometreSeconds) {
    this.travel = travel;
    this.place = place;
    this.from = from;
    this.latestEnd = latestEnd;
    nodes = place.length;
    cells = new LegCells[nodes * nodes];
    spans = new LegSpans[nodes * nodes];
    least = new int[nodes * nodes];
    price = new long[nodes * nodes];
    for (int i = 0; i < nodes; i++) {
      for (int j = 0; j < nodes; j++) {
        if (travel.reaches(place[i], place[j])) {
          int leg = i * nodes + j;
          spans[leg] = new LegSpans(travel, place[i], place[j], from, latestEnd);
          least[leg] =
              travel.leastDriveSeconds(place[i], place[j], from, Math.max(from, latestEnd));
          price[leg] =
              (travel.lengthMetres(place[i], place[j]) * kilometreSeconds * 60 + 500) / 1000;
        }
      }
    }
  }

  private DayLegs(DayLegs legs, long scale) {
    travel = legs.travel;
    place = legs.place;
    from = legs.from;
    latestEnd = legs.latestEnd;
    cells = legs.cells;
    nodes = legs.nodes;
    spans = legs.spans;
    least = legs.least;
    price = legs.price.clone();
    for (int leg = 0; leg < price.length; leg++) {
      price[leg] = Math.multiplyExact(price[leg], scale);
    }
  }

  private DayLegs(DayLegs whole, int[] node) {
    travel = whole.travel;
    from = whole.from;
    latestEnd = whole.latestEnd;
    nodes = node.length;
    place = new int[nodes];
    cells = new LegCells[nodes * nodes];
    spans = new LegSpans[nodes * nodes];
    least = new int[nodes * nodes];
    price = new long[nodes * nodes];
    for (int i = 0; i < nodes; i++) {
      place[i] = whole.place[node[i]];
      for (int j = 0; j < nodes; j++) {
        int leg = i * nodes + j;
        int old = node[i] * whole.nodes + node[j];
        spans[leg] = whole.spans[old];
        cells[leg] = spans[leg] == null || i == j ? null : whole.cells(node[i], node[j]);
        least[leg] = whole.least[old];
        price[leg] = whole.price[old];
      }
    }
  }

  /** {@return the legs between some of the nodes, which remember together} */
  DayLegs part(int[] node) {
    return new DayLegs(this, node);
  }

  /** {@return the same legs at prices times {@code scale}} */
  DayLegs priced(long scale) {
    return new DayLegs(this, scale);
  }

  LegSpans spans(int i, int j) {
    return spans[i * nodes + j];
  }

  /** The leg seen roughly; made when first asked for, equal whoever asks. */
  LegCells cells(int i, int j) {
    int leg = i * nodes + j;
    LegCells made = cells[leg];
    if (made == null) {
      made = LegCells.of(travel, place[i], place[j], from, Math.max(from, latestEnd), least[leg]);
      cells[leg] = made;
    }
    return made;
  }

  int least(int i, int j) {
    return least[i * nodes + j];
  }

  long price(int i, int j) {
    return price[i * nodes + j];
  }
}
