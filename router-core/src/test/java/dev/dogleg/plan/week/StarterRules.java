package dev.dogleg.plan.week;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.plan.week.SeededPets.Pet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * What the starter rules ({@code seeds/rules.csv}) say of invented pets, as rules on a van-day.
 *
 * <p>Those that windows and minutes settle (timed pill, quiet hours, longer grooms of contagious
 * pets) are in the visits; those that ask for weather or for a second person are left away.
 */
final class StarterRules {
  private static final OptionalLong MUST = OptionalLong.empty();

  private final Map<String, Pet> pets;
  private final List<DayRule> rules = new ArrayList<>();

  private StarterRules(Map<String, Pet> pets) {
    this.pets = pets;
  }

  /**
   * The rules.
   *
   * @param pets pets by booking
   * @param neighbours pairs of bookings that live side by side
   */
  static List<DayRule> of(Map<String, Pet> pets, List<Set<String>> neighbours) {
    StarterRules starter = new StarterRules(new TreeMap<>(pets));
    starter.pairs();
    starter.loads();
    starter.places();
    for (Set<String> pair : neighbours) {
      starter.rules.add(new DayRule.Together("neighbours together", rather(20), pair));
    }
    return starter.rules;
  }

  private void pairs() {
    Set<String> cats = who(Pet::cat);
    Set<String> dogs = who(pet -> !pet.cat());
    Set<String> heavy = who(Pet::heavyCoat);
    Set<String> contagious = who(Pet::contagious);
    if (!cats.isEmpty() && !dogs.isEmpty()) {
      rules.add(new DayRule.AllBefore("cats before dogs", rather(10), cats, dogs));
      rules.add(new DayRule.Changeover("cleaning after dogs", dogs, cats, 600));
      rules.add(new DayRule.Changeover("cleaning after cats", cats, dogs, 300));
    }
    if (heavy.size() > 1) {
      rules.add(
          new DayRule.NotRightAfter("heavy coats not back to back", rather(15), heavy, heavy));
    }
    if (!contagious.isEmpty()) {
      rules.add(
          new DayRule.AllBefore(
              "contagious last", MUST, who(pet -> !pet.contagious()), contagious));
    }
  }

  private void loads() {
    atMost("one giant a day", MUST, "GIANT", 1);
    atMost("two large a day", rather(30), "LARGE", 2);
  }

  private void atMost(String name, OptionalLong price, String size, int most) {
    Map<String, Integer> points = new TreeMap<>();
    who(pet -> !pet.cat() && pet.size().equals(size)).forEach(id -> points.put(id, 1));
    if (points.size() > most) {
      rules.add(new DayRule.AtMost(name, price, points, most));
    }
  }

  private void places() {
    place("not first", who(Pet::notFirst), DayRule.DayPlace.NOT_FIRST);
    place("not last", who(Pet::notLast), DayRule.DayPlace.NOT_LAST);
  }

  private void place(String name, Set<String> ids, DayRule.DayPlace where) {
    if (!ids.isEmpty()) {
      rules.add(new DayRule.PlaceInDay(name, MUST, ids, where, 0));
    }
  }

  private Set<String> who(Predicate<Pet> which) {
    Set<String> ids = new TreeSet<>();
    pets.forEach(
        (id, pet) -> {
          if (which.test(pet)) {
            ids.add(id);
          }
        });
    return ids;
  }

  private static OptionalLong rather(int driveMinutes) {
    return OptionalLong.of(3600L * driveMinutes);
  }
}
