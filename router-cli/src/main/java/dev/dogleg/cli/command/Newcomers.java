package dev.dogleg.cli.command;

import dev.dogleg.cli.csv.BookReader;
import dev.dogleg.cli.csv.Column;
import dev.dogleg.cli.csv.ReadBook;
import dev.dogleg.cli.csv.Sources;
import dev.dogleg.cli.export.CsvText;
import dev.dogleg.cli.file.TextFile;
import dev.dogleg.cli.prepare.MoreRows;
import dev.dogleg.cli.prepare.RowFinder;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.model.Place;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Who asks to be taken, read like the rows of a wide book, and the book with them in it. */
final class Newcomers {
  /** Name of the command line in faults. */
  static final String COMMAND_LINE = "command line";

  private final BookInput input;
  private final ReadBook read;
  private final Book own;
  private final String file;

  private static final String HEADER =
      CsvText.line(
          List.of(
              "client", "pet", "address", "breed", "size", "coat", "service", "when", "price",
              "pin"));

  /**
   * A newcomer as the options say.
   *
   * @param address as typed
   * @param name who calls
   * @param pet the pet's name
   * @param breed breed or words, may be empty
   * @param size may be empty
   * @param coat may be empty
   * @param service may be empty
   * @param when may be empty
   * @param price may be empty
   */
  record Described(
      String address,
      String name,
      String pet,
      String breed,
      String size,
      String coat,
      String service,
      String when,
      String price) {
    TextFile asFile() {
      return new TextFile(COMMAND_LINE, HEADER + row(name, address, ""));
    }

    /** A row for each of several doors: the same newcomer there. */
    TextFile at(List<Place> doors) {
      StringBuilder rows = new StringBuilder(HEADER);
      for (int door = 0; door < doors.size(); door++) {
        Optional<GeoPoint> pin = doors.get(door).pin();
        rows.append(
            row(
                name + " at door " + (door + 1),
                doors.get(door).address(),
                pin.map(point -> point.lat() + "," + point.lon()).orElse("")));
      }
      return new TextFile(COMMAND_LINE, rows.toString());
    }

    private String row(String who, String where, String pin) {
      return CsvText.line(List.of(who, pet, where, breed, size, coat, service, when, price, pin));
    }
  }

  private Newcomers(BookInput input, ReadBook read, Book own, String file) {
    this.input = input;
    this.read = read;
    this.own = own;
    this.file = file;
  }

  /** Reads newcomers; empty where a fault stops the run. */
  static Optional<Newcomers> of(
      Optional<Described> described, Optional<Path> csv, BookInput input, Faults faults) {
    Optional<TextFile> text =
        described
            .map(Described::asFile)
            .or(() -> csv.flatMap(path -> TextFile.read(path, path.toString(), faults)));
    return text.flatMap(file -> read(file, input, faults));
  }

  /** The same newcomer at each of some doors; empty where a fault stops the run. */
  static Optional<Newcomers> at(
      List<Place> doors, Described described, BookInput input, Faults faults) {
    return read(described.at(doors), input, faults);
  }

  private static Optional<Newcomers> read(TextFile text, BookInput input, Faults faults) {
    ReadBook read = BookReader.newcomers(text, input.folder(), input.read());
    faults.addAll(read.faults());
    if (read.book().isEmpty() || faults.stops()) {
      return Optional.empty();
    }
    Book own = KnownCallers.met(input.book(), read.book().get(), read.sources(), faults);
    Newcomers newcomers = new Newcomers(input, read, own, text.name());
    if (newcomers.bookings().isEmpty()) {
      faults.add(
          new Fault(
              "no-newcomer",
              Severity.STOP,
              Where.file(newcomers.file),
              "",
              "at least one row that can be read was expected",
              ""));
    }
    return faults.stops() ? Optional.empty() : Optional.of(newcomers);
  }

  /** {@return the newcomers' bookings in the order of their rows} */
  List<Booking> bookings() {
    return own.bookings();
  }

  /** {@return the book with the newcomers in it} */
  Book joined() {
    return input.book().with(own.clients(), own.pets(), own.bookings());
  }

  /** Whether a fault speaks of a newcomer. */
  boolean concerns(Fault fault) {
    return fault.where().file().equals(file);
  }

  /** {@return where things of the book and of the newcomers stand} */
  RowFinder rows() {
    RowFinder book = input.rows();
    Sources sources = read.sources();
    Set<String> ids = new HashSet<>();
    own.clients().forEach(client -> ids.add(client.id()));
    own.bookings().forEach(booking -> ids.add(booking.id()));
    return new MoreRows(
        book,
        id ->
            ids.contains(id)
                ? Optional.of(sources.client(KnownCallers.typed(id), Column.ADDRESS))
                : Optional.empty(),
        id -> ids.contains(id) ? Optional.of(sources.booking(id, Column.WHEN)) : Optional.empty());
  }
}
