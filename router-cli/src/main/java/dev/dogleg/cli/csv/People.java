package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.Nearness;
import dev.dogleg.cli.words.Slug;
import dev.dogleg.fault.Severity;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The clients of a book and their animals, found by own id or by name. */
final class People {
  private static final int MOST_HINTS = 200;

  private final List<String> names = new ArrayList<>();
  private int hints;
  private final List<Person> all = new ArrayList<>();
  private final Map<String, List<Person>> byName = new LinkedHashMap<>();
  private final Map<String, Person> byOwnId = new LinkedHashMap<>();

  Collection<Person> all() {
    return all;
  }

  /** Adds the client of a row; a second row for the same client is set aside. */
  Optional<Person> add(Cells cells) {
    if (!cells.has(Column.CLIENT)) {
      cells.aside("missing-cell", Column.CLIENT, "a client's name was expected", "");
      return Optional.empty();
    }
    Optional<String> ownId = IdRule.own(cells, Column.CLIENT_ID);
    if (cells.has(Column.CLIENT_ID) && ownId.isEmpty()) {
      return Optional.empty();
    }
    List<Person> same =
        byName.computeIfAbsent(Slug.fold(cells.text(Column.CLIENT)), key -> new ArrayList<>());
    Optional<Person> other =
        ownId.isPresent()
            ? Optional.ofNullable(byOwnId.get(ownId.get()))
                .or(() -> same.stream().filter(one -> one.ownId().isEmpty()).findFirst())
            : same.stream().findFirst();
    if (other.isPresent()) {
      cells.aside(
          "duplicate-row",
          ownId.isPresent() ? Column.CLIENT_ID : Column.CLIENT,
          "stands in row " + other.get().cells().row().where().row() + " already",
          "two clients of one name need a client_id each");
      return Optional.empty();
    }
    Person person = new Person(cells, cells.text(Column.CLIENT), ownId);
    same.add(person);
    ownId.ifPresent(id -> byOwnId.put(id, person));
    all.add(person);
    names.add(person.name());
    return Optional.of(person);
  }

  /** The client a row speaks of; says so in the row where there is none, or more than one. */
  Optional<Person> find(Cells cells) {
    if (cells.has(Column.CLIENT_ID)) {
      Person person = byOwnId.get(cells.text(Column.CLIENT_ID));
      if (person == null) {
        unknown(cells, Column.CLIENT_ID, hinted(byOwnId.keySet()));
      }
      return Optional.ofNullable(person);
    }
    if (!cells.has(Column.CLIENT)) {
      cells.aside("missing-cell", Column.CLIENT, "a client's name was expected", "");
      return Optional.empty();
    }
    List<Person> named = byName.getOrDefault(Slug.fold(cells.text(Column.CLIENT)), List.of());
    if (named.size() > 1) {
      ambiguous(cells, named.size());
      return Optional.empty();
    }
    if (named.isEmpty() && byOwnId.containsKey(cells.text(Column.CLIENT))) {
      return Optional.of(byOwnId.get(cells.text(Column.CLIENT)));
    }
    if (named.isEmpty()) {
      unknown(cells, Column.CLIENT, hinted(names));
    }
    return named.stream().findFirst();
  }

  /** Whether a row's client is here; says nothing. */
  boolean knows(Row row) {
    return row.has(Column.CLIENT_ID)
        ? byOwnId.containsKey(row.cell(Column.CLIENT_ID))
        : byName.containsKey(Slug.fold(row.cell(Column.CLIENT)))
            || byOwnId.containsKey(row.cell(Column.CLIENT));
  }

  /** Looking for the nearest of many names is dear: after many faults there are no more hints. */
  private Collection<String> hinted(Collection<String> names) {
    return hints++ < MOST_HINTS ? names : List.of();
  }

  static void ambiguous(Cells cells, int clients) {
    cells.aside(
        "ambiguous-client",
        Column.CLIENT,
        "is the name of " + clients + " clients",
        "name the one meant in the column client_id");
  }

  static void unknown(Cells cells, Column column, Collection<String> known) {
    Optional<String> near = Nearness.nearest(cells.text(column), known);
    String what = column == Column.CLIENT || column == Column.CLIENT_ID ? "client" : "pet";
    cells.aside(
        "unknown-" + what,
        column,
        "a " + what + " of the book was expected",
        near.map(name -> "nearest: " + name).orElse("add it to the " + what + "s' table"));
  }

  /** Adds the animal of a row to its owner; a second row for the same animal is set aside. */
  static Optional<Animal> add(Person owner, Cells cells) {
    if (!cells.has(Column.PET)) {
      cells.aside("missing-cell", Column.PET, "a pet's name was expected", "");
      return Optional.empty();
    }
    Optional<String> ownId = IdRule.own(cells, Column.PET_ID);
    String name = cells.text(Column.PET);
    Optional<Animal> other = owner.animal(name);
    if (other.isPresent()) {
      cells.aside(
          "duplicate-row",
          Column.PET,
          "stands in row " + other.get().cells().row().where().row() + " already",
          "two pets of one name and client: call them by different names");
      return Optional.empty();
    }
    Animal animal = new Animal(cells, owner, name, ownId);
    owner.add(animal);
    return Optional.of(animal);
  }

  /** Gives every client and pet its id, in a way that the order of rows does not change. */
  void giveIds() {
    IdRule.give(all, Person::name, Person::ownId, "", Person::id, new HashSet<>());
    List<Animal> animals = all.stream().flatMap(person -> person.animals().stream()).toList();
    Map<String, Animal> own = new LinkedHashMap<>();
    for (Animal animal : animals) {
      if (animal.ownId().isPresent() && own.putIfAbsent(animal.ownId().get(), animal) != null) {
        animal
            .cells()
            .add(
                "duplicate-row",
                Severity.ASIDE,
                Column.PET_ID,
                "is the id of two pets",
                "give each its own");
      }
    }
    Set<String> taken = new HashSet<>(own.keySet());
    all.stream()
        .sorted(Comparator.comparing(Person::id))
        .forEach(
            person ->
                IdRule.give(
                    person.animals(),
                    Animal::name,
                    Animal::ownId,
                    person.id() + ".",
                    Animal::id,
                    taken));
  }
}
