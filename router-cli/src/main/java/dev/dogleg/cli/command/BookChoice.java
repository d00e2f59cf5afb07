package dev.dogleg.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which book a command reads. */
final class BookChoice {
  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "BOOK",
      description =
          "Book folder, or one bookings CSV with --business. Default: the current folder.")
  private Path book;

  @Option(
      names = "--business",
      paramLabel = "FILE",
      description = "Business card, where BOOK is a bookings CSV or to replace the book's own.")
  private Path business;

  @Option(names = "--map", paramLabel = "FILE", description = "Map file; wins over the card's.")
  private Path map;

  BookChoice() {}

  BookChoice(Path book, Path map) {
    this.book = book;
    this.map = map;
  }

  /** {@return the book folder or bookings file} */
  Path book() {
    return book == null ? Path.of("") : book;
  }

  /** {@return the business card named, or empty} */
  Optional<Path> business() {
    return Optional.ofNullable(business);
  }

  /** {@return the map named, or empty} */
  Optional<Path> map() {
    return Optional.ofNullable(map);
  }
}
