package dev.dogleg.address;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The answer to one query.
 *
 * @param query what was asked
 * @param outcome found, ambiguous or none
 * @param matches best first: of a found answer the place, then places that were passed over; of an
 *     ambiguous one all candidates, nearest to the book's other clients first; of none the nearest
 *     misses, graded {@link Grade#NONE}, for a person to compare; at most {@value #MOST}
 * @param reason why, in one sentence
 */
public record LookUp(AddressQuery query, Outcome outcome, List<Match> matches, String reason) {
  /** The most candidates an answer carries. */
  public static final int MOST = 12;

  /** Checks that a found or ambiguous answer has its matches. */
  public LookUp {
    Objects.requireNonNull(query, "query");
    Objects.requireNonNull(outcome, "outcome");
    Objects.requireNonNull(reason, "reason");
    matches = List.copyOf(matches);
    int least = outcome == Outcome.NONE ? 0 : outcome == Outcome.FOUND ? 1 : 2;
    if (matches.size() < least || matches.size() > MOST) {
      throw new IllegalArgumentException(outcome + " with " + matches.size() + " matches");
    }
  }

  /** {@return the one place, present only where the outcome is found} */
  public Optional<Match> found() {
    return outcome == Outcome.FOUND ? Optional.of(matches.get(0)) : Optional.empty();
  }

  /** {@return grade of the one place; {@link Grade#NONE} for none and for an ambiguous answer} */
  public Grade grade() {
    return outcome == Outcome.FOUND ? matches.get(0).grade() : Grade.NONE;
  }
}
