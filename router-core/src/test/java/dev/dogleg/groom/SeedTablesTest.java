package dev.dogleg.groom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.model.Coat;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import dev.dogleg.travel.TrafficBands;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The starter tables themselves: complete, plausible, and every row says where it comes from. */
class SeedTablesTest {
  private static final GroomTables TABLES = StarterTables.load();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "groom-times.csv",
        "add-ons.csv",
        "breeds.csv",
        "services.csv",
        "words.csv",
        "traffic.csv"
      })
  void everyRowHasItsProvenanceAndPlainText(String file) {
    List<TableRow> rows = StarterTables.rows(file);
    assertTrue(rows.size() >= 6, file);
    for (TableRow row : rows) {
      assertTrue(row.cell("provenance").length() >= 10, () -> row.where() + " has no provenance");
      assertFalse(row.cell("provenance").contains("FACTS"), () -> row.where().toString());
      for (String cell : row.cells().values()) {
        assertTrue(
            cell.chars().allMatch(c -> c >= 32 && c != 0xFFFD), () -> row.where().toString());
      }
    }
  }

  @Test
  void largerPetsNeverTakeLess() {
    for (Species species : Species.values()) {
      for (Service service : TABLES.services()) {
        for (Coat coat : Coat.values()) {
          int before = 0;
          for (SizeClass size : SizeClass.values()) {
            if (service.species().contains(species)) {
              int minutes = TABLES.time(species, service.name(), size, coat).minutes();
              assertTrue(minutes >= before, service.name() + " " + size + " " + coat);
              before = minutes;
            }
          }
        }
      }
    }
  }

  @Test
  void moreWorkTakesMoreMinutes() {
    for (SizeClass size : SizeClass.values()) {
      for (Coat coat : Coat.values()) {
        int nails = dog("nails", size, coat);
        int tidy = dog("tidy", size, coat);
        int bath = dog("bath", size, coat);
        int full = dog("full", size, coat);
        String at = size + " " + coat;
        assertTrue(nails < tidy && tidy < bath && bath < full, at);
        assertTrue(dog("roll", size, coat) < dog("strip", size, coat), at);
        assertTrue(bath < dog("deshed", size, coat), at);
        assertTrue(dog("full", size, Coat.SMOOTH) <= full, at);
      }
    }
  }

  private static int dog(String service, SizeClass size, Coat coat) {
    return TABLES.time(Species.DOG, service, size, coat).minutes();
  }

  @Test
  void knownPetsVaryLessThanNewOnes() {
    for (TableRow row : StarterTables.rows("groom-times.csv")) {
      double known = Double.parseDouble(row.cell("spread_known"));
      assertTrue(known < Double.parseDouble(row.cell("spread_new")), row.where().toString());
      assertTrue(
          Set.of("low", "medium", "high").contains(row.cell("confidence")), row.where().toString());
    }
  }

  @Test
  void everyDogBreedHasACoatAndTheSizeOfItsWeight() {
    int checked = 0;
    for (TableRow row : StarterTables.rows("breeds.csv")) {
      double from = Double.parseDouble(row.cell("weight_from_kg"));
      double to = Double.parseDouble(row.cell("weight_to_kg"));
      assertTrue(from > 0 && from < to && to < 120, row.where().toString());
      Coat.valueOf(row.cell("coat"));
      SizeClass size = SizeClass.valueOf(row.cell("size"));
      List<SizeClass> possible = new ArrayList<>(List.of(size));
      for (String other : row.cell("size_may_be").split(";")) {
        if (!other.isEmpty()) {
          possible.add(SizeClass.valueOf(other));
        }
      }
      if (row.cell("species").equals("dog")) {
        SizeClass lightest = SizeClass.ofGrams((int) (from * 1000));
        SizeClass heaviest = SizeClass.ofGrams((int) (to * 1000));
        for (SizeClass one : possible) {
          assertTrue(
              lightest.compareTo(one) <= 0 && one.compareTo(heaviest) <= 0,
              row.where() + " " + one + " lies outside " + lightest + ".." + heaviest);
        }
        checked++;
      }
    }
    assertTrue(checked > 180, "dogs checked: " + checked);
  }

  @Test
  void noNameMeansTwoThings() {
    Map<String, String> seen = new HashMap<>();
    for (Breed breed : TABLES.breeds()) {
      unique(seen, breed.species() + " ", breed.name(), breed.alsoCalled());
    }
    seen.clear();
    TABLES.services().forEach(service -> unique(seen, "", service.name(), service.alsoCalled()));
    seen.clear();
    TABLES
        .addOns(AddOnKind.ADD_ON)
        .forEach(addOn -> unique(seen, "", addOn.name(), addOn.alsoCalled()));
    seen.clear();
    for (TableRow row : StarterTables.rows("words.csv")) {
      unique(
          seen,
          "",
          row.cell("kind") + " " + row.cell("means"),
          List.of(row.cell("words").split(";")));
    }
  }

  private static void unique(
      Map<String, String> seen, String kind, String name, List<String> others) {
    List<String> all = new ArrayList<>(others);
    all.add(name);
    for (String one : Set.copyOf(all.stream().map(Folding::fold).toList())) {
      assertNull(seen.put(kind + one, name), () -> kind + one + " means two things");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"bath", "full", "tidy", "nails", "deshed", "strip", "puppy"})
  void plainWordsOfTheTradeAreServices(String word) {
    assertEquals(MatchGrade.EXACT, TABLES.service(word).grade());
  }

  @Test
  void stopOverheadIsFourFiveFourFive() {
    assertEquals(
        List.of(4, 5, 4, 5), TABLES.addOns(AddOnKind.STOP).stream().map(AddOn::minutes).toList());
    assertEquals(18, TABLES.minutes(AddOnKind.STOP));
    assertEquals(7, TABLES.minutes(AddOnKind.FURTHER_PET));
  }

  @Test
  void trafficBandsCoverTheDayAndAreSlowestAtThePeaks() {
    List<String> classes = List.of("motorway", "main", "street", "service");
    List<TrafficBands.Band> bands = new ArrayList<>();
    int end = 0;
    for (TableRow row : StarterTables.rows("traffic.csv")) {
      assertEquals(end, seconds(row.cell("from")), row.where().toString());
      end = seconds(row.cell("to"));
      List<Integer> factors = new ArrayList<>();
      for (String road : classes) {
        int permille = (int) Math.round(Double.parseDouble(row.cell(road)) * 1000);
        assertTrue(permille >= 1000 && permille <= 2000, row.where().toString());
        factors.add(permille);
      }
      bands.add(new TrafficBands.Band(row.cell("band"), seconds(row.cell("from")), factors));
    }
    assertEquals(86_400, end);
    TrafficBands traffic = new TrafficBands(classes, bands);
    int peak = traffic.bands().get(traffic.bandAt(8 * 3600)).factorPermille().get(1);
    int midday = traffic.bands().get(traffic.bandAt(12 * 3600)).factorPermille().get(1);
    assertTrue(peak > midday);
  }

  private static int seconds(String clock) {
    String[] parts = clock.split(":");
    return Integer.parseInt(parts[0]) * 3600 + Integer.parseInt(parts[1]) * 60;
  }
}
