package dev.dogleg.address;

import java.util.List;

/** Addresses that name their district, or their settlement, and which of them bear one name. */
final class SaidAddresses {
  static final SaidAddresses NONE = new SaidAddresses(List.of());

  private final List<Said> all;

  /**
   * An address.
   *
   * @param place packed place, see {@link NodePlaces}
   * @param bears whether it bears the name
   */
  record Said(long place, boolean bears) {}

  SaidAddresses(List<Said> all) {
    this.all = List.copyOf(all);
  }

  int bearing() {
    return (int) all.stream().filter(Said::bears).count();
  }

  /** Whether the nearest address bears the name; of equally near ones any. */
  boolean nearestBears(double lat, double lon, double mostMetres) {
    double least = mostMetres;
    boolean bearing = false;
    for (Said one : all) {
      double metres = Areas.metres(lat, lon, NodePlaces.lat(one.place), NodePlaces.lon(one.place));
      if (metres < least) {
        least = metres;
        bearing = one.bears;
      } else if (metres == least) {
        bearing |= one.bears;
      }
    }
    return bearing;
  }
}
