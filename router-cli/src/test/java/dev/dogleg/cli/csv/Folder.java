package dev.dogleg.cli.csv;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Severity;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.StarterTables;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A book folder made by a test. */
final class Folder {
  /** Starter tables, read once. */
  static final GroomTables TABLES = StarterTables.load();

  /** A card with everything at its default. */
  static final String CARD =
      """
      country: US
      time_zone: America/New_York
      groomers:
        - name: Robin
          hours: {mon: 8:00-18:00, tue: 8:00-18:00, wed: 8:00-18:00, thu: 8:00-18:00, fri: 8:00-18:00}
          days_off: [2027-03-05]
          home: 2 Orchard Row
      vans:
        - name: Van 1
      """;

  private final Path path;

  Folder(Path path) {
    this.path = path;
  }

  /** A folder with the plain card. */
  static Folder in(Path path) {
    return new Folder(path).with("business.yaml", CARD);
  }

  Path path() {
    return path;
  }

  Folder with(String name, String text) {
    return with(name, text, StandardCharsets.UTF_8);
  }

  Folder with(String name, String text, Charset charset) {
    return with(name, text.getBytes(charset));
  }

  Folder with(String name, byte[] bytes) {
    try {
      Files.write(path.resolve(name), bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return this;
  }

  ReadBook read() {
    return BookReader.read(path, ReadOptions.of(TABLES));
  }

  ReadBook readFile(String name) {
    return BookReader.read(path.resolve(name), ReadOptions.of(TABLES));
  }

  /** Codes and places of the faults that are more than notes, one line each. */
  static List<String> loud(ReadBook read) {
    return read.faults().all().stream()
        .filter(fault -> fault.severity() != Severity.NOTE)
        .map(Folder::line)
        .toList();
  }

  static List<String> all(ReadBook read) {
    return read.faults().all().stream().map(Folder::line).toList();
  }

  private static String line(Fault fault) {
    return fault.severity() + " " + fault.where() + " " + fault.code();
  }
}
