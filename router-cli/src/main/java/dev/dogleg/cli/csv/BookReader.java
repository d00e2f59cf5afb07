package dev.dogleg.cli.csv;

import dev.dogleg.cli.file.TextFile;
import dev.dogleg.cli.settings.Card;
import dev.dogleg.cli.settings.CardReader;
import dev.dogleg.cli.told.ToldBook;
import dev.dogleg.cli.told.ToldLog;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.Learned;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;

/** Reads a book folder, or one wide bookings file with a card of its own. */
public final class BookReader {
  /** Bookings in a book folder. */
  public static final String BOOKINGS = "bookings.csv";

  /** Clients in a book folder; may be missing where bookings are wide. */
  public static final String CLIENTS = "clients.csv";

  /** Pets in a book folder; may be missing where bookings are wide. */
  public static final String PETS = "pets.csv";

  /** Corrected addresses in a book folder; may be missing. */
  public static final String PLACES = "places.csv";

  /** Special days in a book folder; may be missing. */
  public static final String DAYS = "days.csv";

  /** Rules by tag in a book folder; may be missing. */
  public static final String RULES = "rules.csv";

  /** The groomer's own stops in a book folder; may be missing. */
  public static final String ERRANDS = "errands.csv";

  /** Zones in a book folder; may be missing. */
  public static final String ZONES = "zones.csv";

  /** Areas of zones in a book folder; may be missing. */
  public static final String ZONE_AREAS = "zones.geojson";

  private final ReadOptions options;
  private final Faults faults = new Faults();

  private BookReader(ReadOptions options) {
    this.options = options;
  }

  /**
   * Reads a book. Never throws for what a file holds.
   *
   * @param path a book folder, or one wide bookings file
   * @param options how to read it
   * @return the book and all faults; the book is empty exactly where a fault stops the run
   */
  public static ReadBook read(Path path, ReadOptions options) {
    return new BookReader(options).read(path);
  }

  /**
   * Reads newcomers: wide bookings under the card, tables and corrected addresses of a book.
   *
   * @param file wide bookings, undated where no day is meant
   * @param folder folder of the book
   * @param book the book as read
   * @return a book of the newcomers alone, and all faults of the file
   */
  public static ReadBook newcomers(TextFile file, Path folder, ReadBook book) {
    BookReader reader = new BookReader(ReadOptions.of(book.tables()));
    Table places = reader.optional(folder, PLACES, Column.PLACES);
    // What is wrong with the corrections was said when the book was read.
    Faults own = new Faults();
    Table bookings = TableReader.read(file, Column.BOOKINGS, own).orElse(Table.none(file.name()));
    return new BookBuilder(ReadOptions.of(book.tables()), book.tables(), book.card(), own)
        .build(
            new BookTables(
                bookings,
                Table.none(CLIENTS),
                Table.none(PETS),
                places,
                Table.none(DAYS),
                Table.none(RULES),
                Table.none(ERRANDS),
                Table.none(ZONES),
                ZoneAreas.none(),
                ToldBook.NOTHING));
  }

  private ReadBook read(Path path) {
    boolean alone = Files.exists(path) && !Files.isDirectory(path);
    Path folder = alone ? path.toAbsolutePath().getParent() : path;
    if (!alone && !Files.isDirectory(path)) {
      TextFile.read(path, path.toString(), faults);
      return BookBuilder.nothing(options.tables(), faults);
    }
    Optional<Card> card = card(alone, folder);
    Optional<Table> bookings =
        alone
            ? table(path, path.toString(), Column.BOOKINGS)
            : table(folder.resolve(BOOKINGS), BOOKINGS, Column.BOOKINGS);
    Table clients = alone ? Table.none(CLIENTS) : optional(folder, CLIENTS, Column.CLIENTS);
    Table pets = alone ? Table.none(PETS) : optional(folder, PETS, Column.PETS_TABLE);
    // Beside a bookings file that lies about alone, nothing else is taken for part of a book.
    boolean isBook = !alone || Files.exists(folder.resolve(CardReader.FILE));
    GroomTables tables = isBook ? tables(folder) : options.tables();
    bookings = bookings.filter(table -> hasDoors(table, clients));
    return new BookBuilder(options, tables, card, faults)
        .build(
            new BookTables(
                bookings.orElse(Table.none(BOOKINGS)),
                clients,
                pets,
                isBook ? optional(folder, PLACES, Column.PLACES) : Table.none(PLACES),
                isBook ? optional(folder, DAYS, Column.DAY_TABLE) : Table.none(DAYS),
                isBook ? optional(folder, RULES, Column.RULES) : Table.none(RULES),
                isBook ? optional(folder, ERRANDS, Column.ERRANDS) : Table.none(ERRANDS),
                isBook ? optional(folder, ZONES, Column.ZONES) : Table.none(ZONES),
                isBook ? areas(folder) : ZoneAreas.none(),
                isBook ? ToldBook.of(ToldLog.read(folder, faults).rows()) : ToldBook.NOTHING));
  }

  /** The starter's tables under the book's own, and over both what was learned from its visits. */
  private GroomTables tables(Path folder) {
    GroomTables own = OwnTables.read(folder, options.tables(), faults);
    Learned learned = LearnedTable.read(folder, faults);
    return learned.isEmpty() ? own : own.with(learned);
  }

  private Optional<Card> card(boolean alone, Path folder) {
    if (options.business().isPresent()) {
      Path path = options.business().get();
      return CardReader.read(path, path.toString(), faults);
    }
    if (alone && !Files.exists(folder.resolve(CardReader.FILE))) {
      faults.add(
          new Fault(
              "missing-card",
              Severity.STOP,
              Where.NOWHERE,
              "",
              "a business card is needed beside the bookings",
              "name one with --business, or put business.yaml into the same folder"));
      return Optional.empty();
    }
    return CardReader.read(folder.resolve(CardReader.FILE), CardReader.FILE, faults);
  }

  private Table optional(Path folder, String name, Set<Column> columns) {
    return Files.exists(folder.resolve(name))
        ? table(folder.resolve(name), name, columns).orElse(Table.none(name))
        : Table.none(name);
  }

  private Optional<Table> table(Path path, String name, Set<Column> columns) {
    return TextFile.read(path, name, faults)
        .flatMap(file -> TableReader.read(file, columns, faults));
  }

  private ZoneAreas areas(Path folder) {
    return Files.exists(folder.resolve(ZONE_AREAS))
        ? TextFile.read(folder.resolve(ZONE_AREAS), ZONE_AREAS, faults)
            .map(text -> ZoneAreas.read(text, faults))
            .orElseGet(ZoneAreas::none)
        : ZoneAreas.none();
  }

  /** Somebody has to say where the doors are. */
  private boolean hasDoors(Table bookings, Table clients) {
    boolean wide =
        bookings.columns().contains(Column.ADDRESS) || bookings.columns().contains(Column.PIN);
    boolean has = wide || !clients.columns().isEmpty();
    if (!has) {
      faults.add(
          new Fault(
              "missing-column",
              Severity.STOP,
              Where.row(bookings.name(), 1).at(Column.ADDRESS.label()),
              "",
              "an address in each row, or a file " + CLIENTS + ", was expected",
              "first columns of a wide file: client,pet,address,breed,service,when,minutes"));
    }
    return has;
  }
}
