package dev.dogleg.groom;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Minutes for one stop: from the van's arrival at the door to ready to leave.
 *
 * @param grooms one estimate a pet, each by itself, also where minutes were given for several
 *     together
 * @param overheadSeconds stop overhead, fixed: arriving, fetching, handing back, cleaning, further
 *     pets
 * @param basis every number {@code time} rests on, grooms first
 * @param time grooms and overhead together
 */
public record StopEstimate(
    List<GroomEstimate> grooms, int overheadSeconds, List<BasisLine> basis, ServiceTime time) {

  /** Median: as often shorter as longer. */
  public static final int MEDIAN_PERMILLE = 500;

  /** Copies the lists. */
  public StopEstimate {
    grooms = List.copyOf(grooms);
    basis = List.copyOf(basis);
    Objects.requireNonNull(time, "time");
  }

  /** {@return seconds to plan with: the median} */
  public int plannedSeconds() {
    return plannedSeconds(MEDIAN_PERMILLE);
  }

  /**
   * Seconds to plan with.
   *
   * @param permille quantile in thousandths, 1..999; more is safer and fits fewer doors in a day
   * @return whole seconds
   */
  public int plannedSeconds(int permille) {
    return time.quantileSeconds(permille);
  }

  /** {@return whether anything about any of the pets was guessed} */
  public boolean isGuess() {
    return grooms.stream().anyMatch(GroomEstimate::isGuess);
  }

  /** {@return cautions of all pets, each once} */
  public List<String> cautions() {
    Set<String> all = new LinkedHashSet<>();
    grooms.forEach(groom -> all.addAll(groom.cautions()));
    return List.copyOf(all);
  }
}
