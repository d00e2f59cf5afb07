package dev.dogleg.schedule;

import dev.dogleg.travel.TravelTimes;

/** All legs of one day, node to node: steady spans, least duration, price of the kilometres. */
final class DayLegs {
  private final int nodes;
  private final LegSpans[] spans;
  private final int[] least;
  private final long[] price;

  /** Legs between nodes at some places, left within a span of the day. */
  DayLegs(TravelTimes travel, int[] place, int from, int latestEnd, long kilometreSeconds) {
    nodes = place.length;
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
    nodes = legs.nodes;
    spans = legs.spans;
    least = legs.least;
    price = legs.price.clone();
    for (int leg = 0; leg < price.length; leg++) {
      price[leg] = Math.multiplyExact(price[leg], scale);
    }
  }

  /** {@return the same legs at prices times {@code scale}} */
  DayLegs priced(long scale) {
    return new DayLegs(this, scale);
  }

  LegSpans spans(int i, int j) {
    return spans[i * nodes + j];
  }

  int least(int i, int j) {
    return least[i * nodes + j];
  }

  long price(int i, int j) {
    return price[i * nodes + j];
  }
}
