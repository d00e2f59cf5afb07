package dev.dogleg.cli.csv;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Severity;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A good book, damaged at random: never an exception, always a book or a reason with a place. */
class DamageTest {
  /** More with {@code -Ddogleg.runs=20000}. */
  private static final int RUNS = Integer.getInteger("dogleg.runs", 120);

  private static final String[] BITS = {
    "",
    ",",
    ";",
    "\"",
    "\n",
    "\r\n",
    "\t",
    "'",
    "=",
    "0",
    "-",
    "99999999999",
    "2027-03-05",
    "12-Sep",
    "1.5E+10",
    "é",
    "\u0000",
    "\uFEFF",
    "client",
    "all",
    "; ;",
    "9-12",
    "first",
    "done",
    "@",
    "x".repeat(11_000)
  };

  @TempDir Path dir;

  @Test
  void damageIsSaid() {
    SplittableRandom random = new SplittableRandom(20_270_303);
    String[] names = {"clients.csv", "pets.csv", "bookings.csv", "places.csv"};
    String[] good = {GoodBook.CLIENTS, GoodBook.PETS, GoodBook.BOOKINGS, GoodBook.PLACES};
    Folder folder = GoodBook.in(dir);
    for (int run = 0; run < RUNS; run++) {
      int which = random.nextInt(names.length);
      byte[] bytes = damaged(good[which], random);
      ReadBook read = folder.with(names[which], bytes).read();
      String label = "run " + run + " of " + names[which];
      assertTrue(read.book().isPresent() != read.faults().stops(), label);
      for (Fault fault : read.faults().all()) {
        assertFalse(fault.where().file().isEmpty(), () -> label + ": " + fault);
        assertFalse(fault.expected().isEmpty(), () -> label + ": " + fault);
        boolean wholeFile = fault.where().row() == 0;
        assertTrue(
            !wholeFile || fault.severity() == Severity.STOP || fault.code().equals("not-read-yet"),
            () -> label + ": " + fault);
      }
      folder.with(names[which], good[which]);
    }
  }

  private static byte[] damaged(String good, SplittableRandom random) {
    StringBuilder text = new StringBuilder(good);
    for (int i = random.nextInt(1, 4); i > 0; i--) {
      int at = random.nextInt(text.length());
      int length = random.nextInt(4) == 0 ? random.nextInt(60) : random.nextInt(4);
      text.replace(at, Math.min(text.length(), at + length), BITS[random.nextInt(BITS.length)]);
    }
    byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
    if (random.nextInt(10) == 0) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }
}
