package dev.dogleg.cli.csv;

import dev.dogleg.cli.settings.Card;
import dev.dogleg.cli.words.DateOrder;
import dev.dogleg.cli.words.MapBounds;
import dev.dogleg.cli.words.PointGrammar;
import dev.dogleg.cli.words.Reading;
import dev.dogleg.cli.words.WeightGrammar;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.PetLook;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.model.Place;
import dev.dogleg.model.Species;
import dev.dogleg.model.WallSpan;
import java.util.Map;
import java.util.Optional;

/**
 * What rows are read with.
 *
 * @param card the card, or empty where it could not be read: then what depends on it is not checked
 * @param tables groom tables in force
 * @param bounds box of the map, or empty
 * @param corrections corrected addresses
 * @param looks words for pets that were read before; many pets are described alike
 */
record Context(
    Optional<Card> card,
    GroomTables tables,
    Optional<MapBounds> bounds,
    Corrections corrections,
    Map<String, PetLook> looks) {
  /** Where times without am and pm are looked for while no card says better: 7:00 to 19:00. */
  private static final WallSpan DAYTIME = new WallSpan(25_200, 68_400);

  WallSpan usualHours() {
    return card.map(Card::usualHours).orElse(DAYTIME);
  }

  /** A place as typed, with its corrected point where there is one. */
  Place placed(String address) {
    Reading<GeoPoint> pin = PointGrammar.read(address, bounds);
    return pin.value().isPresent()
        ? new Place(address, pin.value())
        : corrections.applied(new Place(address, Optional.empty()));
  }

  DateOrder dateOrder() {
    return card.map(Card::dateOrder).orElse(DateOrder.ISO);
  }

  WeightGrammar.Unit weightUnit() {
    return card.map(Card::weightUnit).orElse(WeightGrammar.Unit.KG);
  }

  /** What a pet looks like by the words for it. */
  PetLook look(Optional<Species> species, String words) {
    return looks.computeIfAbsent(
        species.map(Species::name).orElse("") + ":" + words, key -> tables.look(species, words));
  }
}
