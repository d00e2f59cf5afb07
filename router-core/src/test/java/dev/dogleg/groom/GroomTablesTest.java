package dev.dogleg.groom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Coat;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A business's own rows over the starter tables, and what is said of bad ones. */
class GroomTablesTest {
  private static final GroomTables STARTER = StarterTables.load();

  private static TableRow row(String file, int line, String... columnsAndCells) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < columnsAndCells.length; i += 2) {
      cells.put(columnsAndCells[i], columnsAndCells[i + 1]);
    }
    return new TableRow(Where.row(file, line), cells);
  }

  private static TableRow time(int line, String size, String minutes, String spread) {
    return row(
        "groom-times.csv",
        line,
        "species",
        "dog",
        "service",
        "full",
        "size",
        size,
        "coat",
        "CURLY",
        "minutes",
        minutes,
        "spread_new",
        spread,
        "spread_known",
        "0.1",
        "provenance",
        "my own log");
  }

  private static GroomRows times(TableRow... rows) {
    return new GroomRows(List.of(rows), List.of(), List.of(), List.of(), List.of());
  }

  @Test
  void ownRowsWinAndTheRestStays() {
    Faults faults = new Faults();
    GroomTables own = STARTER.with(times(time(2, "small", "66", "0.2")), faults);
    assertTrue(faults.isEmpty(), () -> faults.all().toString());
    assertEquals(66, own.time(Species.DOG, "full", SizeClass.SMALL, Coat.CURLY).minutes());
    assertEquals(100, own.time(Species.DOG, "full", SizeClass.MEDIUM, Coat.CURLY).minutes());
    assertEquals(75, STARTER.time(Species.DOG, "full", SizeClass.SMALL, Coat.CURLY).minutes());
  }

  @Test
  void badRowsAreAllSaidAndSetAside() {
    Faults faults = new Faults();
    GroomTables own =
        STARTER.with(times(time(2, "smal", "66", "0.2"), time(3, "SMALL", "6h", "-1")), faults);
    assertEquals(
        List.of(
            "groom-times.csv:2:size", "groom-times.csv:3:minutes", "groom-times.csv:3:spread_new"),
        faults.all().stream().map(fault -> fault.where().toString()).toList());
    assertTrue(faults.all().stream().allMatch(fault -> fault.severity() == Severity.ASIDE));
    assertEquals("6h", faults.all().get(1).seen());
    assertEquals(75, own.time(Species.DOG, "full", SizeClass.SMALL, Coat.CURLY).minutes());
  }

  @Test
  void missingColumnIsSaidOnceAndTheStarterTableHolds() {
    Faults faults = new Faults();
    TableRow short1 = row("groom-times.csv", 2, "species", "dog", "service", "full");
    STARTER.with(times(short1, short1), faults);
    assertEquals(
        List.of("size", "coat", "minutes", "spread_new", "spread_known", "provenance"),
        faults.all().stream().map(fault -> fault.expected().replace("a column ", "")).toList());
  }

  @Test
  void ownServiceAndOwnBreedAreAdded() {
    Faults faults = new Faults();
    GroomRows rows =
        new GroomRows(
            List.of(
                row(
                    "groom-times.csv",
                    2,
                    "species",
                    "dog",
                    "service",
                    "spa",
                    "size",
                    "any",
                    "coat",
                    "any",
                    "minutes",
                    "50",
                    "spread_new",
                    "0.2",
                    "spread_known",
                    "0.1",
                    "provenance",
                    "mine")),
            List.of(),
            List.of(
                row(
                    "breeds.csv",
                    2,
                    "breed",
                    "Fluffox",
                    "species",
                    "dog",
                    "size",
                    "TINY",
                    "coat",
                    "LONG",
                    "provenance",
                    "mine",
                    "shelf",
                    "3")),
            List.of(
                row(
                    "services.csv",
                    2,
                    "service",
                    "spa",
                    "for",
                    "dog",
                    "also_called",
                    "spa day",
                    "provenance",
                    "mine")),
            List.of());
    GroomTables own = STARTER.with(rows, faults);
    assertTrue(faults.isEmpty(), () -> faults.all().toString());
    assertEquals("spa", own.service("Spa day").value().orElseThrow().name());
    assertEquals(SizeClass.TINY, own.look(Optional.empty(), "fluffox").size().taken());
  }

  @Test
  void serviceWithoutMinutesIsLeftOutAndSaid() {
    Faults faults = new Faults();
    GroomRows rows =
        new GroomRows(
            List.of(),
            List.of(),
            List.of(),
            List.of(row("services.csv", 2, "service", "spa", "for", "dog", "provenance", "mine")),
            List.of());
    GroomTables own = STARTER.with(rows, faults);
    assertEquals("service-without-minutes", faults.all().get(0).code());
    assertEquals(MatchGrade.NONE, own.service("spa").grade());
  }

  @Test
  void tablesFromRowsAloneMustBeWhole() {
    FaultException thrown =
        assertThrows(
            FaultException.class, () -> GroomTables.of(times(time(2, "SMALL", "66", "0.2"))));
    assertEquals("unknown-service", thrown.faults().get(0).code());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          full                       | full
          Full Groom                 | full
          bath & brush               | bath
          bath and cut               | full
          bath and nails             | bath + nails
          bath + teeth, nail grinding| bath + teeth + nail grinding
          wash with flea shampoo     | bath + flea bath
          nail trim                  | nails
          de-shed                    | deshed
          bath/deshed                | bath + undercoat
          hand strip                 | strip
          """)
  void ordersAreReadAsPeopleWriteThem(String text, String expected) {
    Faults faults = new Faults();
    assertEquals(
        expected, STARTER.order(Species.DOG, text, Where.NOWHERE, faults).orElseThrow().toString());
    assertTrue(faults.isEmpty());
  }

  @Test
  void typingErrorInAServiceIsMendedAndSaid() {
    Faults faults = new Faults();
    Optional<ServiceOrder> order =
        STARTER.order(Species.DOG, "deshde", new Where("b.csv", 2, "service"), faults);
    assertEquals("deshed", order.orElseThrow().toString());
    assertEquals("near-service", faults.all().get(0).code());
    assertEquals(Severity.LOOK, faults.all().get(0).severity());
  }

  @Test
  void unknownServiceIsSetAsideWithTheNearest() {
    Faults faults = new Faults();
    assertTrue(
        STARTER
            .order(Species.DOG, "bath, moon walk", new Where("b.csv", 2, "service"), faults)
            .isEmpty());
    Fault fault = faults.all().get(0);
    assertEquals("unknown-service", fault.code());
    assertEquals(Severity.ASIDE, fault.severity());
    assertTrue(fault.expected().contains("moon walk"));
    faults = new Faults();
    assertTrue(STARTER.order(Species.DOG, "hand strapple", Where.NOWHERE, faults).isEmpty());
    assertEquals("nearest: strip", faults.all().get(0).hint().split(",")[0]);
  }
}
