package dev.dogleg.groom;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Minutes for one stop: from the van's arrival at the door to ready to leave.
 *
 * @param grooms one estimate a pet
 * @param overheadSeconds stop overhead, fixed: arriving, fetching, handing back, cleaning, further
 *     pets
 * @param overheadBasis every number the overhead rests on
 * @param time grooms and overhead together
 */
public record StopEstimate(
    List<GroomEstimate> grooms,
    int overheadSeconds,
    List<BasisLine> overheadBasis,
    ServiceTime time) {

  /** Median: as often shorter as longer. */
  public static final int MEDIAN_PERMILLE = 500;

  /** Copies the lists. */
  public StopEstimate {
    grooms = List.copyOf(grooms);
    overheadBasis = List.copyOf(overheadBasis);
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

  /** {@return every number of the stop, grooms first} */
  public List<BasisLine> basis() {
    List<BasisLine> all = new ArrayList<>();
    grooms.forEach(groom -> all.addAll(groom.basis()));
    all.addAll(overheadBasis);
    return List.copyOf(all);
  }

  /** {@return cautions of all pets, each once} */
  public List<String> cautions() {
    Set<String> all = new LinkedHashSet<>();
    grooms.forEach(groom -> all.addAll(groom.cautions()));
    return List.copyOf(all);
  }
}
