package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.Slug;
import dev.dogleg.model.Client;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A client while a book is read: its row, its record once it is sound, its animals. */
final class Person {
  private final Cells cells;
  private final String name;
  private final Optional<String> ownId;
  private final List<Animal> animals = new ArrayList<>();
  private final Map<String, Animal> byName = new HashMap<>();
  private final Map<String, Animal> byOwnId = new HashMap<>();
  private String id = "";
  private Optional<Client> client = Optional.empty();

  Person(Cells cells, String name, Optional<String> ownId) {
    this.cells = cells;
    this.name = name;
    this.ownId = ownId;
  }

  Cells cells() {
    return cells;
  }

  String name() {
    return name;
  }

  Optional<String> ownId() {
    return ownId;
  }

  List<Animal> animals() {
    return animals;
  }

  void add(Animal animal) {
    animals.add(animal);
    byName.putIfAbsent(Slug.fold(animal.name()), animal);
    animal.ownId().ifPresent(own -> byOwnId.putIfAbsent(own, animal));
  }

  /** The animal of a name or of an id of its own, or empty. */
  Optional<Animal> animal(String nameOrId) {
    return Optional.ofNullable(byName.get(Slug.fold(nameOrId)))
        .or(() -> Optional.ofNullable(byOwnId.get(nameOrId)));
  }

  String id() {
    return id;
  }

  void id(String given) {
    id = given;
  }

  /** {@return the record, or empty where the row is set aside} */
  Optional<Client> client() {
    return client;
  }

  void client(Client sound) {
    client = Optional.of(sound);
  }
}
