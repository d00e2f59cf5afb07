package dev.dogleg.plan.week;

import dev.dogleg.plan.week.NodeState.Decision;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** States the closed parts of a search as a {@link WeekCertificate}. */
final class Certificates {
  private Certificates() {}

  static WeekCertificate of(WeekModel model, WeekChoice best, List<BranchTree.Leaf> leaves) {
    List<WeekCertificate.Part> parts = new ArrayList<>();
    for (BranchTree.Leaf leaf : leaves) {
      RowPrices prices = leaf.prices();
      List<WeekCertificate.Cut> cuts =
          IntStream.range(0, prices.cuts().size())
              .filter(k -> prices.cut()[k] > 0)
              .mapToObj(
                  k -> {
                    RowCut cut = prices.cuts().get(k);
                    return new WeekCertificate.Cut(
                        cut.first(), cut.second(), cut.third(), prices.cut()[k]);
                  })
              .toList();
      parts.add(
          new WeekCertificate.Part(
              leaf.decisions().stream().map(decision -> words(model, decision)).toList(),
              leaf.counting(),
              leaf.limit(),
              prices.scale(),
              Arrays.stream(prices.cover()).boxed().toList(),
              prices.count(),
              cuts,
              Arrays.stream(leaf.least()).boxed().toList(),
              leaf.scaled()));
    }
    return new WeekCertificate(
        IntStream.range(0, model.size()).mapToObj(i -> model.booking(i).id()).toList(),
        model.kinds().stream().map(VanKind::vanDays).toList(),
        best.costSixtieths(),
        parts);
  }

  private static String words(WeekModel model, Decision decision) {
    String id = model.booking(decision.booking()).id();
    String not = decision.holds() ? "" : "not ";
    return switch (decision.says()) {
      case LEFT_OUT -> id + " " + not + "left out";
      case ON_KIND ->
          id + " " + not + "on van-days " + model.kinds().get(decision.other()).vanDays();
      case WITH -> id + " " + not + "with " + model.booking(decision.other()).id();
    };
  }
}
