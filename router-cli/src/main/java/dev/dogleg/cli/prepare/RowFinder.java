package dev.dogleg.cli.prepare;

import dev.dogleg.fault.Where;

/** Tells where things of the book stand in its files, so that faults can point there. */
public interface RowFinder {

  /**
   * Row of a client.
   *
   * @param clientId the client
   * @return where its place stands
   */
  Where client(String clientId);

  /**
   * Row of a booking.
   *
   * @param bookingId the booking
   * @return where it stands
   */
  Where booking(String bookingId);

  /**
   * Home of a groomer in the card.
   *
   * @param groomerId the groomer
   * @return where it stands
   */
  Where home(String groomerId);

  /**
   * Row of a rule.
   *
   * @param name name of the rule
   * @return where it stands
   */
  Where rule(String name);

  /**
   * Row of a zone.
   *
   * @param name name of the zone
   * @return where it stands
   */
  Where zone(String name);

  /**
   * Row of an errand.
   *
   * @param errandId the errand
   * @return where it stands
   */
  Where errand(String errandId);

  /**
   * The water places.
   *
   * @return their key in the card
   */
  Where waterPlaces();
}
