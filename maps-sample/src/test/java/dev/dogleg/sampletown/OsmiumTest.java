package dev.dogleg.sampletown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * An outside judge: osmium-tool accepts the file. Skipped where osmium is not installed.
 *
 * <p>Source: osmium-tool manual pages fileinfo and check-refs.
 */
class OsmiumTest {

  @Test
  void fileinfoFindsOrderedData() throws Exception {
    String info = osmium("fileinfo", "-e", SampleTown.MAP_FILE);
    assertTrue(info.contains("Objects ordered (by type and id): yes"), info);
    assertTrue(info.contains("Multiple versions of same object: no"), info);
  }

  @Test
  void allReferencesResolve() throws Exception {
    osmium("check-refs", "-r", SampleTown.MAP_FILE);
  }

  private static String osmium(String... arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("osmium"));
    command.addAll(List.of(arguments));
    Process process;
    try {
      process = new ProcessBuilder(command).redirectErrorStream(true).start();
    } catch (IOException e) {
      return abort("osmium is not installed: its check of the sample map is skipped");
    }
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), output);
    return output;
  }
}
