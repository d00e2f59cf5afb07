package dev.dogleg.address;

import java.util.List;

/**
 * What one reading of the typed words leads to.
 *
 * @param fitting candidates that fit what was typed, all of the best grade found
 * @param misses objects that bear street and number but lie elsewhere, or whose text says otherwise
 * @param street the words read as the street
 * @param adjacent whether number and street stand side by side in the text
 * @param rest what the other words said
 */
record Answer(
    List<Candidate> fitting,
    List<Candidate> misses,
    StreetSpan street,
    boolean adjacent,
    Rest rest) {

  Grade grade() {
    return fitting.isEmpty() ? Grade.NONE : fitting.get(0).grade();
  }

  Locality.Fit fit() {
    return fitting.isEmpty() ? Locality.Fit.CONTRADICTS : fitting.get(0).fit();
  }
}
