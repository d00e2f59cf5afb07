package dev.dogleg.cli.console;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a reader sees who is no terminal, or an old one. */
class ConsoleTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void resultsAndMessagesGoTwoWays() {
    Console console = console(StandardCharsets.UTF_8);
    console.say("© a result");
    console.warn("a message");
    assertEquals("© a result", out.toString().strip());
    assertEquals("a message", err.toString().strip());
  }

  @Test
  void aCharacterSetWithoutTheSignGetsAPlainOne() {
    console(StandardCharsets.US_ASCII).say("© OpenStreetMap contributors – ODbL");
    assertEquals("(c) OpenStreetMap contributors - ODbL", out.toString().strip());
  }

  @Test
  void elsewhereThanOnATerminalAPhaseIsOneLine() {
    try (Progress progress = console(StandardCharsets.UTF_8).progress("Reading roads")) {
      progress.phase("streets");
      progress.at(1, 10);
      progress.phase("streets");
      progress.phase("houses");
    }
    assertEquals(
        List.of("Reading roads ...", "  streets", "  houses"), err.toString().lines().toList());
  }

  @Test
  void exitCodesAreThoseOfTheContract() {
    assertEquals(
        List.of(0, 1, 2, 3, 4, 5, 6),
        Arrays.stream(ExitCode.values()).map(ExitCode::number).toList());
  }

  private Console console(java.nio.charset.Charset charset) {
    return new Console(new PrintWriter(out), new PrintWriter(err), false, charset);
  }
}
