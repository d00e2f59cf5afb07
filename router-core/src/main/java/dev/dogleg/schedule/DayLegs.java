package dev.dogleg.schedule;

/** All legs of one day, node to node: steady spans, least duration, price of the kilometres. */
final class DayLegs {
  private final int nodes;
  private final KnownLeg[] legs;
  private final long[] price;

  /**
   * Legs between nodes at some places.
   *
   * @param memory what is known of them
   * @param place place of each node
   * @param kilometreSeconds price of a kilometre in seconds of driving
   */
  DayLegs(LegMemory memory, int[] place, long kilometreSeconds) {
    nodes = place.length;
    legs = new KnownLeg[nodes * nodes];
    price = new long[nodes * nodes];
    for (int i = 0; i < nodes; i++) {
      for (int j = 0; j < nodes; j++) {
        int leg = i * nodes + j;
        legs[leg] = memory.leg(place[i], place[j]);
        if (legs[leg] != null) {
          price[leg] = (legs[leg].metres * kilometreSeconds * 60 + 500) / 1000;
        }
      }
    }
  }

  private DayLegs(DayLegs whole, long scale) {
    nodes = whole.nodes;
    legs = whole.legs;
    price = whole.price.clone();
    for (int leg = 0; leg < price.length; leg++) {
      price[leg] = Math.multiplyExact(price[leg], scale);
    }
  }

  private DayLegs(DayLegs whole, int[] node) {
    nodes = node.length;
    legs = new KnownLeg[nodes * nodes];
    price = new long[nodes * nodes];
    for (int i = 0; i < nodes; i++) {
      for (int j = 0; j < nodes; j++) {
        int leg = i * nodes + j;
        int old = node[i] * whole.nodes + node[j];
        legs[leg] = whole.legs[old];
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
    return legs[i * nodes + j].spans;
  }

  /** The leg seen roughly; made when first asked for, equal whoever asks. */
  LegCells cells(int i, int j) {
    return legs[i * nodes + j].cells();
  }

  int least(int i, int j) {
    KnownLeg leg = legs[i * nodes + j];
    return leg == null ? 0 : leg.least;
  }

  long price(int i, int j) {
    return price[i * nodes + j];
  }
}
