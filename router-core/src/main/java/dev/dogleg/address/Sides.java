package dev.dogleg.address;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a number that no house bears would stand on one street: on an interpolation way, beside the
 * same number with another letter, between its neighbours on the same side, or across from the
 * other side; else only the street is known.
 */
final class Sides {
  /** Farther than this from the nearer of its two neighbours a place is a guess. */
  private static final int FARTHEST_NUMBERS = 40;

  private static final double FARTHEST_METRES = 200;
  private static final int LETTER_METRES = 30;
  private static final int ACROSS_METRES = 30;
  private static final int LEAST_METRES = 10;
  private static final int NEAREST_NUMBERS = 10;
  private static final int METRES_PER_NUMBER = 15;

  private final StreetPieces.Piece piece;
  private final HouseNumber wanted;
  private final boolean compound;

  /**
   * A computed place.
   *
   * @param at packed place
   * @param grade interpolated or street
   * @param estimateMetres how far the door may be from it
   * @param likely whether neighbours of its own side, or a way of numbers, vouch for it
   * @param reason in words
   */
  record Placed(long at, Grade grade, int estimateMetres, boolean likely, String reason) {}

  /** A neighbour with its parsed number. */
  private record Known(HouseNumber number, Hit hit) {}

  Sides(StreetPieces.Piece piece, HouseNumber wanted) {
    this.piece = piece;
    this.compound =
        piece.houses().stream()
            .anyMatch(house -> HouseNumber.of(HouseNumber.canonical(house.number())).block() >= 0);
    this.wanted = parse(wanted.key());
  }

  /** Where houses bear block and number, 12-14 is one house on the block 12, not a range. */
  private HouseNumber parse(String key) {
    return compound ? HouseNumber.ofCompound(key) : HouseNumber.of(key);
  }

  Placed place() {
    if (!wanted.counts()) {
      return middle("no number to look for; this is the middle of the street");
    }
    List<Known> known = new ArrayList<>();
    for (Hit house : piece.houses()) {
      for (String key : HouseNumber.keysOf(house.number())) {
        HouseNumber number = parse(key);
        if (number.counts()) {
          known.add(new Known(number, house));
        }
      }
    }
    return onLine()
        .or(() -> sameNumber(known))
        .or(() -> between(known, true))
        .or(() -> between(known, false))
        .or(() -> nearest(known))
        .orElseGet(
            () ->
                middle(
                    known.isEmpty()
                        ? "the map knows no numbers on this street"
                        : "the map does not know where this number stands on the street"));
  }

  /** Numbers of the street lie all on one side of the wanted one, so it is not there. */
  boolean outOfRange() {
    int count = 0;
    int low = Integer.MAX_VALUE;
    int high = Integer.MIN_VALUE;
    for (Hit house : piece.houses()) {
      HouseNumber number = parse(HouseNumber.canonical(house.number()));
      if (number.counts()) {
        count++;
        int rank = Math.max(0, number.block()) * 1000 + number.number();
        low = Math.min(low, rank);
        high = Math.max(high, rank);
      }
    }
    int rank = Math.max(0, wanted.block()) * 1000 + wanted.number();
    return count >= 3 && (rank < low || rank > high);
  }

  private Optional<Placed> onLine() {
    for (Hit line : piece.lines()) {
      List<Shape.Anchor> anchors = line.shape().anchors();
      for (int i = 0; i + 1 < anchors.size(); i++) {
        Shape.Anchor from = anchors.get(i);
        Shape.Anchor to = anchors.get(i + 1);
        double share =
            LineScheme.share(
                line.shape().scheme(),
                HouseNumber.of(from.number()),
                HouseNumber.of(to.number()),
                wanted);
        if (share >= 0) {
          long[] places = line.shape().places();
          long at = Along.on(places, from.index(), to.index(), share);
          double length = Hit.metresBetween(places[from.index()], places[to.index()]);
          return Optional.of(
              new Placed(
                  at,
                  Grade.INTERPOLATED,
                  estimate(length),
                  true,
                  "on the interpolation way from " + from.number() + " to " + to.number()));
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Placed> sameNumber(List<Known> known) {
    List<Known> same =
        known.stream()
            .filter(
                other ->
                    other.number.block() == wanted.block()
                        && other.number.number() == wanted.number())
            .toList();
    if (same.isEmpty()) {
      return Optional.empty();
    }
    Known middle = same.get(same.size() / 2);
    double spread = same.stream().mapToDouble(k -> k.hit.metresTo(middle.hit)).max().orElse(0);
    if (spread > 4 * LETTER_METRES) {
      return Optional.empty();
    }
    return Optional.of(
        new Placed(
            middle.hit.at(),
            Grade.INTERPOLATED,
            LETTER_METRES + (int) Math.round(spread),
            true,
            "the map bears " + middle.hit.number() + ", not " + wanted.key()));
  }

  private Optional<Placed> between(List<Known> known, boolean sameSide) {
    Known low = null;
    Known high = null;
    for (Known other : known) {
      boolean counts =
          sameSide ? other.number.sharesSideWith(wanted) : other.number.block() == wanted.block();
      if (!counts) {
        continue;
      }
      if (other.number.number() < wanted.number()
          && (low == null || other.number.number() > low.number.number())) {
        low = other;
      } else if (other.number.number() > wanted.number()
          && (high == null || other.number.number() < high.number.number())) {
        high = other;
      }
    }
    if (low == null || high == null) {
      return Optional.empty();
    }
    int above = wanted.number() - low.number.number();
    int below = high.number.number() - wanted.number();
    double share = (double) above / (above + below);
    // One number may stand on several objects: take the two that stand closest together.
    Known from = low;
    Known to = high;
    double gap = from.hit.metresTo(to.hit);
    for (Known a : known) {
      for (Known b : known) {
        if (a.number.equals(low.number)
            && b.number.equals(high.number)
            && a.hit.metresTo(b.hit) < gap) {
          from = a;
          to = b;
          gap = a.hit.metresTo(b.hit);
        }
      }
    }
    if (Math.min(above, below) > FARTHEST_NUMBERS
        || Math.min(share, 1 - share) * gap > FARTHEST_METRES) {
      return Optional.empty();
    }
    long at = Along.between(from.hit.at(), to.hit.at(), share, piece.ways());
    String where = "between " + from.hit.number() + " and " + to.hit.number();
    return Optional.of(
        new Placed(
            at,
            Grade.INTERPOLATED,
            estimate(gap) + (sameSide ? 0 : ACROSS_METRES),
            sameSide,
            sameSide
                ? where + " on the same side of the street"
                : where + ", which stand on the other side of the street"));
  }

  private Optional<Placed> nearest(List<Known> known) {
    Known best = null;
    int bestDistance = NEAREST_NUMBERS + 1;
    for (Known other : known) {
      int distance = Math.abs(other.number.number() - wanted.number());
      if (other.number.block() == wanted.block() && distance < bestDistance) {
        best = other;
        bestDistance = distance;
      }
    }
    if (best == null) {
      return Optional.empty();
    }
    return Optional.of(
        new Placed(
            best.hit.at(),
            Grade.STREET,
            LETTER_METRES + METRES_PER_NUMBER * bestDistance,
            false,
            "beyond the numbers the map knows; the nearest is " + best.hit.number()));
  }

  private Placed middle(String reason) {
    List<Hit> all = new ArrayList<>(piece.ways());
    all.addAll(piece.houses());
    all.addAll(piece.lines());
    double lat = all.stream().mapToDouble(hit -> NodePlaces.lat(hit.at())).average().orElse(0);
    double lon = all.stream().mapToDouble(hit -> NodePlaces.lon(hit.at())).average().orElse(0);
    long centre = NodePlaces.pack(lat, lon);
    long nearest = all.get(0).at();
    double reach = 0;
    for (Hit hit : all) {
      long[] places = hit.shape() == null ? new long[] {hit.at()} : hit.shape().places();
      for (long place : places) {
        if (Hit.metresBetween(place, centre) < Hit.metresBetween(nearest, centre)) {
          nearest = place;
        }
      }
    }
    for (Hit hit : all) {
      long[] places = hit.shape() == null ? new long[] {hit.at()} : hit.shape().places();
      for (long place : places) {
        reach = Math.max(reach, Hit.metresBetween(place, nearest));
      }
    }
    return new Placed(nearest, Grade.STREET, LEAST_METRES + (int) Math.round(reach), false, reason);
  }

  private static int estimate(double gapMetres) {
    return LEAST_METRES + (int) Math.round(gapMetres / 3);
  }
}
