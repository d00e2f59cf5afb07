package dev.dogleg.address;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Answers one reading: houses that bear the number, else where the number would stand. */
final class StreetAnswers {
  private static final int POINT_METRES = 10;
  private static final int LONG_NUMBER = 4;
  private static final int SAME_NUMBER_IN_TWO_TOWNS = 3;

  private final IndexView index;

  StreetAnswers(IndexView index) {
    this.index = index;
  }

  /** Answers a reading with a number. */
  Answer answer(StreetSpan street, NumberSpan number, boolean adjacent, Rest rest)
      throws IOException {
    List<Candidate> misses = new ArrayList<>();
    List<Candidate> exact = exact(street, Fields.NUMBER, Set.of(number.key()), rest, misses, "");
    if (exact.isEmpty()) {
      exact = members(street, number, rest, misses);
    }
    if (exact.isEmpty() && !number.parts().isEmpty()) {
      exact = parts(street, number, rest, misses);
    }
    if (rest.contradicts()) {
      return new Answer(List.of(), misses, street, adjacent, rest);
    }
    HouseNumber wanted = HouseNumber.of(number.key());
    if (!exact.isEmpty()) {
      List<Candidate> all = bestBorneOut(exact, rest);
      boolean settled = exact.stream().anyMatch(c -> c.fit() == Locality.Fit.AGREES);
      if (!settled) {
        all.addAll(rivals(street, wanted, rest, exact));
      }
      return new Answer(all, misses, street, adjacent, rest);
    }
    List<Candidate> computed = bestBorneOut(computed(street, wanted, rest), rest);
    return new Answer(computed, misses, street, adjacent, rest);
  }

  /** Leaves out what bears out less of the typed town, district and postcode than another. */
  private static List<Candidate> bestBorneOut(List<Candidate> found, Rest rest) {
    List<Candidate> kept = new ArrayList<>(found);
    if (found.size() > 1) {
      List<Set<String>> said =
          found.stream().map(one -> rest.locality().borneOut(one.basis())).toList();
      kept.removeIf(
          one -> {
            Set<String> own = rest.locality().borneOut(one.basis());
            return said.stream()
                .anyMatch(other -> other.size() > own.size() && other.containsAll(own));
          });
    }
    return kept;
  }

  /** Answers a reading without a number. */
  Answer answer(StreetSpan street, Rest rest) throws IOException {
    List<Candidate> found =
        rest.contradicts() ? List.of() : computed(street, HouseNumber.of(""), rest);
    return new Answer(found, List.of(), street, true, rest);
  }

  private List<Candidate> exact(
      StreetSpan street,
      String numberField,
      Set<String> numbers,
      Rest rest,
      List<Candidate> misses,
      String remark)
      throws IOException {
    List<Hit> hits = index.houses(street.field(), street.keys(), numberField, numbers);
    Map<Locality.Fit, List<Hit>> byFit = new TreeMap<>();
    for (Hit hit : hits) {
      Locality.Fit fit = rest.contradicts() ? Locality.Fit.CONTRADICTS : rest.locality().of(hit);
      byFit.computeIfAbsent(fit, key -> new ArrayList<>()).add(hit);
    }
    for (List<Hit> door : Doors.of(byFit.getOrDefault(Locality.Fit.CONTRADICTS, List.of()))) {
      misses.add(candidate(door, Grade.NONE, Locality.Fit.CONTRADICTS, street, ""));
    }
    List<Hit> fitting = new ArrayList<>();
    fitting.addAll(byFit.getOrDefault(Locality.Fit.AGREES, List.of()));
    fitting.addAll(byFit.getOrDefault(Locality.Fit.SILENT, List.of()));
    if (fitting.isEmpty()) {
      fitting.addAll(byFit.getOrDefault(Locality.Fit.STRAINED, List.of()));
    }
    List<Candidate> found = new ArrayList<>();
    for (List<Hit> door : Doors.of(fitting)) {
      Locality.Fit fit =
          door.stream()
              .map(rest.locality()::of)
              .min(Comparator.naturalOrder())
              .orElse(Locality.Fit.SILENT);
      found.add(candidate(door, Grade.EXACT, fit, street, remark));
    }
    return found;
  }

  /** Houses whose range or divided number holds the one asked for. */
  private List<Candidate> members(
      StreetSpan street, NumberSpan number, Rest rest, List<Candidate> misses) throws IOException {
    List<Candidate> found = exact(street, Fields.MEMBER, Set.of(number.key()), rest, misses, "");
    // A hyphen left out and another postcode at once are one guess too many.
    found =
        found.stream()
            .filter(c -> c.fit() != Locality.Fit.STRAINED || number.key().length() < LONG_NUMBER)
            .toList();
    if (found.isEmpty() || number.key().indexOf('-') >= 0) {
      return found;
    }
    boolean range = found.stream().anyMatch(c -> c.basis().number().indexOf('-') > 0);
    if (range && hasCompoundNumbers(street)) {
      // Here 12-14 is one house on the block 12, not the houses from 12 to 14.
      found =
          found.stream()
              .filter(
                  c ->
                      HouseNumber.of(HouseNumber.canonical(c.basis().number())).block() >= 0
                          || c.basis().number().indexOf('-') < 0)
              .toList();
    }
    return found;
  }

  private boolean hasCompoundNumbers(StreetSpan street) throws IOException {
    for (Hit house : index.onStreet(street.field(), street.keys(), Fields.HOUSE)) {
      if (HouseNumber.of(HouseNumber.canonical(house.number())).block() >= 0) {
        return true;
      }
    }
    return false;
  }

  /** Of 12/4 the house 12 or the house 4, one of them a flat; of 12-14 the house 12. */
  private List<Candidate> parts(
      StreetSpan street, NumberSpan number, Rest rest, List<Candidate> misses) throws IOException {
    boolean divided = number.key().indexOf('/') > 0;
    List<Candidate> found =
        exact(
            street,
            Fields.NUMBER,
            number.parts(),
            rest,
            misses,
            divided ? "one part of " + number.key() + " read as a flat" : "");
    if (divided) {
      return found;
    }
    return found.stream()
        .map(
            c ->
                new Candidate(
                    c.basis(),
                    c.number(),
                    c.at(),
                    Grade.INTERPOLATED,
                    c.fit(),
                    c.estimateMetres() + POINT_METRES,
                    true,
                    c.spelledAsTyped(),
                    "the map bears " + c.number() + " of the range " + number.key()))
        .toList();
  }

  /** Other streets of the name on which the number would stand between known ones. */
  private List<Candidate> rivals(
      StreetSpan street, HouseNumber wanted, Rest rest, List<Candidate> exact) throws IOException {
    Set<Long> taken = new HashSet<>();
    exact.forEach(c -> taken.add(c.basis().source()));
    List<Candidate> rivals = new ArrayList<>();
    for (StreetPieces.Piece piece : pieces(street, rest)) {
      boolean own = piece.houses().stream().anyMatch(house -> taken.contains(house.source()));
      if (!own && wanted.counts()) {
        Sides.Placed placed = new Sides(piece, wanted).place();
        if (placed.likely()) {
          rivals.add(computed(piece, wanted, placed, rest, street));
        }
      }
    }
    return rivals;
  }

  private List<Candidate> computed(StreetSpan street, HouseNumber wanted, Rest rest)
      throws IOException {
    List<StreetPieces.Piece> pieces = pieces(street, rest);
    List<Candidate> found = new ArrayList<>();
    List<Candidate> between = new ArrayList<>();
    List<Candidate> elsewhere = new ArrayList<>();
    for (StreetPieces.Piece piece : pieces) {
      Sides sides = new Sides(piece, wanted);
      Candidate candidate = computed(piece, wanted, sides.place(), rest, street);
      if (candidate.grade() == Grade.INTERPOLATED) {
        between.add(candidate);
      } else if (wanted.counts() && sides.outOfRange()) {
        elsewhere.add(candidate);
      } else {
        found.add(candidate);
      }
    }
    if (!between.isEmpty()) {
      // A street of the same town without numbers is the same street, parted; others may be meant.
      found.removeIf(
          c -> between.stream().anyMatch(b -> b.basis().town().equals(c.basis().town())));
      found.addAll(0, between);
      return found;
    }
    return found.isEmpty() ? elsewhere : found;
  }

  private Candidate computed(
      StreetPieces.Piece piece,
      HouseNumber wanted,
      Sides.Placed placed,
      Rest rest,
      StreetSpan street) {
    Hit basis = piece.houses().isEmpty() ? piece.any() : nearest(piece.houses(), placed.at());
    return new Candidate(
        basis,
        wanted.key(),
        placed.at(),
        placed.grade(),
        rest.locality().of(basis),
        placed.estimateMetres(),
        true,
        street.asTyped(),
        placed.reason());
  }

  private static Hit nearest(List<Hit> houses, long at) {
    return houses.stream()
        .min(
            Comparator.comparingDouble((Hit house) -> Hit.metresBetween(house.at(), at))
                .thenComparing(Hit::source))
        .orElseThrow();
  }

  /** The streets of one name that fit the locality best, each apart. */
  private List<StreetPieces.Piece> pieces(StreetSpan street, Rest rest) throws IOException {
    List<Hit> all = new ArrayList<>();
    for (String kind : List.of(Fields.HOUSE, Fields.STREET, Fields.LINE)) {
      all.addAll(index.onStreet(street.field(), street.keys(), kind));
    }
    Map<Locality.Fit, List<Hit>> byFit = new TreeMap<>();
    for (Hit hit : all) {
      byFit.computeIfAbsent(rest.locality().of(hit), key -> new ArrayList<>()).add(hit);
    }
    byFit.remove(Locality.Fit.CONTRADICTS);
    List<Hit> fitting = byFit.isEmpty() ? List.of() : byFit.values().iterator().next();
    List<StreetPieces.Piece> pieces = new ArrayList<>();
    for (List<Hit> town : byTown(fitting)) {
      pieces.addAll(
          StreetPieces.of(
              ofKind(town, Fields.HOUSE), ofKind(town, Fields.STREET), ofKind(town, Fields.LINE)));
    }
    return pieces;
  }

  /** Parts by town where two towns count the same street anew. */
  private static List<List<Hit>> byTown(List<Hit> hits) {
    Map<String, Set<String>> townsOfNumber = new HashMap<>();
    Map<String, List<Hit>> byTown = new TreeMap<>();
    for (Hit hit : hits) {
      byTown.computeIfAbsent(hit.town(), key -> new ArrayList<>()).add(hit);
      if (!hit.number().isEmpty()) {
        townsOfNumber.computeIfAbsent(hit.number(), key -> new HashSet<>()).add(hit.town());
      }
    }
    long twice = townsOfNumber.values().stream().filter(towns -> towns.size() > 1).count();
    return twice < SAME_NUMBER_IN_TWO_TOWNS ? List.of(hits) : List.copyOf(byTown.values());
  }

  private static List<Hit> ofKind(List<Hit> hits, String kind) {
    return hits.stream().filter(hit -> hit.kind().equals(kind)).toList();
  }

  private static Candidate candidate(
      List<Hit> door, Grade grade, Locality.Fit fit, StreetSpan street, String remark) {
    Hit first = door.get(0);
    double reach = door.stream().mapToDouble(first::metresTo).max().orElse(0);
    int estimate = Math.max(POINT_METRES, (int) Math.round(Math.max(reach, first.radiusMetres())));
    String what =
        first.source() % 4 == 0
            ? "a point"
            : first.source() % 4 == 1 ? "an outline" : "a building of several outlines";
    String reason = what + " of the map bears this number and street";
    return new Candidate(
        first,
        first.number(),
        first.at(),
        grade,
        fit,
        estimate,
        false,
        street.asTyped(),
        remark.isEmpty() ? reason : reason + "; " + remark);
  }
}
