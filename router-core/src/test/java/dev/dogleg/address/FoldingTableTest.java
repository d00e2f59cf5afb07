package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every rule of folding does its example's work, and its example needs it. */
class FoldingTableTest {
  private static final Set<String> OF_STREETS =
      Set.of(
          "letter", "type", "suffix", "direction", "title", "ordinal", "tens", "ending", "small");

  @TempDir static Path folder;
  private static AddressIndex index;

  @BeforeAll
  static void open() throws Exception {
    SmallMap map = new SmallMap();
    map.street("Mill Lane", 0, 400, 0);
    String[] town = {"addr:city", "Netherby", "addr:country", "US"};
    map.house(20, 15, "12", "Mill Lane", town);
    for (String repeat : List.of("12bis", "12ter", "12quater")) {
      map.house(60, 15, repeat, "Mill Lane", town);
    }
    index = map.open(folder);
  }

  @AfterAll
  static void close() {
    index.close();
  }

  @Test
  void aRuleOfStreetNamesIsNeededByItsExample() {
    List<String> idle = new ArrayList<>();
    for (FoldingTable.Row row : FoldingTable.whole().rows()) {
      if (OF_STREETS.contains(row.group()) && !isNeededByStreet(row)) {
        idle.add(row.toString());
      }
    }
    assertEquals(List.of(), idle);
  }

  private static boolean isNeededByStreet(FoldingTable.Row row) {
    FoldingTable whole = FoldingTable.whole();
    FoldingTable without = whole.without(row);
    if (row.group().equals("type") && row.typed().equals(row.means())) {
      // The word has no short form here; it is listed as a kind of street.
      List<Token> name = Token.words(row.exampleTyped());
      return !new StreetKeys(whole).core(name).isEmpty()
          && new StreetKeys(without).core(name).isEmpty();
    }
    return sameStreet(whole, row) && !sameStreet(without, row);
  }

  private static boolean sameStreet(FoldingTable table, FoldingTable.Row row) {
    StreetKeys keys = new StreetKeys(table);
    return !Collections.disjoint(
        keys.loose(Token.words(row.exampleTyped())), keys.loose(Token.words(row.exampleMap())));
  }

  @Test
  void aRuleOfOtherWordsIsNeededByItsExample() {
    List<String> idle = new ArrayList<>();
    int tried = 0;
    for (FoldingTable.Row row : FoldingTable.whole().rows()) {
      if (!OF_STREETS.contains(row.group())) {
        tried++;
        AddressQuery query = AddressQuery.of(row.exampleTyped());
        LookUp with = index.find(query);
        LookUp without = index.find(query, FoldingTable.whole().without(row));
        // A place beside an address is no address; every other example is one.
        Grade wanted = row.exampleMap().isEmpty() ? Grade.NONE : Grade.EXACT;
        boolean same =
            row.exampleMap().isEmpty()
                || with.matches().equals(index.find(row.exampleMap()).matches());
        if (with.grade() != wanted
            || !same
            || (without.grade() == Grade.EXACT) == (wanted == Grade.EXACT)) {
          idle.add(row + " with " + with.grade() + ", without " + without.grade());
        }
      }
    }
    assertTrue(tried > 100, "rows tried: " + tried);
    assertEquals("", String.join("\n", idle));
  }

  @Test
  void everyRuleHasItsSourceAndNoneStandsTwice() {
    Set<String> seen = new HashSet<>();
    for (FoldingTable.Row row : FoldingTable.whole().rows()) {
      assertFalse(row.source().isBlank(), row.toString());
      assertTrue(seen.add(row.group() + "|" + row.typed() + "|" + row.means()), row.toString());
    }
    assertTrue(seen.size() > 350, "rows read: " + seen.size());
  }
}
