package dev.dogleg.address;

import dev.dogleg.extract.Extract;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;

/** Look-ups on one extract, judged by its own tags; every draw by a fixed seed. */
final class AddressTrial {
  static final long SEED = 20260301;
  private static final int ROUNDS = 12;

  /** What a person writes who has no address. */
  private static final List<String> PLACES =
      List.of(
          "opposite the fire station",
          "the blue house behind the church",
          "next to the bakery",
          "corner by the old mill",
          "my place",
          "same as last time",
          "gegenüber der Feuerwehr",
          "hinter dem Bahnhof links",
          "en face de la mairie",
          "al costat de la farmàcia");

  final Country country;
  final OwnAddresses own;
  final Path map;
  private final Path cache;

  AddressTrial(Country country, Path maps, Path cache) {
    this.country = country;
    this.map = maps.resolve(country.extract + ".osm.pbf");
    this.cache = cache;
    this.own = new OwnAddresses(map);
  }

  AddressIndex open() {
    return AddressIndex.open(map, cache, IndexProgress.SILENT);
  }

  Score plain(AddressIndex index, int count) {
    Score score = new Score();
    for (OwnAddresses.Own asked : own.sample(count, SEED)) {
      String typed = country.plain(asked);
      score.count(own, asked, typed, index.find(typed));
    }
    return score;
  }

  /** Varied look-ups, also counted by kind of variation. */
  Map<TypedVariations.Kind, Score> varied(AddressIndex index, int count, Score all) {
    TypedVariations variations = new TypedVariations(country, own::hasStreet, SEED + 1);
    Map<TypedVariations.Kind, Score> byKind = new EnumMap<>(TypedVariations.Kind.class);
    for (OwnAddresses.Own asked : own.sample(count, SEED)) {
      TypedVariations.Typed typed = variations.type(asked);
      LookUp answer = index.find(typed.text());
      all.count(own, asked, typed.kinds() + " " + typed.text(), answer);
      for (TypedVariations.Kind kind : typed.kinds()) {
        byKind.computeIfAbsent(kind, key -> new Score()).count(own, asked, typed.text(), answer);
      }
    }
    return byKind;
  }

  /**
   * Addresses this extract does not bear: other towns', impossible numbers, no addresses at all.
   */
  List<String> missing(int count, List<AddressTrial> others) {
    List<String> missing = new ArrayList<>(PLACES);
    SplittableRandom random = new SplittableRandom(SEED + 2);
    List<OwnAddresses.Own> mine = own.sample(Integer.MAX_VALUE, SEED + 3);
    for (int i = 0; missing.size() < count / 2; i = (i + 1) % mine.size()) {
      OwnAddresses.Own base = mine.get(i);
      String number =
          switch (random.nextInt(3)) {
            case 0 -> "0";
            case 1 -> Integer.toString(7001 + random.nextInt(2000));
            default -> (900 + random.nextInt(90)) + "-" + (10 + random.nextInt(90));
          };
      // 8813 is how people type 88-13, so it exists where that does.
      if (!own.hasDoor(base.street(), number) && !own.hasDoorWithoutHyphen(base, number)) {
        missing.add(country.line(number, base.street(), base.postcode(), base.city()));
      }
    }
    List<OwnAddresses.Own> foreign = new ArrayList<>();
    for (AddressTrial other : others) {
      if (other != this) {
        foreign.addAll(other.own.sample(count / 2, SEED + 4));
      }
    }
    for (int i = foreign.size() - 1; i > 0; i--) {
      java.util.Collections.swap(foreign, i, random.nextInt(i + 1));
    }
    for (OwnAddresses.Own there : foreign) {
      boolean elsewhere = !(there.postcode() + there.city()).isEmpty();
      if (missing.size() < count && (elsewhere || !own.hasDoor(there.street(), there.number()))) {
        missing.add(country.line(there.number(), there.street(), there.postcode(), there.city()));
      }
    }
    return missing;
  }

  /** Houses between neighbours of their side, no two of them neighbours of each other. */
  private List<OwnAddresses.Own> betweenNeighbours(int count, Set<String> doneBefore) {
    List<OwnAddresses.Own> chosen = new ArrayList<>();
    Set<String> kept = new HashSet<>();
    Set<String> leftOut = new HashSet<>();
    for (OwnAddresses.Own own : this.own.sample(Integer.MAX_VALUE, SEED + 5)) {
      if (chosen.size() == count) {
        break;
      }
      String below = neighbour(own, -1);
      String above = neighbour(own, 1);
      boolean free =
          !kept.contains(own.door())
              && !leftOut.contains(own.door())
              && !doneBefore.contains(own.door());
      if (free
          && below != null
          && above != null
          && !leftOut.contains(below)
          && !leftOut.contains(above)) {
        kept.add(below);
        kept.add(above);
        leftOut.add(own.door());
        chosen.add(own);
        doneBefore.add(own.door());
      }
    }
    return chosen;
  }

  /**
   * Looks up houses that were left out of the index though neighbours of their side stand in it. A
   * house and its neighbours are never left out together, so small maps take several rounds.
   */
  LeftOut leftOut(int count, Path folder, List<String> failures) {
    LeftOut sum = new LeftOut();
    Set<String> done = new HashSet<>();
    for (int round = 0; round < ROUNDS && sum.asked < count; round++) {
      List<OwnAddresses.Own> houses = betweenNeighbours(count - sum.asked, done);
      if (houses.isEmpty()) {
        break;
      }
      try (AddressIndex index = without(houses, folder.resolve("without-" + country + round))) {
        for (OwnAddresses.Own asked : houses) {
          sum.count(this, asked, index.find(country.plain(asked)), failures);
        }
      }
    }
    return sum;
  }

  /** The next number of the same side in the same street, town and block; null where none. */
  private String neighbour(OwnAddresses.Own asked, int direction) {
    int[] mine = parse(asked.number());
    String best = null;
    int bestGap = Integer.MAX_VALUE;
    for (OwnAddresses.Own other : own.onStreet(asked)) {
      int[] theirs = parse(other.number());
      if (mine == null
          || theirs == null
          || theirs[0] != mine[0]
          || !other.postcode().equals(asked.postcode())
          || !other.city().equals(asked.city())) {
        continue;
      }
      int gap = (theirs[1] - mine[1]) * direction;
      if (gap > 0 && gap % 2 == 0 && gap < bestGap) {
        bestGap = gap;
        best = other.door();
      }
    }
    return best;
  }

  private static int[] parse(String number) {
    if (number.matches("\\d{1,5}")) {
      return new int[] {-1, Integer.parseInt(number)};
    }
    if (number.matches("\\d{1,4}-\\d{2}")) {
      String[] parts = number.split("-");
      return new int[] {Integer.parseInt(parts[0]), Integer.parseInt(parts[1])};
    }
    return null;
  }

  /** An index without some houses, in a cache of its own. */
  private AddressIndex without(List<OwnAddresses.Own> leftOut, Path otherCache) {
    Set<String> doors = new HashSet<>();
    leftOut.forEach(o -> doors.add(o.door()));
    Set<String> sources = new HashSet<>();
    for (OwnAddresses.Own o : own.all) {
      if (doors.contains(o.door())) {
        sources.add(o.source());
      }
    }
    return AddressIndex.open(
        new Extract(map),
        otherCache,
        IndexProgress.SILENT,
        object -> {
          String type =
              object.type() == 'n' ? "node " : object.type() == 'w' ? "way " : "relation ";
          return !sources.contains(type + object.id());
        });
  }
}
