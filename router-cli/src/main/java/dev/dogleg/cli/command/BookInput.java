package dev.dogleg.cli.command;

import dev.dogleg.cli.csv.BookReader;
import dev.dogleg.cli.csv.Column;
import dev.dogleg.cli.csv.ReadBook;
import dev.dogleg.cli.csv.ReadOptions;
import dev.dogleg.cli.csv.Sources;
import dev.dogleg.cli.export.SetAside;
import dev.dogleg.cli.prepare.MapAhead;
import dev.dogleg.cli.prepare.RowFinder;
import dev.dogleg.cli.settings.Card;
import dev.dogleg.cli.settings.CardReader;
import dev.dogleg.cli.settings.TextWishes;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.model.Book;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A book that was read, with what commands need to know about where it came from.
 *
 * @param read the book as read
 * @param map map file in force
 * @param folder folder of the book
 * @param card name of the card in faults
 */
record BookInput(ReadBook read, Path map, Path folder, String card) {

  /**
   * Reads the book a person chose.
   *
   * @param choice the choice
   * @param strict whether rows set aside stop the run
   * @param faults takes every fault
   * @return the book, or empty where a fault stops the run
   */
  static Optional<BookInput> read(BookChoice choice, boolean strict, Faults faults) {
    GroomTables tables = StarterTables.load();
    Path path = choice.book().toAbsolutePath().normalize();
    ReadBook read =
        BookReader.read(path, new ReadOptions(tables, choice.business(), Optional.empty(), strict));
    faults.addAll(read.faults());
    String card = cardName(choice);
    Optional<Path> map = choice.map().or(() -> read.card().flatMap(BookInput::mapOf));
    if (map.isEmpty() && read.card().isPresent()) {
      faults.add(noMap(card));
    }
    if (read.book().isEmpty() || map.isEmpty()) {
      return Optional.empty();
    }
    Path folder = Files.isDirectory(path) ? path : path.getParent();
    return Optional.of(new BookInput(read, map.get(), folder, card));
  }

  /**
   * Opens what the cache has of the book's map while the book is read.
   *
   * @param choice which book
   * @param cache folder of the caches
   * @return what is being opened; empty where the card names no map or cannot be read, which
   *     reading the book will say
   */
  static Optional<MapAhead> ahead(BookChoice choice, Path cache) {
    Optional<Card> card = card(choice, new Faults());
    return card.flatMap(
        known ->
            choice
                .map()
                .or(() -> mapOf(known))
                .map(map -> new MapAhead(map, cache, known.business())));
  }

  private static Optional<Card> card(BookChoice choice, Faults faults) {
    Path path = choice.book().toAbsolutePath().normalize();
    Path folder = Files.isDirectory(path) ? path : path.getParent();
    Path file = choice.business().orElse(folder.resolve(CardReader.FILE));
    return CardReader.read(file, cardName(choice), faults);
  }

  private static String cardName(BookChoice choice) {
    return choice.business().map(Path::toString).orElse(CardReader.FILE);
  }

  /**
   * The map a book's card names, without reading the rest of the book.
   *
   * @param choice the choice
   * @param faults takes what is wrong with the card
   * @return the map file, or empty where a fault was added
   */
  static Optional<Path> mapOf(BookChoice choice, Faults faults) {
    if (choice.map().isPresent()) {
      return choice.map();
    }
    Optional<Card> card = card(choice, faults);
    Optional<Path> map = card.flatMap(BookInput::mapOf);
    if (card.isPresent() && map.isEmpty()) {
      faults.add(noMap(cardName(choice)));
    }
    return map;
  }

  private static Optional<Path> mapOf(Card card) {
    return card.business().map();
  }

  private static Fault noMap(String card) {
    return new Fault(
        "missing-map",
        Severity.STOP,
        Where.file(card).at("map"),
        "",
        "a map file was expected",
        "name one in the card (map: region.osm.pbf) or with --map");
  }

  /** {@return groom tables in force: the starter's under the book's own} */
  GroomTables tables() {
    return read.tables();
  }

  /** {@return what the card says of texts to owners} */
  TextWishes texts() {
    return read.card().orElseThrow().texts();
  }

  /** {@return the book} */
  Book book() {
    return read.book().orElseThrow();
  }

  /** {@return where things stand} */
  RowFinder rows() {
    Sources sources = read.sources();
    return new RowFinder() {
      @Override
      public Where client(String clientId) {
        return sources.client(clientId, Column.ADDRESS);
      }

      @Override
      public Where booking(String bookingId) {
        return sources.booking(bookingId, Column.DATE);
      }

      @Override
      public Where home(String groomerId) {
        return Where.file(card).at("groomers." + groomerId + ".home");
      }

      @Override
      public Where rule(String name) {
        return sources.rule(name, Column.RULE);
      }

      @Override
      public Where zone(String name) {
        return sources.zone(name, Column.ZONE);
      }

      @Override
      public Where errand(String errandId) {
        return sources.errand(errandId, Column.ADDRESS);
      }

      @Override
      public Where waterPlaces() {
        return Where.file(card).at("water.places");
      }
    };
  }

  /**
   * The rows that faults set aside, as they stand in their files.
   *
   * @param faults all faults of the run
   * @return one entry a fault that sets a row aside
   */
  List<SetAside> setAside(List<Fault> faults) {
    return faults.stream()
        .filter(fault -> fault.severity() == Severity.ASIDE)
        .distinct()
        .map(fault -> new SetAside(fault, read.cells(fault.where())))
        .toList();
  }
}
