package dev.dogleg.address;

import dev.dogleg.model.GeoPoint;
import java.util.List;
import java.util.Objects;

/**
 * One address as a person typed it, with what else is known about it.
 *
 * @param text the address in any order, with or without postcode, town and country; at most {@value
 *     #LONGEST} characters
 * @param postcode postcode known from another column, empty where none
 * @param town town or district known from another column, empty where none
 * @param clients places of the book's other clients; they rank the candidates of an ambiguous
 *     answer and decide nothing
 */
public record AddressQuery(String text, String postcode, String town, List<GeoPoint> clients) {
  /** Longest text that is looked at; a longer one is no address. */
  public static final int LONGEST = 400;

  /** Checks for null and copies the list. */
  public AddressQuery {
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(postcode, "postcode");
    Objects.requireNonNull(town, "town");
    clients = List.copyOf(clients);
  }

  /**
   * A query of its text alone.
   *
   * @param text the address as typed
   * @return the query
   */
  public static AddressQuery of(String text) {
    return new AddressQuery(text, "", "", List.of());
  }

  /**
   * The same query, ranked by other clients.
   *
   * @param others places of the book's other clients
   * @return the query
   */
  public AddressQuery near(List<GeoPoint> others) {
    return new AddressQuery(text, postcode, town, others);
  }
}
