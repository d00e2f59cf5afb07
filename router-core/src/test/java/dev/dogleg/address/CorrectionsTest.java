package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.model.GeoPoint;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Corrections win for their own address and for no other. */
class CorrectionsTest {
  private static final GeoPoint PLACE = new GeoPoint(1, 2);
  private static final Corrections CORRECTIONS =
      new Corrections(Map.of("12-4 Mühl-Weg, Netherby", PLACE));

  @Test
  void spellingDoesNotMatter() {
    assertEquals(Optional.of(PLACE), CORRECTIONS.find("12-4 MUHL WEG  netherby."));
    assertEquals(1, CORRECTIONS.size());
  }

  @Test
  void anotherAddressIsAnother() {
    assertTrue(CORRECTIONS.find("124 Mühl-Weg, Netherby").isEmpty());
    assertTrue(CORRECTIONS.find("12 4 Mühl-Weg, Netherby").isEmpty());
    assertTrue(CORRECTIONS.find("12-4 Mühlweg, Netherby").isEmpty());
    assertTrue(Corrections.NONE.find("").isEmpty());
  }
}
