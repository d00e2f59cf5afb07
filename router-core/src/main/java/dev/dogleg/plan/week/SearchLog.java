package dev.dogleg.plan.week;

import dev.dogleg.itinerary.WeekCertificate.Bound;
import dev.dogleg.itinerary.WeekCertificate.Part;
import dev.dogleg.itinerary.WeekCertificate.Search;
import dev.dogleg.itinerary.WeekCertificate.Split;
import dev.dogleg.plan.week.NodeState.Decision;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Writes down a search as it goes on: its parts, the bounds by which a part is closed or sets are
 * dropped from it, and the questions on which parts are split.
 */
final class SearchLog {
  private final WeekModel model;
  private final int limit;
  private final List<Open> parts = new ArrayList<>();

  private static final class Open {
    private final int within;
    private final boolean holds;
    private final boolean[] mustServe;
    private final List<Bound> bounds = new ArrayList<>();
    private Split split;

    Open(int within, boolean holds, boolean[] mustServe) {
      this.within = within;
      this.holds = holds;
      this.mustServe = mustServe;
    }
  }

  SearchLog(WeekModel model, int limit) {
    this.model = model;
    this.limit = limit;
  }

  /**
   * A part is looked at.
   *
   * @param within number of the part that was split; -1 for the whole week
   * @param holds the answer to its question
   * @param mustServe bookings that may not be left out
   * @return number of the part
   */
  int part(int within, boolean holds, boolean[] mustServe) {
    parts.add(new Open(within, holds, mustServe));
    return parts.size() - 1;
  }

  /** A bound on a part was found. */
  void bound(int part, WeekBound bound) {
    Open open = parts.get(part);
    open.bounds.add(Certificates.bound(model, limit, open.mustServe, bound));
  }

  /** A part is split. */
  void split(int part, Decision decision) {
    parts.get(part).split = Certificates.split(model, decision);
  }

  /** {@return what was written down} */
  Search search() {
    return new Search(
        limit,
        parts.stream()
            .map(
                open ->
                    new Part(open.within, open.holds, open.bounds, Optional.ofNullable(open.split)))
            .toList());
  }
}
