package dev.dogleg.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Golden folders: each folder of {@code src/test/golden} holds {@code args} (one argument a line),
 * input files, and in {@code expected} the exit code, both streams and every file that the run
 * writes. {@code mvn ... -Ddogleg.golden=rewrite} writes what is expected anew; a person then reads
 * the difference.
 *
 * <p>In arguments and texts {@code {case}} stands for the folder the case runs in, {@code {root}}
 * for the project's, {@code {map}} for the sample map.
 */
class GoldenFolderTest {
  private static final Path GOLDEN = TestRun.ROOT.resolve("router-cli/src/test/golden");
  private static final boolean REWRITE = "rewrite".equals(System.getProperty("dogleg.golden"));

  @TempDir Path temp;

  static Stream<String> cases() throws IOException {
    try (Stream<Path> folders = Files.list(GOLDEN)) {
      return folders.map(folder -> folder.getFileName().toString()).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void whatComesOutIsWhatWasExpected(String name) throws IOException {
    Path golden = GOLDEN.resolve(name);
    Path here = Files.createDirectories(temp.resolve("a folder").resolve(name)).toRealPath();
    Map<String, String> inputs = texts(golden, "expected");
    for (Map.Entry<String, String> input : inputs.entrySet()) {
      Path file = here.resolve(input.getKey());
      Files.createDirectories(file.getParent());
      Files.copy(golden.resolve(input.getKey()), file);
    }
    List<String> args = new ArrayList<>();
    for (String arg : Files.readAllLines(golden.resolve("args"))) {
      args.add(
          arg.replace("{case}", here.toString())
              .replace("{root}", TestRun.ROOT.toString())
              .replace("{map}", TestRun.MAP.toString()));
    }
    TestRun run = TestRun.warm(args.toArray(String[]::new));
    Map<String, String> actual = new TreeMap<>();
    actual.put("exit", run.exit() + "\n");
    actual.put("out", hidden(run.out(), here));
    actual.put("err", hidden(run.err(), here));
    texts(here, "")
        .forEach(
            (file, text) -> {
              if (!inputs.containsKey(file)) {
                actual.put("files/" + file, hidden(text, here));
              }
            });
    Path expected = golden.resolve("expected");
    if (REWRITE) {
      rewrite(expected, actual);
    }
    Map<String, String> wanted = texts(expected, "");
    for (String file : actual.keySet()) {
      assertEquals(
          wanted.getOrDefault(file, "no such file was expected"),
          actual.get(file),
          name + "/" + file + " differs; rewrite with -Ddogleg.golden=rewrite and read the diff");
    }
    assertEquals(wanted.keySet(), actual.keySet(), name);
  }

  private static String hidden(String text, Path here) {
    return text.replace("\r\n", "\n")
        .replace(here.toString(), "{case}")
        .replace(TestRun.ROOT.toString(), "{root}");
  }

  private static void rewrite(Path expected, Map<String, String> actual) throws IOException {
    for (String old : texts(expected, "").keySet()) {
      Files.delete(expected.resolve(old));
    }
    for (Map.Entry<String, String> entry : actual.entrySet()) {
      Path file = expected.resolve(entry.getKey());
      Files.createDirectories(file.getParent());
      Files.writeString(file, entry.getValue());
    }
  }

  /** Every file below a folder as text, without those below {@code but}. */
  private static Map<String, String> texts(Path folder, String but) throws IOException {
    Map<String, String> texts = new TreeMap<>();
    if (!Files.isDirectory(folder)) {
      return texts;
    }
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = folder.relativize(file).toString().replace('\\', '/');
        if (but.isEmpty() || !name.startsWith(but + "/")) {
          texts.put(name, Files.readString(file).replace("\r\n", "\n"));
        }
      }
    }
    return texts;
  }
}
