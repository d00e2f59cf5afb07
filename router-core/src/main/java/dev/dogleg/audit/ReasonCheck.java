package dev.dogleg.audit;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.NoRoom.Why;
import dev.dogleg.itinerary.Visit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/** Whether the reason for each visit left out has its form and is true. */
final class ReasonCheck {
  private static final Set<String> TIME_RULES =
      Set.of("arrive-within", "done-by", "van-within", "day-end", "break");
  private static final Set<String> OTHER_RULES = Set.of("no-road", "first");

  private final DayRequest request;
  private final FindingList found;
  private final RoomTerms terms;
  private final Map<String, Visit> visits = new HashMap<>();

  ReasonCheck(DayRequest request, FindingList found) {
    this.request = request;
    this.found = found;
    this.terms = RoomTerms.of(request);
    request.visits().forEach(visit -> visits.put(visit.id(), visit));
  }

  void check(List<NoRoom> noRoom) {
    for (NoRoom reason : noRoom) {
      Visit visit = visits.get(reason.visitId());
      if (visit != null) {
        boolean formed = form(reason, visit) && conflictForm(reason);
        if (formed) {
          truth(reason, visit);
        }
      }
    }
  }

  private boolean form(NoRoom reason, Visit visit) {
    String id = reason.visitId();
    if (visit.booked() && reason.why() == Why.NOT_WORTH_IT) {
      String text = "Visit " + id + " is booked and cannot be left out as not worth it.";
      found.day("reason-booked", id, 1, 0, text);
      return false;
    }
    boolean impossible =
        reason.why() == Why.IMPOSSIBLE_ALONE || reason.why() == Why.IMPOSSIBLE_TOGETHER;
    String rule = reason.rule();
    boolean known = TIME_RULES.contains(rule) || OTHER_RULES.contains(rule) || terms.knows(rule);
    boolean mayBeEmpty = reason.why() != Why.IMPOSSIBLE_ALONE;
    if (rule.isEmpty() ? !mayBeEmpty : !(impossible && known)) {
      String text = "The rule \"%s\" cannot be the reason %s for visit %s.";
      found.day("reason-rule", id, 1, 0, text.formatted(rule, reason.why(), id));
      return false;
    }
    int shortBy = reason.shortBySeconds();
    if (shortBy < 0 || (shortBy > 0 && !TIME_RULES.contains(rule))) {
      String text = "Visit %s is said to be short by %d s of a rule without seconds.";
      found.day("reason-short-by", id, shortBy, 0, text.formatted(id, shortBy));
      return false;
    }
    return true;
  }

  private boolean conflictForm(NoRoom reason) {
    List<String> with = reason.withVisits();
    boolean together = reason.why() == Why.IMPOSSIBLE_TOGETHER;
    boolean right = together != with.isEmpty() && new ArrayList<>(new TreeSet<>(with)).equals(with);
    for (String other : with) {
      Visit visit = visits.get(other);
      right &= visit != null && visit.booked() && !other.equals(reason.visitId());
    }
    if (!right) {
      String text = "Visit %s is left out as %s with %s: not other booked visits of the day by id.";
      found.day(
          "reason-conflict",
          reason.visitId(),
          with.size(),
          together ? 1 : 0,
          text.formatted(reason.visitId(), reason.why(), with));
    }
    return right;
  }

  private void truth(NoRoom reason, Visit visit) {
    AloneRoom alone = new AloneRoom(request, visit, terms);
    AloneRoom inCompany = new AloneRoom(request, visit, terms.passingOverCompany());
    boolean saidImpossible = reason.why() == Why.IMPOSSIBLE_ALONE;
    if (saidImpossible && alone.exists()) {
      String text = "Visit %s is said to be impossible alone, and a day makes it alone.";
      untrue(visit, "reason-untrue", text.formatted(visit.id()));
    } else if (!saidImpossible && !inCompany.exists()) {
      String text = "Visit %s cannot be made even alone, and the plan gives another reason.";
      untrue(visit, "reason-untrue", text.formatted(visit.id()));
    } else if (saidImpossible && inCompany.exists()) {
      companyRule(reason, visit);
    } else if (saidImpossible) {
      rule(reason, visit, inCompany);
    } else if (reason.why() == Why.IMPOSSIBLE_TOGETHER) {
      conflict(reason, visit);
    }
  }

  private void rule(NoRoom reason, Visit visit, AloneRoom alone) {
    String id = visit.id();
    OptionalInt missed = alone.missedBy(reason.rule());
    List<String> others = new ArrayList<>(TIME_RULES);
    others.add(RoomTerms.WATER);
    others.addAll(terms.passingOverCompany().broken(List.of(id)));
    boolean otherRule =
        !alone.blockedBy(reason.rule()) && others.stream().anyMatch(alone::blockedBy);
    boolean roadSaid = reason.rule().equals("no-road");
    if (otherRule || roadSaid == alone.hasRoads()) {
      String text = "Visit %s is said to be blocked by %s, which is not what blocks it.";
      untrue(visit, "reason-rule-untrue", text.formatted(id, reason.rule()));
    } else if (missed.isPresent() && missed.getAsInt() != reason.shortBySeconds()) {
      int right = missed.getAsInt();
      int said = reason.shortBySeconds();
      String text = "Visit %s misses %s by %d s; the plan says %d s.";
      text = text.formatted(id, reason.rule(), right, said);
      found.day("reason-short-by-untrue", id, said, right, text);
    }
  }

  /** Only rules that want other visits make it impossible alone: one of them is named. */
  private void companyRule(NoRoom reason, Visit visit) {
    if (!terms.broken(List.of(visit.id())).contains(reason.rule())) {
      String text = "Visit %s is said to be blocked by %s, which is not what blocks it.";
      untrue(visit, "reason-rule-untrue", text.formatted(visit.id(), reason.rule()));
    }
  }

  private void conflict(NoRoom reason, Visit visit) {
    if (!TogetherRoom.canTry(terms, reason.withVisits().size() + 1)) {
      return; // Too many orders to try; the reason stands on the planner's word.
    }
    List<Visit> all = new ArrayList<>();
    all.add(visit);
    reason.withVisits().forEach(other -> all.add(visits.get(other)));
    String id = visit.id();
    if (TogetherRoom.exists(request, terms, all)) {
      String text = "Visit %s is said not to fit with %s, and there is a day that makes them all.";
      untrue(visit, "reason-untrue", text.formatted(id, reason.withVisits()));
      return;
    }
    for (int drop = 1; drop < all.size(); drop++) {
      List<Visit> fewer = new ArrayList<>(all);
      Visit dropped = fewer.remove(drop);
      if (!TogetherRoom.exists(request, terms.passingOverCompany(), fewer)) {
        String text =
            "Visit %s does not fit with %s even without %s: the conflict is not smallest.";
        untrue(
            visit, "conflict-not-smallest", text.formatted(id, reason.withVisits(), dropped.id()));
        return;
      }
    }
  }

  private void untrue(Visit visit, String code, String text) {
    found.day(code, visit.id(), 1, 0, text);
  }
}
