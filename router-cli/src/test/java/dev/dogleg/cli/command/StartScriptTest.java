package dev.dogleg.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The starting script in a project folder whose path has a space, with stand-ins for Java and Maven
 * that say how they were called.
 */
class StartScriptTest {
  private static final List<String> TOOLS =
      List.of(
          "bash",
          "env",
          "dirname",
          "readlink",
          "find",
          "sed",
          "head",
          "mkdir",
          "rm",
          "mv",
          "tee",
          "cat",
          "awk",
          "grep",
          "tail",
          "sleep",
          "kill");

  @TempDir Path temp;
  private Path project;
  private Path tools;

  private record Said(int exit, String text) {}

  @BeforeEach
  void layOut() throws IOException {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "no bash here");
    project = Files.createDirectories(temp.resolve("my project"));
    Path script = project.resolve("router-cli/bin/dogleg");
    Files.createDirectories(script.getParent());
    Files.copy(TestRun.ROOT.resolve("router-cli/bin/dogleg"), script);
    for (String module : List.of("router-core", "router-cli")) {
      Files.createDirectories(project.resolve(module).resolve("src/main"));
      Files.writeString(project.resolve(module).resolve("pom.xml"), "");
    }
    Files.writeString(project.resolve("pom.xml"), "");
    tools = Files.createDirectories(temp.resolve("tools"));
    for (String tool : TOOLS) {
      for (String folder : List.of("/bin", "/usr/bin")) {
        Path real = Path.of(folder, tool);
        if (Files.isExecutable(real) && !Files.exists(tools.resolve(tool))) {
          Files.createSymbolicLink(tools.resolve(tool), real);
        }
      }
    }
  }

  /** Takes the links away itself: the deletion of a temporary folder warns of each. */
  @AfterEach
  void takeLinksAway() throws IOException {
    try (Stream<Path> links = Files.list(tools)) {
      for (Path link : links.filter(Files::isSymbolicLink).toList()) {
        Files.delete(link);
      }
    }
  }

  @Test
  void aMachineWithoutJavaGetsOneLine() throws Exception {
    Said said = start("demo");
    assertEquals(1, said.exit());
    assertEquals(1, said.text().lines().count(), said.text());
    assertTrue(said.text().contains("Java 17 or newer is needed: install"), said.text());
  }

  @Test
  void anOldJavaIsNamed() throws Exception {
    fake("java", "echo 'openjdk version \"1.8.0_402\"' >&2");
    Said said = start("demo");
    assertEquals(1, said.exit());
    assertTrue(said.text().contains("is version 8: install"), said.text());
    assertEquals(1, said.text().lines().count(), said.text());
  }

  @Test
  void aMachineWithoutMavenGetsOneLine() throws Exception {
    java();
    Said said = start("demo");
    assertEquals(1, said.exit());
    assertEquals(1, said.text().lines().count(), said.text());
    assertTrue(said.text().contains("Maven is needed to build: install it"), said.text());
  }

  @Test
  void theFirstStartBuildsAndSaysHowMuchItDownloadsAndTheSecondCallsNoMaven() throws Exception {
    java();
    maven();
    Said first = start("find", "12 Mill Lane");
    assertEquals(0, first.exit(), first.text());
    assertTrue(first.text().contains("Downloads about"), first.text());
    assertTrue(calls("mvn").contains("-Ddogleg.run"), calls("mvn"));
    assertTrue(first.text().contains("[find][12 Mill Lane]"), first.text());
    Files.delete(temp.resolve("mvn.calls"));
    Path link =
        Files.createSymbolicLink(temp.resolve("dl"), project.resolve("router-cli/bin/dogleg"));
    Said second = run(link, "demo");
    assertEquals(0, second.exit(), second.text());
    assertEquals("[demo]\n", second.text());
    assertEquals("", calls("mvn"));
  }

  @Test
  void aNewerSourceIsBuiltWithoutNetwork() throws Exception {
    java();
    maven();
    start("demo");
    Files.delete(temp.resolve("mvn.calls"));
    Path source = Files.writeString(project.resolve("router-core/src/main/New.java"), "");
    Files.setLastModifiedTime(source, FileTime.fromMillis(System.currentTimeMillis() + 60_000));
    assertEquals(0, start("demo").exit());
    assertTrue(calls("mvn").contains("-B -o "), calls("mvn"));
  }

  @Test
  void theClassesOfAFirstWholeRunServeTheNext() throws Exception {
    java();
    maven();
    Path archive = project.resolve("router-cli/target/dogleg-fit.jsa");
    assertEquals(3, start("fit", "stops").exit());
    assertTrue(Files.notExists(archive), "a run that stopped has seen too few classes");
    assertEquals(0, start("fit", "goes on").exit());
    assertTrue(Files.exists(archive), calls("java"));
    Files.delete(temp.resolve("java.calls"));
    assertEquals("[fit][goes on]\n", start("fit", "goes on").text());
    assertTrue(calls("java").contains("-XX:SharedArchiveFile=" + archive), calls("java"));
    assertEquals(1, calls("java").lines().count(), calls("java"));
    try (Stream<Path> built = Files.list(archive.getParent())) {
      assertTrue(built.noneMatch(file -> file.toString().endsWith(".list")), "lists are left");
    }
  }

  private void java() throws IOException {
    fake("javac", "");
    fake(
        "java",
        """
        if [ "$1" = -version ]; then echo 'openjdk version "17.0.15" 2025-04-15' >&2; exit 0; fi
        while [ "$1" != -jar ]; do
          case $1 in
            -XX:DumpLoadedClassList=*) : >"${1#*=}" ;;
            -XX:SharedArchiveFile=*) archive=${1#*=} ;;
            -Xshare:dump) dumps=yes ;;
          esac
          shift
        done
        if [ -n "$dumps" ]; then : >"$archive"; exit 0; fi
        shift 2
        if [ "$2" = stops ]; then exit 3; fi
        for arg in "$@"; do printf '[%s]' "$arg"; done; echo
        """);
  }

  private void maven() throws IOException {
    fake("mvn", "mkdir -p router-cli/target && : >router-cli/target/router-cli.jar");
  }

  private void fake(String tool, String body) throws IOException {
    Path file =
        Files.writeString(
            tools.resolve(tool),
            "#!/bin/bash\necho \"$@\" >>'" + temp + "/" + tool + ".calls'\n" + body + "\n");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private String calls(String tool) throws IOException {
    Path file = temp.resolve(tool + ".calls");
    return Files.exists(file) ? Files.readString(file) : "";
  }

  private Said start(String... args) throws Exception {
    return run(project.resolve("router-cli/bin/dogleg"), args);
  }

  private Said run(Path script, String... args) throws Exception {
    List<String> command = new ArrayList<>(List.of("/bin/bash", script.toString()));
    command.addAll(List.of(args));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().clear();
    builder.environment().put("PATH", tools.toString());
    Process process = builder.start();
    String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Said(process.waitFor(), text);
  }
}
