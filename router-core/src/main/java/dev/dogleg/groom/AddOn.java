package dev.dogleg.groom;

import java.util.List;
import java.util.Objects;

/**
 * One row of the add-on table: minutes on top.
 *
 * @param name what adds the minutes
 * @param kind to what they are added
 * @param minutes minutes, 0..600
 * @param notWith services with which it adds nothing: part of them already, or without meaning
 * @param alsoCalled other words people use
 * @param provenance where the row comes from
 */
public record AddOn(
    String name,
    AddOnKind kind,
    int minutes,
    List<String> notWith,
    List<String> alsoCalled,
    String provenance) {

  /** Checks the range and copies the lists. */
  public AddOn {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(provenance, "provenance");
    notWith = List.copyOf(notWith);
    alsoCalled = List.copyOf(alsoCalled);
    if (minutes < 0 || minutes > 600) {
      throw new IllegalArgumentException("minutes must lie in 0..600, was " + minutes);
    }
  }

  /**
   * Minutes it adds to a groom.
   *
   * @param service main service of the groom
   * @return minutes, 0 where it adds nothing to that service
   */
  public int minutesWith(Service service) {
    return notWith.contains(service.name()) ? 0 : minutes;
  }
}
