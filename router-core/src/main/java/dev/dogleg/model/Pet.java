package dev.dogleg.model;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;

/**
 * One animal, with what is known of it. What is unknown stays empty: the groom tables answer with
 * wider minutes.
 *
 * @param id unique in a book, same form as a client's
 * @param clientId whose
 * @param name as called
 * @param species dog or cat
 * @param breed a breed name of the breed table, or empty
 * @param weightGrams weight, 100..150,000, or empty
 * @param size size class of the weight or of a size word, or empty
 * @param coat coat type, or empty
 * @param behaviour how it bears being groomed
 * @param tags the groomer's own words, in order ({@code senior}, {@code contagious})
 * @param usualService name of its usual service, or empty
 * @param usualMinutes the groomer's own groom minutes for it, 3..480, or empty
 * @param priceMinor usual price in minor units of the card's currency, or empty
 * @param everyWeeks interval between grooms, 1..104, or empty
 * @param born date of birth, or empty
 * @param lastGroomed last groom, or empty
 * @param neverGroomed whether this will be its first visit here
 * @param rabiesUntil last day of the rabies proof, or empty
 * @param guessed facts that were guessed from somebody's words
 * @param litres water that its bath takes, 0..500, or empty: from the table
 */
public record Pet(
    String id,
    String clientId,
    String name,
    Species species,
    Optional<String> breed,
    OptionalInt weightGrams,
    Optional<SizeClass> size,
    Optional<Coat> coat,
    Behaviour behaviour,
    List<Tag> tags,
    Optional<String> usualService,
    OptionalInt usualMinutes,
    OptionalLong priceMinor,
    OptionalInt everyWeeks,
    Optional<LocalDate> born,
    Optional<LocalDate> lastGroomed,
    boolean neverGroomed,
    Optional<LocalDate> rabiesUntil,
    Set<PetFact> guessed,
    OptionalInt litres) {

  /** Checks ids and ranges. */
  public Pet {
    Ids.checked(id);
    Ids.checked(clientId);
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(species, "species");
    Objects.requireNonNull(breed, "breed");
    Objects.requireNonNull(size, "size");
    Objects.requireNonNull(coat, "coat");
    Objects.requireNonNull(behaviour, "behaviour");
    Objects.requireNonNull(usualService, "usualService");
    tags = List.copyOf(tags);
    guessed = guessed.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(guessed));
    check("weightGrams", weightGrams, 100, 150_000);
    check("usualMinutes", usualMinutes, 3, 480);
    check("everyWeeks", everyWeeks, 1, 104);
    check("litres", litres, 0, 500);
    if (priceMinor.isPresent() && priceMinor.getAsLong() < 0) {
      throw new IllegalArgumentException("priceMinor must be 0 or more");
    }
  }

  /**
   * A pet whose bath takes the water of the table.
   *
   * @param id see the record
   * @param clientId see the record
   * @param name see the record
   * @param species see the record
   * @param breed see the record
   * @param weightGrams see the record
   * @param size see the record
   * @param coat see the record
   * @param behaviour see the record
   * @param tags see the record
   * @param usualService see the record
   * @param usualMinutes see the record
   * @param priceMinor see the record
   * @param everyWeeks see the record
   * @param born see the record
   * @param lastGroomed see the record
   * @param neverGroomed see the record
   * @param rabiesUntil see the record
   * @param guessed see the record
   */
  public Pet(
      String id,
      String clientId,
      String name,
      Species species,
      Optional<String> breed,
      OptionalInt weightGrams,
      Optional<SizeClass> size,
      Optional<Coat> coat,
      Behaviour behaviour,
      List<Tag> tags,
      Optional<String> usualService,
      OptionalInt usualMinutes,
      OptionalLong priceMinor,
      OptionalInt everyWeeks,
      Optional<LocalDate> born,
      Optional<LocalDate> lastGroomed,
      boolean neverGroomed,
      Optional<LocalDate> rabiesUntil,
      Set<PetFact> guessed) {
    this(
        id,
        clientId,
        name,
        species,
        breed,
        weightGrams,
        size,
        coat,
        behaviour,
        tags,
        usualService,
        usualMinutes,
        priceMinor,
        everyWeeks,
        born,
        lastGroomed,
        neverGroomed,
        rabiesUntil,
        guessed,
        OptionalInt.empty());
  }

  /**
   * Whether a tag hangs on it on a day.
   *
   * @param name name of the tag
   * @param date the day
   * @return true up to the tag's last day
   */
  public boolean has(String name, LocalDate date) {
    return tags.stream().anyMatch(tag -> tag.name().equals(name) && tag.holdsOn(date));
  }

  private static void check(String name, OptionalInt value, int least, int most) {
    if (value.isPresent() && (value.getAsInt() < least || value.getAsInt() > most)) {
      throw new IllegalArgumentException(
          name + " must lie in " + least + ".." + most + ", was " + value.getAsInt());
    }
  }

  /**
   * The same pet of another client.
   *
   * @param otherId id of the client
   * @return the pet
   */
  public Pet ownedBy(String otherId) {
    return new Pet(
        id,
        otherId,
        name,
        species,
        breed,
        weightGrams,
        size,
        coat,
        behaviour,
        tags,
        usualService,
        usualMinutes,
        priceMinor,
        everyWeeks,
        born,
        lastGroomed,
        neverGroomed,
        rabiesUntil,
        guessed,
        litres);
  }
}
