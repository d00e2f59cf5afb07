package dev.dogleg.cli.prepare;

import dev.dogleg.fault.Where;

/** Where nothing in particular stands. */
final class Rows implements RowFinder {
  @Override
  public Where client(String clientId) {
    return Where.row("bookings.csv", 2);
  }

  @Override
  public Where booking(String bookingId) {
    return Where.row("bookings.csv", 2);
  }

  @Override
  public Where home(String groomerId) {
    return Where.file("business.yaml");
  }

  @Override
  public Where rule(String name) {
    return Where.file("rules.csv").at(name);
  }

  @Override
  public Where zone(String name) {
    return Where.file("zones.csv").at(name);
  }

  @Override
  public Where errand(String errandId) {
    return Where.file("errands.csv");
  }

  @Override
  public Where waterPlaces() {
    return Where.file("business.yaml");
  }
}
