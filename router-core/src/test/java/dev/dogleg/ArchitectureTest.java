package dev.dogleg;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The packages form a line; this test is the line. */
class ArchitectureTest {

  /** Each package with the packages of ours that it may import, in the order of the line. */
  private static final Map<String, List<String>> MAY_IMPORT = new LinkedHashMap<>();

  static {
    MAY_IMPORT.put("threads", List.of());
    MAY_IMPORT.put("fault", List.of());
    MAY_IMPORT.put("time", List.of("fault"));
    MAY_IMPORT.put("model", List.of("fault", "time"));
    MAY_IMPORT.put("extract", List.of());
    MAY_IMPORT.put("travel", List.of("fault", "time", "model"));
    MAY_IMPORT.put("itinerary", List.of("fault", "time", "model", "travel"));
    MAY_IMPORT.put("roads", List.of("fault", "time", "model", "extract", "travel"));
    MAY_IMPORT.put("address", List.of("fault", "time", "model", "extract"));
    MAY_IMPORT.put("groom", List.of("fault", "time", "model"));
    MAY_IMPORT.put("schedule", List.of("fault", "time", "model", "travel", "itinerary"));
    MAY_IMPORT.put("arrival", List.of("fault", "time", "model", "travel", "itinerary", "schedule"));
    MAY_IMPORT.put(
        "plan", List.of("fault", "time", "model", "travel", "itinerary", "schedule", "arrival"));
    MAY_IMPORT.put(
        "fit",
        List.of(
            "threads",
            "fault",
            "time",
            "model",
            "travel",
            "itinerary",
            "schedule",
            "arrival",
            "plan"));
    MAY_IMPORT.put(
        "book",
        List.of(
            "fault",
            "time",
            "model",
            "travel",
            "itinerary",
            "groom",
            "schedule",
            "arrival",
            "plan",
            "fit"));
    MAY_IMPORT.put("audit", List.of("fault", "time", "model", "travel", "itinerary"));
  }

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("dev.dogleg");

  @Test
  void everyPackageImportsOnlyWhatItsLineAllows() {
    MAY_IMPORT.forEach(
        (name, allowed) -> {
          List<String> others = new ArrayList<>(MAY_IMPORT.keySet());
          others.remove(name);
          others.removeAll(allowed);
          noClasses()
              .that()
              .resideInAPackage("dev.dogleg." + name + "..")
              .should()
              .dependOnClassesThat()
              .resideInAnyPackage(
                  others.stream().map(other -> "dev.dogleg." + other + "..").toArray(String[]::new))
              .allowEmptyShould(true)
              .check(CLASSES);
        });
  }

  @Test
  void noPackageBelowAnotherIsImportedByIt() {
    List<String> line = List.copyOf(MAY_IMPORT.keySet());
    MAY_IMPORT.forEach(
        (name, allowed) ->
            allowed.forEach(
                other ->
                    assertTrue(
                        line.indexOf(other) < line.indexOf(name),
                        name + " may not import " + other + ", which stands below it")));
  }

  @Test
  void thereAreNoCycles() {
    slices().matching("dev.dogleg.(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void onlyRoadsSeesTheRouter() {
    onlySees("roads", "com.graphhopper..");
  }

  @Test
  void onlyAddressSeesTheSearchIndex() {
    onlySees("address", "org.apache.lucene..");
  }

  @Test
  void onlyTheWeekSeesTheLpLibrary() {
    onlySees("plan.week", "org.ojalgo..");
  }

  @Test
  void onlyGroomReadsTables() {
    onlySees("groom", "com.opencsv..");
  }

  @Test
  void statisticsStayWhereTheyBelong() {
    noClasses()
        .that()
        .resideOutsideOfPackages("dev.dogleg.groom..", "dev.dogleg.arrival..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.apache.commons.statistics..")
        .check(CLASSES);
  }

  @Test
  void noRandomnessOrClockIsReadInTheCore() {
    noClasses()
        .should()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(java.time.LocalDate.class, "now")
        .orShould()
        .callMethod(java.time.LocalDateTime.class, "now")
        .orShould()
        .callMethod(java.time.Instant.class, "now")
        .orShould()
        .callMethod(Math.class, "random")
        .orShould()
        .callConstructor(java.util.Random.class)
        .check(CLASSES);
  }

  @Test
  void everyPackageStandsInTheLineAndHasItsPage() throws Exception {
    Path root = Path.of("src/main/java/dev/dogleg");
    Set<String> packages = new TreeSet<>();
    try (Stream<Path> files = Files.walk(root)) {
      files
          .filter(file -> file.toString().endsWith(".java"))
          .forEach(file -> packages.add(root.relativize(file.getParent()).toString()));
    }
    for (String name : packages) {
      assertTrue(
          MAY_IMPORT.containsKey(Path.of(name).getName(0).toString()), "not in the line: " + name);
      String page = Files.readString(root.resolve(name).resolve("package-info.java"));
      for (String part : List.of("What it is", "Needs", "Promises", "Costs", "comes from")) {
        assertEquals(true, page.contains(part), "page of " + name + " lacks: " + part);
      }
    }
  }

  private static void onlySees(String name, String library) {
    classes()
        .that()
        .resideOutsideOfPackage("dev.dogleg." + name + "..")
        .should()
        .onlyDependOnClassesThat()
        .resideOutsideOfPackage(library)
        .check(CLASSES);
  }
}
