package dev.dogleg.cli.csv;

import dev.dogleg.cli.settings.Card;
import dev.dogleg.cli.words.DateOrder;
import dev.dogleg.cli.words.MapBounds;
import dev.dogleg.cli.words.WeightGrammar;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.model.WallSpan;
import java.util.Optional;

/**
 * What rows are read with.
 *
 * @param card the card, or empty where it could not be read: then what depends on it is not checked
 * @param tables groom tables in force
 * @param bounds box of the map, or empty
 * @param corrections corrected addresses
 */
record Context(
    Optional<Card> card, GroomTables tables, Optional<MapBounds> bounds, Corrections corrections) {
  /** Where times without am and pm are looked for while no card says better: 7:00 to 19:00. */
  private static final WallSpan DAYTIME = new WallSpan(25_200, 68_400);

  WallSpan usualHours() {
    return card.map(Card::usualHours).orElse(DAYTIME);
  }

  DateOrder dateOrder() {
    return card.map(Card::dateOrder).orElse(DateOrder.ISO);
  }

  WeightGrammar.Unit weightUnit() {
    return card.map(Card::weightUnit).orElse(WeightGrammar.Unit.KG);
  }
}
