package dev.dogleg.cli.csv;

import dev.dogleg.model.CoatState;
import dev.dogleg.model.Pet;
import java.util.List;
import java.util.Optional;

/** A pet while a book is read: its row, and its record once it is sound. */
final class Animal {
  private final Cells cells;
  private final Person owner;
  private final String name;
  private final Optional<String> ownId;
  private String id = "";
  private Optional<Pet> pet = Optional.empty();
  private List<String> usualOrder = List.of();
  private Optional<CoatState> state = Optional.empty();

  Animal(Cells cells, Person owner, String name, Optional<String> ownId) {
    this.cells = cells;
    this.owner = owner;
    this.name = name;
    this.ownId = ownId;
  }

  Cells cells() {
    return cells;
  }

  Person owner() {
    return owner;
  }

  String name() {
    return name;
  }

  Optional<String> ownId() {
    return ownId;
  }

  String id() {
    return id;
  }

  void id(String given) {
    id = given;
  }

  /** {@return the record, or empty where the row is set aside} */
  Optional<Pet> pet() {
    return pet;
  }

  /** {@return usual service and its add-ons, empty where none is named} */
  List<String> usualOrder() {
    return usualOrder;
  }

  /** {@return state of the coat where the words for the breed told it} */
  Optional<CoatState> state() {
    return state;
  }

  void sound(Pet record, List<String> order, Optional<CoatState> told) {
    pet = Optional.of(record);
    usualOrder = List.copyOf(order);
    state = told;
  }
}
