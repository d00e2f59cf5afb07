package dev.dogleg.cli.command;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Understands which doors of a planned day somebody means: by number, by name, by id; wet hands
 * type little.
 */
final class DoorWords {

  /**
   * A door of the plan.
   *
   * @param client whose
   * @param pets names joined by {@code ;}
   * @param bookings ids
   */
  record PlannedDoor(String client, String pets, List<String> bookings) {}

  private final List<PlannedDoor> doors;

  DoorWords(List<PlannedDoor> doors) {
    this.doors = List.copyOf(doors);
  }

  /**
   * Doors that are done: one number alone means that many first doors.
   *
   * @param text as typed
   * @return numbers of doors from 0, in the order named
   * @throws IllegalArgumentException where a word names no door, or several
   */
  List<Integer> done(String text) {
    String word = text.strip();
    if (word.matches("\\d{1,3}")) {
      int count = Integer.parseInt(word);
      if (count > doors.size()) {
        throw new IllegalArgumentException("the day has " + doors.size() + " doors, not " + count);
      }
      return IntStream.range(0, count).boxed().toList();
    }
    return named(text);
  }

  /**
   * Doors by number, name or id.
   *
   * @param text words joined by commas or semicolons
   * @return numbers of doors from 0, in the order named
   * @throws IllegalArgumentException where a word names no door, or several
   */
  List<Integer> named(String text) {
    Set<Integer> found = new LinkedHashSet<>();
    for (String word : text.split("[,;]")) {
      if (!word.isBlank()) {
        found.add(one(word.strip()));
      }
    }
    return List.copyOf(found);
  }

  private int one(String word) {
    List<Integer> found = matching(word);
    if (found.size() == 1) {
      return found.get(0);
    }
    String what = found.isEmpty() ? "no door" : "several doors";
    List<Integer> among =
        found.isEmpty() ? IntStream.range(0, doors.size()).boxed().toList() : found;
    List<String> names = among.stream().map(d -> (d + 1) + " " + doors.get(d).client()).toList();
    throw new IllegalArgumentException(
        "\"" + word + "\" names " + what + " of " + String.join(", ", names));
  }

  /**
   * Doors that a word may name: by number, else by id, else by client, else by pet, else by a part
   * of a client's name.
   *
   * @param word as typed
   * @return numbers of doors from 0
   */
  List<Integer> matching(String word) {
    if (word.matches("\\d{1,3}")) {
      int number = Integer.parseInt(word);
      return number < 1 || number > doors.size() ? List.of() : List.of(number - 1);
    }
    String low = plain(word);
    List<Integer> found = where(door -> door.bookings().contains(word));
    if (found.isEmpty()) {
      found = where(door -> plain(door.client()).equals(low));
    }
    if (found.isEmpty()) {
      found = where(door -> List.of(plain(door.pets()).split("\\s*;\\s*")).contains(low));
    }
    if (found.isEmpty()) {
      found = where(door -> plain(door.client()).contains(low));
    }
    return found;
  }

  private List<Integer> where(Predicate<PlannedDoor> holds) {
    List<Integer> found = new ArrayList<>();
    for (int door = 0; door < doors.size(); door++) {
      if (holds.test(doors.get(door))) {
        found.add(door);
      }
    }
    return found;
  }

  private static String plain(String text) {
    return text.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }
}
