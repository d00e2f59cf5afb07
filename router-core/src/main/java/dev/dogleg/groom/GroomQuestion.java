package dev.dogleg.groom;

import dev.dogleg.model.Behaviour;
import dev.dogleg.model.CoatState;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * One groom whose minutes are asked.
 *
 * @param pet the pet's name, for messages; may be empty
 * @param look what the pet looks like
 * @param order service and add-ons, offered for that species
 * @param state state of the coat on the day
 * @param behaviour how the pet bears it
 * @param senior whether it is old or frail
 * @param history how well the groomer knows it
 * @param weeksSinceLast whole weeks since the last groom, 0 or more; empty where not known
 * @param pacePermille the groomer's pace in thousandths of the table's minutes, 500..2000; slower
 *     is more
 * @param usualMinutes what this pet usually takes, 1..600: replaces table, behaviour, age, history
 *     and pace; the day's state of coat, long gap and add-ons still count
 * @param ownMinutes what this groom will take, 1..720: replaces everything
 * @param keys whose groom it is: finds what was learned of pet and groomer
 */
public record GroomQuestion(
    String pet,
    PetLook look,
    ServiceOrder order,
    CoatState state,
    Behaviour behaviour,
    boolean senior,
    VisitHistory history,
    OptionalInt weeksSinceLast,
    int pacePermille,
    OptionalInt usualMinutes,
    OptionalInt ownMinutes,
    GroomKeys keys) {

  /** Pace of the table. */
  public static final int TABLE_PACE_PERMILLE = 1000;

  /** Checks ranges, and that the service is offered for the species. */
  public GroomQuestion {
    Objects.requireNonNull(pet, "pet");
    Objects.requireNonNull(look, "look");
    Objects.requireNonNull(order, "order");
    Objects.requireNonNull(state, "state");
    Objects.requireNonNull(behaviour, "behaviour");
    Objects.requireNonNull(history, "history");
    Objects.requireNonNull(keys, "keys");
    if (!order.service().species().contains(look.species())) {
      throw new IllegalArgumentException(
          order.service().name() + " is not done for a " + look.species());
    }
    check("weeksSinceLast", weeksSinceLast.orElse(0), 0, 10_000);
    check("pacePermille", pacePermille, 500, 2000);
    check("usualMinutes", usualMinutes.orElse(1), 1, 600);
    check("ownMinutes", ownMinutes.orElse(1), 1, 720);
  }

  private static void check(String name, int value, int least, int most) {
    if (value < least || value > most) {
      throw new IllegalArgumentException(
          name + " must lie in " + least + ".." + most + ", was " + value);
    }
  }

  /**
   * A groom of which only look and order are known; state, behaviour and age are what the look
   * tells, else good, easy and grown.
   *
   * @param look what the pet looks like
   * @param order service and add-ons
   * @return the question
   */
  public static GroomQuestion of(PetLook look, ServiceOrder order) {
    return new GroomQuestion(
        "",
        look,
        order,
        look.state().orElse(CoatState.GOOD),
        look.behaviour().orElse(Behaviour.EASY),
        look.senior(),
        VisitHistory.UNKNOWN,
        OptionalInt.empty(),
        TABLE_PACE_PERMILLE,
        OptionalInt.empty(),
        OptionalInt.empty(),
        GroomKeys.NONE);
  }

  /**
   * The same groom for a named pet.
   *
   * @param name the pet's name
   * @return the question
   */
  public GroomQuestion withPet(String name) {
    return new GroomQuestion(
        name,
        look,
        order,
        state,
        behaviour,
        senior,
        history,
        weeksSinceLast,
        pacePermille,
        usualMinutes,
        ownMinutes,
        keys);
  }

  /**
   * The same groom in another state of the coat.
   *
   * @param other state on the day
   * @return the question
   */
  public GroomQuestion withState(CoatState other) {
    return new GroomQuestion(
        pet,
        look,
        order,
        other,
        behaviour,
        senior,
        history,
        weeksSinceLast,
        pacePermille,
        usualMinutes,
        ownMinutes,
        keys);
  }

  /**
   * The same groom of a pet that bears it otherwise.
   *
   * @param other behaviour
   * @return the question
   */
  public GroomQuestion withBehaviour(Behaviour other) {
    return new GroomQuestion(
        pet,
        look,
        order,
        state,
        other,
        senior,
        history,
        weeksSinceLast,
        pacePermille,
        usualMinutes,
        ownMinutes,
        keys);
  }

  /**
   * The same groom of an old or a younger pet.
   *
   * @param old whether it is old or frail
   * @return the question
   */
  public GroomQuestion withSenior(boolean old) {
    return new GroomQuestion(
        pet,
        look,
        order,
        state,
        behaviour,
        old,
        history,
        weeksSinceLast,
        pacePermille,
        usualMinutes,
        ownMinutes,
        keys);
  }

  /**
   * The same groom with another history.
   *
   * @param other how well the groomer knows the pet
   * @return the question
   */
  public GroomQuestion withHistory(VisitHistory other) {
    return new GroomQuestion(
        pet,
        look,
        order,
        state,
        behaviour,
        senior,
        other,
        weeksSinceLast,
        pacePermille,
        usualMinutes,
        ownMinutes,
        keys);
  }

  /**
   * The same groom so many weeks after the last one, which makes the pet a known one.
   *
   * @param weeks whole weeks, 0 or more
   * @return the question
   */
  public GroomQuestion withWeeksSinceLast(int weeks) {
    return new GroomQuestion(
        pet,
        look,
        order,
        state,
        behaviour,
        senior,
        VisitHistory.KNOWN,
        OptionalInt.of(weeks),
        pacePermille,
        usualMinutes,
        ownMinutes,
        keys);
  }

  /**
   * The same groom by a groomer of another pace.
   *
   * @param permille 500..2000; 1100 is a tenth slower than the table
   * @return the question
   */
  public GroomQuestion withPacePermille(int permille) {
    return new GroomQuestion(
        pet,
        look,
        order,
        state,
        behaviour,
        senior,
        history,
        weeksSinceLast,
        permille,
        usualMinutes,
        ownMinutes,
        keys);
  }

  /**
   * The same groom of a pet whose usual minutes are known.
   *
   * @param minutes 1..600
   * @return the question
   */
  public GroomQuestion withUsualMinutes(int minutes) {
    return new GroomQuestion(
        pet,
        look,
        order,
        state,
        behaviour,
        senior,
        history,
        weeksSinceLast,
        pacePermille,
        OptionalInt.of(minutes),
        ownMinutes,
        keys);
  }

  /**
   * The same groom with the groomer's own minutes for it.
   *
   * @param minutes 1..600
   * @return the question
   */
  public GroomQuestion withOwnMinutes(int minutes) {
    return new GroomQuestion(
        pet,
        look,
        order,
        state,
        behaviour,
        senior,
        history,
        weeksSinceLast,
        pacePermille,
        usualMinutes,
        OptionalInt.of(minutes),
        keys);
  }

  /**
   * The same groom of a pet and by a groomer of a book.
   *
   * @param whose both ids
   * @return the question
   */
  public GroomQuestion withKeys(GroomKeys whose) {
    return new GroomQuestion(
        pet,
        look,
        order,
        state,
        behaviour,
        senior,
        history,
        weeksSinceLast,
        pacePermille,
        usualMinutes,
        ownMinutes,
        whose);
  }
}
