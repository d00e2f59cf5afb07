package dev.dogleg.plan.week;

import dev.dogleg.itinerary.WeekCertificate;
import dev.dogleg.itinerary.WeekCertificate.Bound;
import dev.dogleg.itinerary.WeekCertificate.Cut;
import dev.dogleg.itinerary.WeekCertificate.Part;
import dev.dogleg.itinerary.WeekCertificate.Question;
import dev.dogleg.itinerary.WeekCertificate.Search;
import dev.dogleg.itinerary.WeekCertificate.Split;
import dev.dogleg.plan.week.NodeState.Decision;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * States searches and bounds as a {@link WeekCertificate}.
 *
 * <p>Maintainers: prices are stated in a plain form that gives the same sum and lets no set look
 * cheaper. Where a booking may be left out its price is lowered to what leaving it out costs; the
 * count price is taken off the counted bookings where all of them may be left out, and is not
 * stated where none may.
 */
final class Certificates {
  private Certificates() {}

  /** {@return the certificate of a week} */
  static WeekCertificate of(WeekModel model, List<Search> searches) {
    return searches.isEmpty()
        ? WeekCertificate.NONE
        : new WeekCertificate(
            IntStream.range(0, model.size()).mapToObj(i -> model.booking(i).id()).toList(),
            model.kinds().stream().map(VanKind::vanDays).toList(),
            searches);
  }

  /**
   * A search that ends where it begins: a bound on the number left out over the whole week shows
   * that no week leaves out so few.
   */
  static Search tooFew(WeekModel model, int limit, WeekBound count) {
    Bound bound = bound(model, limit, new boolean[model.size()], count);
    return new Search(limit, List.of(new Part(-1, true, List.of(bound), Optional.empty())));
  }

  /** {@return a bound in plain form} */
  static Bound bound(WeekModel model, int limit, boolean[] mustServe, WeekBound bound) {
    RowPrices prices = bound.prices();
    boolean counting = bound.counting();
    boolean offCounted = counting && prices.count() > 0;
    List<Long> cover = new ArrayList<>();
    for (int i = 0; i < model.size(); i++) {
      long price = prices.cover()[i];
      if (!mustServe[i]) {
        long objective = counting ? (model.counted(i) ? 1 : 0) : model.leftOutSixtieths(i);
        long left = objective * prices.scale() + (model.counted(i) ? prices.count() : 0);
        price = Math.min(price, left);
      }
      cover.add(offCounted && model.counted(i) ? price - prices.count() : price);
    }
    List<Cut> cuts =
        IntStream.range(0, prices.cuts().size())
            .filter(k -> prices.cut()[k] > 0)
            .mapToObj(k -> cut(prices.cuts().get(k), prices.cut()[k]))
            .toList();
    return new Bound(
        counting,
        cover,
        counting || limit == 0 ? 0 : prices.count(),
        cuts,
        Arrays.stream(bound.leastByKind()).boxed().toList(),
        bound.scaled());
  }

  private static Cut cut(RowCut cut, long price) {
    return new Cut(cut.first(), cut.second(), cut.third(), price);
  }

  /** {@return a decision, whichever way it went, as the question that it answers} */
  static Split split(WeekModel model, Decision decision) {
    String id = model.booking(decision.booking()).id();
    return switch (decision.says()) {
      case LEFT_OUT -> new Split(Question.LEFT_OUT, id, "", -1);
      case ON_KIND -> new Split(Question.ON_KIND, id, "", decision.other());
      case WITH -> new Split(Question.WITH, id, model.booking(decision.other()).id(), -1);
    };
  }
}
