package dev.dogleg.cli.csv;

import dev.dogleg.cli.settings.Card;
import dev.dogleg.cli.told.ToldBook;
import dev.dogleg.cli.words.DateOrder;
import dev.dogleg.cli.words.Slug;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Client;
import dev.dogleg.model.DayEntry;
import dev.dogleg.model.Pet;
import dev.dogleg.model.WeekBook;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Joins the tables of a book: clients, their pets, their bookings. */
final class BookBuilder {
  private final ReadOptions options;
  private final GroomTables tables;
  private Optional<Card> card;
  private final Faults faults;
  private final Sources sources = new Sources();
  private final People people = new People();

  BookBuilder(ReadOptions options, GroomTables tables, Optional<Card> card, Faults faults) {
    this.options = options;
    this.tables = tables;
    this.card = card;
    this.faults = faults;
  }

  static ReadBook nothing(GroomTables tables, Faults faults) {
    return new ReadBook(
        Optional.empty(),
        Optional.empty(),
        tables,
        Corrections.of(Map.of()),
        new Sources(),
        faults);
  }

  ReadBook build(BookTables books) {
    Table bookingTable = books.bookings();
    Table clientTable = books.clients();
    Table petTable = books.pets();
    List<Cells> placeRows = cells(books.places());
    DateOrder order = card.map(Card::dateOrder).orElse(DateOrder.ISO);
    Corrections corrections = PlaceRows.read(placeRows, options.bounds(), order);
    card = card.map(read -> read.withHomes(corrections::applied));
    Context context = new Context(card, tables, options.bounds(), corrections, new HashMap<>());
    List<Cells> clientRows = new ArrayList<>(cells(clientTable));
    List<Cells> petRows = cells(petTable);
    List<Cells> bookingRows = cells(bookingTable);

    clientRows.forEach(people::add);
    WideRows wide = new WideRows(people);
    List<Cells> wideClients =
        clientTable.columns().isEmpty() || describesDoors(bookingTable)
            ? wide.clients(bookingRows)
            : List.of();
    wideClients.forEach(people::add);
    for (Cells row : petRows) {
      people.find(row).ifPresent(owner -> People.add(owner, row));
    }
    wide.pets(bookingRows, petTable.columns().isEmpty());
    people.giveIds();
    for (Person person : people.all()) {
      ClientRecord.read(person, context);
      person.animals().forEach(animal -> PetRecord.read(animal, context));
    }
    WeekRows weekRows = books.week(this::cells);
    List<DayEntry> days = weekRows.special(context);
    List<Booking> bookings = bookings(bookingRows, context, days, books.told());
    Set<String> bookingIds = bookings.stream().map(Booking::id).collect(Collectors.toSet());
    WeekBook week = weekRows.read(days, context, bookingIds, sources);
    List<List<Cells>> rows = new ArrayList<>(List.of(placeRows, clientRows, petRows, bookingRows));
    rows.addAll(weekRows.tables());
    Faults all = collect(rows, wideClients);
    Optional<Book> book =
        all.stops() || card.isEmpty() ? Optional.empty() : Optional.of(book(bookings, week));
    return new ReadBook(card, book, tables, corrections, sources, all);
  }

  private List<Cells> cells(Table table) {
    table.rows().forEach(sources::raw);
    return table.rows().stream().map(Cells::new).toList();
  }

  private static boolean describesDoors(Table bookings) {
    return bookings.columns().contains(Column.ADDRESS) || bookings.columns().contains(Column.PIN);
  }

  private List<Booking> bookings(
      List<Cells> rows, Context context, List<DayEntry> special, ToldBook before) {
    Map<Cells, Booking> read = new HashMap<>();
    for (Cells cells : rows) {
      BookingRecord.read(cells, people, context).ifPresent(found -> read.put(cells, found));
    }
    Set<String> ids = read.values().stream().map(Booking::id).collect(Collectors.toSet());
    Promises promises = new Promises(before, ids, context.dateOrder());
    Map<String, Booking> byId = new LinkedHashMap<>();
    Map<String, Integer> taken = new HashMap<>();
    Set<String> told = new HashSet<>();
    Optional<DayCheck> days = card.map(found -> new DayCheck(found.business(), special));
    for (Cells cells : rows) {
      Optional<Booking> booking =
          Optional.ofNullable(read.get(cells)).map(found -> promises.kept(found, cells));
      booking.ifPresent(
          found -> {
            if (found.status().open()) {
              days.ifPresent(check -> check.check(found, cells));
            }
            twice(found, cells, byId, taken);
            if (!cells.bad()) {
              byId.put(found.id(), found);
              sources.booking(found.id(), cells.row());
            }
          });
      boolean promised =
          booking
              .map(found -> found.told().isPresent() && found.status().open())
              .orElseGet(() -> cells.has(Column.TOLD) || promises.concern(cells, people));
      if (promised) {
        told.add(clientKey(cells));
      }
    }
    for (Cells cells : rows) {
      if (options.strict() || told.contains(clientKey(cells))) {
        cells.stopInsteadOfAside();
      }
    }
    return List.copyOf(byId.values());
  }

  /** Whose row it is: a client who was told a time must not lose any booking silently. */
  private static String clientKey(Cells cells) {
    return cells.has(Column.CLIENT_ID)
        ? cells.text(Column.CLIENT_ID)
        : Slug.fold(cells.text(Column.CLIENT));
  }

  /**
   * A booking is there twice where its id is, or where one of its pets is open for the same date.
   */
  private static void twice(
      Booking booking, Cells cells, Map<String, Booking> byId, Map<String, Integer> taken) {
    int row = cells.row().where().row();
    if (byId.containsKey(booking.id())) {
      cells.aside(
          "duplicate-row",
          cells.has(Column.BOOKING) ? Column.BOOKING : Column.CLIENT,
          "this booking is in the book already: " + booking.id(),
          "remove it, or give each its own booking id");
      return;
    }
    if (!booking.status().open()) {
      return;
    }
    String dates = booking.dates().map(Object::toString).orElse("");
    for (var pet : booking.pets()) {
      Integer before = taken.putIfAbsent(pet.petId() + "@" + dates, row);
      if (before != null && before != row) {
        cells.aside(
            "duplicate-row",
            cells.has(Column.PET) ? Column.PET : Column.PETS,
            "row " + before + " books this pet for the same date",
            "remove one of them");
        return;
      }
    }
  }

  /** Puts the faults of all rows in order: by file as read, then by row. */
  private Faults collect(List<List<Cells>> tables, List<Cells> wideClients) {
    // The rows of a booking come last: what is wrong with its client or pet is said before.
    List<Fault> found = new ArrayList<>(faults.all());
    wideClients.forEach(cells -> found.addAll(cells.faults()));
    Set<Cells> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    tables.forEach(seen::addAll);
    for (Person person : people.all()) {
      person.animals().stream()
          .map(Animal::cells)
          .filter(cells -> !seen.contains(cells))
          .forEach(cells -> found.addAll(cells.faults()));
    }
    tables.forEach(rows -> rows.forEach(cells -> found.addAll(cells.faults())));
    List<String> files = found.stream().map(fault -> fault.where().file()).distinct().toList();
    Faults ordered = new Faults();
    found.stream()
        .sorted(
            Comparator.comparingInt((Fault fault) -> files.indexOf(fault.where().file()))
                .thenComparingInt(fault -> fault.where().row()))
        .map(fault -> strict(fault))
        .distinct()
        .forEach(ordered::add);
    return ordered;
  }

  private Fault strict(Fault fault) {
    return options.strict() && fault.severity() == Severity.ASIDE ? fault.as(Severity.STOP) : fault;
  }

  private Book book(List<Booking> bookings, WeekBook week) {
    List<Client> clients = new ArrayList<>();
    List<Pet> pets = new ArrayList<>();
    for (Person person : people.all()) {
      if (person.client().isEmpty()) {
        continue;
      }
      clients.add(person.client().get());
      sources.client(person.id(), person.cells().row());
      for (Animal animal : person.animals()) {
        animal.pet().ifPresent(pets::add);
        sources.pet(animal.id(), animal.cells().row());
      }
    }
    return new Book(card.orElseThrow().business(), clients, pets, bookings, week);
  }
}
