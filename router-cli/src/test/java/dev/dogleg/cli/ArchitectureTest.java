package dev.dogleg.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The packages of the command line form a line; this test is the line. */
class ArchitectureTest {

  /** Each package with the packages of the command line that it may import. */
  private static final Map<String, List<String>> MAY_IMPORT = new LinkedHashMap<>();

  static {
    MAY_IMPORT.put("console", List.of());
    MAY_IMPORT.put("file", List.of());
    MAY_IMPORT.put("words", List.of());
    MAY_IMPORT.put("settings", List.of("file", "words"));
    MAY_IMPORT.put("export", List.of("file"));
    MAY_IMPORT.put("told", List.of("export"));
    MAY_IMPORT.put("csv", List.of("file", "words", "settings", "told"));
    MAY_IMPORT.put("tell", List.of("export", "told"));
    MAY_IMPORT.put("ics", List.of());
    MAY_IMPORT.put("terms", List.of("words"));
    MAY_IMPORT.put("prepare", List.of("console", "words", "export", "terms"));
    MAY_IMPORT.put(
        "command",
        List.of(
            "console",
            "file",
            "settings",
            "csv",
            "export",
            "told",
            "tell",
            "ics",
            "terms",
            "prepare"));
  }

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("dev.dogleg.cli");

  @Test
  void everyPackageImportsOnlyWhatItsLineAllows() {
    MAY_IMPORT.forEach(
        (name, allowed) -> {
          String[] others =
              MAY_IMPORT.keySet().stream()
                  .filter(other -> !other.equals(name) && !allowed.contains(other))
                  .map(other -> "dev.dogleg.cli." + other + "..")
                  .toArray(String[]::new);
          if (others.length > 0) {
            noClasses()
                .that()
                .resideInAPackage("dev.dogleg.cli." + name + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(others)
                .check(CLASSES);
          }
        });
  }

  @Test
  void thereAreNoCycles() {
    slices().matching("dev.dogleg.cli.(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void onlyCommandsTouchTheClockAndTheCommandParser() {
    noClasses()
        .that()
        .resideOutsideOfPackage("dev.dogleg.cli.command..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("picocli..")
        .orShould()
        .dependOnClassesThat()
        .areAssignableTo(java.time.Clock.class)
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(java.time.LocalDate.class, "now")
        .check(CLASSES);
  }

  @Test
  void onlyTheConsoleDrawsProgressBars() {
    noClasses()
        .that()
        .resideOutsideOfPackage("dev.dogleg.cli.console..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("me.tongfei..")
        .check(CLASSES);
  }

  @Test
  void everyPackageStandsInTheLineAndHasItsPage() throws Exception {
    Path root = Path.of("src/main/java/dev/dogleg/cli");
    TreeSet<String> packages;
    try (Stream<Path> files = Files.walk(root)) {
      packages =
          files
              .filter(file -> file.toString().endsWith(".java"))
              .map(file -> root.relativize(file.getParent()).toString())
              .collect(Collectors.toCollection(TreeSet::new));
    }
    for (String name : packages) {
      assertTrue(MAY_IMPORT.containsKey(name), "not in the line: " + name);
      String page = Files.readString(root.resolve(name).resolve("package-info.java"));
      for (String part : List.of("What it is", "Needs", "Promises", "Costs", "comes from")) {
        assertTrue(page.contains(part), "page of " + name + " lacks: " + part);
      }
    }
  }
}
