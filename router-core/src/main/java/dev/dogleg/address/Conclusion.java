package dev.dogleg.address;

import dev.dogleg.model.GeoPoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Turns the answers of readings into what is told: found, ambiguous with candidates, or none. */
final class Conclusion {
  private static final Set<String> NUMBER_FIRST =
      Set.of("us", "gb", "ie", "ca", "au", "nz", "fr", "mc", "lu", "za");

  private static final int CLIENTS_COUNTED = 3;

  private final AddressQuery query;
  private final boolean numberFirst;

  Conclusion(AddressQuery query, Set<String> countries) {
    this.query = query;
    this.numberFirst = countries.stream().anyMatch(NUMBER_FIRST::contains);
  }

  LookUp of(List<Answer> answers) {
    if (answers.isEmpty()) {
      return new LookUp(
          query, Outcome.NONE, List.of(), "no street or place of the map is named in this text");
    }
    List<Candidate> fitting = new ArrayList<>();
    List<Candidate> misses = new ArrayList<>();
    Set<Long> seen = new HashSet<>();
    for (Answer answer : answers) {
      for (Candidate candidate : answer.fitting()) {
        if (seen.add(candidate.at())) {
          fitting.add(candidate);
        }
      }
      misses.addAll(answer.misses());
    }
    if (fitting.isEmpty()) {
      return none(answers.get(0), misses);
    }
    List<Match> matches = new ArrayList<>(fitting.stream().map(this::match).toList());
    if (matches.size() == 1) {
      return new LookUp(query, Outcome.FOUND, matches, said(fitting.get(0)));
    }
    boolean ranked = !query.clients().isEmpty();
    matches.sort(
        Comparator.comparingInt((Match match) -> ranked ? match.metresFromClients() : 0)
            .thenComparing(Match::grade)
            .thenComparing(Match::address)
            .thenComparing(match -> match.point().toString()));
    int all = matches.size();
    return new LookUp(
        query,
        Outcome.AMBIGUOUS,
        matches.subList(0, Math.min(all, LookUp.MOST)),
        ambiguity(fitting, all) + (ranked ? "; nearest to the book's other clients first" : ""));
  }

  private LookUp none(Answer answer, List<Candidate> misses) {
    List<Match> matches =
        misses.stream()
            .map(this::match)
            .sorted(
                Comparator.comparingInt(Match::metresFromClients)
                    .thenComparing(Match::address)
                    .thenComparing(match -> match.point().toString()))
            .limit(LookUp.MOST)
            .toList();
    Rest rest = answer.rest();
    String reason;
    if (rest.beside()) {
      reason = "the text describes a place beside an address";
    } else if (rest.abroad()) {
      reason = "the country is not on this map";
    } else if (rest.streetLonger()) {
      reason = "no street of the map has this whole name";
    } else if (!rest.locality().isEmpty()) {
      reason =
          "the street is on the map, but not in "
              + (rest.locality().towns().isEmpty()
                  ? rest.locality().postcodes().get(0)
                  : "the town that was typed");
    } else {
      reason = "nothing on the map fits this text";
    }
    return new LookUp(query, Outcome.NONE, matches, reason);
  }

  private static String said(Candidate candidate) {
    StringBuilder reason = new StringBuilder(candidate.reason());
    if (!candidate.spelledAsTyped()) {
      reason.append("; street read as ").append(candidate.basis().street());
    }
    if (candidate.fit() == Locality.Fit.STRAINED) {
      reason.append("; the map has another postcode: ").append(candidate.basis().postcode());
    }
    return reason.toString();
  }

  private static String ambiguity(List<Candidate> fitting, int all) {
    Set<String> streets = new HashSet<>();
    Set<String> towns = new HashSet<>();
    double spread = 0;
    for (Candidate a : fitting) {
      streets.add(Letters.bare(a.basis().street()));
      towns.add(a.basis().town());
      for (Candidate b : fitting) {
        spread = Math.max(spread, Hit.metresBetween(a.at(), b.at()));
      }
    }
    String what =
        streets.size() > 1
            ? "several streets may be meant"
            : towns.size() > 1
                ? "this address stands in several towns"
                : "this address stands in several places";
    return what + " (" + all + " candidates, up to " + Math.round(spread) + " m apart)";
  }

  private Match match(Candidate candidate) {
    Hit basis = candidate.basis();
    GeoPoint point = new GeoPoint(NodePlaces.lat(candidate.at()), NodePlaces.lon(candidate.at()));
    return new Match(
        point,
        candidate.grade(),
        line(candidate),
        candidate.number(),
        basis.street(),
        basis.postcode(),
        basis.town(),
        candidate.estimateMetres(),
        candidate.spelledAsTyped(),
        metresFromClients(point),
        candidate.computed() ? "" : basis.sourceName(),
        candidate.grade() == Grade.NONE
            ? "bears this number and street, but is not where the text says"
            : said(candidate));
  }

  private String line(Candidate candidate) {
    Hit basis = candidate.basis();
    String door =
        candidate.number().isEmpty()
            ? basis.street()
            : numberFirst
                ? candidate.number() + " " + basis.street()
                : basis.street() + " " + candidate.number();
    String town = (basis.postcode() + " " + basis.town()).strip();
    return town.isEmpty() ? door : door + ", " + town;
  }

  /** Mean distance to the three nearest clients, so that one stray client does not decide. */
  private int metresFromClients(GeoPoint point) {
    return query.clients().isEmpty()
        ? -1
        : (int)
            Math.round(
                query.clients().stream()
                    .mapToDouble(point::metresTo)
                    .sorted()
                    .limit(CLIENTS_COUNTED)
                    .average()
                    .orElseThrow());
  }
}
