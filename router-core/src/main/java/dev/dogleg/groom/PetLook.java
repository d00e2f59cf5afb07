package dev.dogleg.groom;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Behaviour;
import dev.dogleg.model.Coat;
import dev.dogleg.model.CoatState;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a pet looks like, as read from what people wrote about it.
 *
 * @param asked the text read, for example {@code Miniature Poodle} or {@code big, bad coat, some
 *     doodle}
 * @param grade how its breed was found; {@code NONE} where no breed was named or found
 * @param species dog or cat
 * @param breed the breed, where one was named or taken
 * @param size size to reckon with, and what else it could be
 * @param coat coat to reckon with, and what else it could be
 * @param state state of the coat, where the text tells
 * @param behaviour behaviour, where the text tells
 * @param senior whether the text says that the pet is old
 * @param puppy whether the text says that the pet is a puppy or kitten
 * @param unread words that could not be read
 * @param nearest up to three breeds that come nearest to what could not be read
 */
public record PetLook(
    String asked,
    MatchGrade grade,
    Species species,
    Optional<Breed> breed,
    Likely<SizeClass> size,
    Likely<Coat> coat,
    Optional<CoatState> state,
    Optional<Behaviour> behaviour,
    boolean senior,
    boolean puppy,
    List<String> unread,
    List<String> nearest) {

  /** Checks that nothing is null. */
  public PetLook {
    Objects.requireNonNull(asked, "asked");
    Objects.requireNonNull(grade, "grade");
    Objects.requireNonNull(species, "species");
    Objects.requireNonNull(breed, "breed");
    Objects.requireNonNull(size, "size");
    Objects.requireNonNull(coat, "coat");
    unread = List.copyOf(unread);
    nearest = List.copyOf(nearest);
  }

  /** {@return whether anything about size, coat or breed is guessed} */
  public boolean isGuess() {
    return size.isGuess() || coat.isGuess() || grade == MatchGrade.NEAR || !unread.isEmpty();
  }

  /**
   * The same pet with a size that is known better.
   *
   * @param better weighed ({@link Sizes#weighed}) or named ({@link Sizes#named})
   * @return the look
   */
  public PetLook withSize(Likely<SizeClass> better) {
    return new PetLook(
        asked, grade, species, breed, better, coat, state, behaviour, senior, puppy, unread,
        nearest);
  }

  /**
   * The same pet with a coat that is known better.
   *
   * @param better the coat
   * @return the look
   */
  public PetLook withCoat(Likely<Coat> better) {
    return new PetLook(
        asked, grade, species, breed, size, better, state, behaviour, senior, puppy, unread,
        nearest);
  }

  /**
   * What a person should be told about the reading.
   *
   * @param where the cell it was read from
   * @return a fault to look at where a word was not understood or mended; a note where size or coat
   *     are guessed; empty where nothing is in doubt
   */
  public Optional<Fault> fault(Where where) {
    if (grade == MatchGrade.NEAR) {
      return Optional.of(
          new Fault(
              "near-breed",
              Severity.LOOK,
              where,
              asked,
              "a breed; taken as " + breed.map(Breed::name).orElse(""),
              "mend the spelling if that is right"));
    }
    if (!unread.isEmpty()) {
      String hint =
          nearest.isEmpty()
              ? "write a breed, or size and coat in words"
              : "nearest: " + String.join(", ", nearest);
      return Optional.of(
          new Fault(
              "unknown-breed",
              Severity.LOOK,
              where,
              asked,
              "a known breed or words for size and coat; not understood: "
                  + String.join(" ", unread)
                  + "; reckoned as "
                  + taken(),
              hint));
    }
    if (isGuess()) {
      return Optional.of(
          new Fault(
              "guessed-pet",
              Severity.NOTE,
              where,
              asked,
              "weight and coat would narrow it; guessed: " + taken(),
              ""));
    }
    return Optional.empty();
  }

  private String taken() {
    return size.taken().name().toLowerCase(java.util.Locale.ROOT)
        + ", "
        + coat.taken().name().toLowerCase(java.util.Locale.ROOT)
        + " coat";
  }
}
