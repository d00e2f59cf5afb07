package dev.dogleg.travel;

import java.util.ArrayList;
import java.util.List;

/**
 * How much slower each road class is, by the hour of one working day.
 *
 * <p>The bands cover the whole day without gaps: the first starts at second 0 and the last never
 * ends.
 */
public final class TrafficBands {

  /** Factor that leaves free flow as it is, in thousandths. */
  public static final int FREE_FLOW_PERMILLE = 1000;

  /**
   * One band.
   *
   * @param name short name, shown on a leg
   * @param fromSeconds elapsed second at which it starts
   * @param factorPermille for each road class, its duration in thousandths of free flow,
   *     500..10,000
   */
  public record Band(String name, int fromSeconds, List<Integer> factorPermille) {
    /** Checks the factors' range. */
    public Band {
      factorPermille = List.copyOf(factorPermille);
      for (int factor : factorPermille) {
        if (factor < 500 || factor > 10_000) {
          throw new IllegalArgumentException(
              "factor must lie in 500..10000 permille, was " + factor);
        }
      }
    }
  }

  private final List<String> roadClasses;
  private final List<Band> bands;

  /**
   * Bands in the order of the day.
   *
   * @param roadClasses names of the road classes, in the order of each band's factors
   * @param bands at least one; the first from second 0, starts strictly rising
   * @throws IllegalArgumentException where a start or a number of factors is wrong
   */
  public TrafficBands(List<String> roadClasses, List<Band> bands) {
    this.roadClasses = List.copyOf(roadClasses);
    this.bands = List.copyOf(bands);
    if (bands.isEmpty() || bands.get(0).fromSeconds() != 0) {
      throw new IllegalArgumentException("the first band must start at second 0");
    }
    for (int b = 0; b < bands.size(); b++) {
      if (bands.get(b).factorPermille().size() != roadClasses.size()) {
        throw new IllegalArgumentException("band " + b + " needs a factor for each road class");
      }
      if (b > 0 && bands.get(b).fromSeconds() <= bands.get(b - 1).fromSeconds()) {
        throw new IllegalArgumentException("band " + b + " must start after the one before");
      }
    }
  }

  /**
   * No traffic at all.
   *
   * @param roadClasses names of the road classes
   * @return one band with free flow
   */
  public static TrafficBands none(List<String> roadClasses) {
    List<Integer> factors = new ArrayList<>();
    roadClasses.forEach(name -> factors.add(FREE_FLOW_PERMILLE));
    return new TrafficBands(roadClasses, List.of(new Band("", 0, factors)));
  }

  /** {@return names of the road classes} */
  public List<String> roadClasses() {
    return roadClasses;
  }

  /** {@return the bands, in the order of the day} */
  public List<Band> bands() {
    return bands;
  }

  /**
   * The band in force.
   *
   * @param seconds elapsed seconds, 0 or more
   * @return index into {@link #bands()}
   */
  public int bandAt(int seconds) {
    int band = bands.size() - 1;
    while (band > 0 && bands.get(band).fromSeconds() > seconds) {
      band--;
    }
    return band;
  }
}
