package dev.dogleg.cli.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.cli.export.SetAside;
import dev.dogleg.cli.export.SetAsideCsv;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What our writer guards against spreadsheets, our reader takes off again. */
class RoundTripTest {
  private static final String[] BITS = {
    "=", "+", "-", "@", "'", "''", "\t", "\n", "\"", ",", ";", "a", "Ü", " ", "1", "=1+1", "'="
  };

  @TempDir Path dir;

  @Test
  void anyCellComesBackAsItWas() {
    SplittableRandom random = new SplittableRandom(3);
    for (int run = 0; run < 80; run++) {
      Map<String, String> cells = new LinkedHashMap<>();
      cells.put("client", "Okafor");
      cells.put("pet", "Rex");
      cells.put("address", "12 Mill Lane");
      cells.put("own", text(random));
      cells.put("other", text(random));
      String text =
          SetAsideCsv.text(
              List.of(
                  new SetAside(
                      new Fault(
                          "bad-when", Severity.ASIDE, Where.row("bookings.csv", 2), "=1", "", ""),
                      cells)));
      ReadBook read = Folder.in(dir).with("bookings.csv", text).read();
      Map<String, String> back = read.cells(read.sources().booking("okafor.rex", Column.CLIENT));
      assertEquals(cells.get("own"), back.get("own"), "run " + run);
      assertEquals(cells.get("other"), back.get("other"), "run " + run);
      assertEquals("=1", back.get("seen"));
    }
  }

  private static String text(SplittableRandom random) {
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(5); i > 0; i--) {
      text.append(BITS[random.nextInt(BITS.length)]);
    }
    return text.toString();
  }
}
