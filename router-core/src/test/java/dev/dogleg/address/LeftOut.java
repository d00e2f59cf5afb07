package dev.dogleg.address;

import java.util.List;
import java.util.Locale;

/**
 * Counts what came of houses that stood between their neighbours and were left out of the index.
 */
final class LeftOut {
  static final double NEAR_METRES = 60;

  int asked;
  int interpolated;
  int near;
  int ambiguousWith;
  int exact;
  int withinEstimate;

  void count(AddressTrial trial, OwnAddresses.Own house, LookUp answer, List<String> failures) {
    asked++;
    boolean good = false;
    double metres =
        answer.matches().isEmpty() ? -1 : house.metresTo(answer.matches().get(0).point());
    if (answer.grade() == Grade.INTERPOLATED) {
      interpolated++;
      good = metres <= NEAR_METRES;
      withinEstimate += metres <= answer.matches().get(0).distanceEstimateMetres() ? 1 : 0;
    } else if (answer.grade() == Grade.EXACT) {
      exact++;
    } else if (answer.outcome() == Outcome.AMBIGUOUS) {
      boolean holds =
          answer.matches().stream()
              .anyMatch(
                  match ->
                      match.grade() == Grade.INTERPOLATED
                          && house.metresTo(match.point()) <= NEAR_METRES);
      ambiguousWith += holds ? 1 : 0;
    }
    near += good ? 1 : 0;
    if (!good) {
      failures.add(
          trial.country + " left out, " + Math.round(metres) + " m: " + house + " -> " + answer);
    }
  }

  double nearPercent() {
    return 100.0 * near / Math.max(1, asked);
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%d, found interpolated %d, within 60 m %d (%.1f %%), said ambiguous with it %d, exact %d,"
            + " within the estimate %.0f %% of the interpolated",
        asked,
        interpolated,
        near,
        nearPercent(),
        ambiguousWith,
        exact,
        100.0 * withinEstimate / Math.max(1, interpolated));
  }
}
