package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.WeightGrammar;
import dev.dogleg.fault.Severity;
import dev.dogleg.groom.Breed;
import dev.dogleg.groom.Match;
import dev.dogleg.groom.MatchGrade;
import dev.dogleg.groom.PetLook;
import dev.dogleg.model.Behaviour;
import dev.dogleg.model.Coat;
import dev.dogleg.model.CoatState;
import dev.dogleg.model.PetFact;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What a pet looks like, from its cells: species, breed or words for it, weight or size word, coat,
 * behaviour. A cell of its own wins over a word among those for the breed.
 */
record PetLooks(
    Species species,
    Optional<String> breed,
    OptionalInt grams,
    Optional<SizeClass> size,
    Optional<Coat> coat,
    Behaviour behaviour,
    Optional<CoatState> state,
    List<String> tags,
    Set<PetFact> guessed) {

  static PetLooks of(Cells cells, Context context) {
    Set<PetFact> guessed = EnumSet.noneOf(PetFact.class);
    Optional<Species> species = species(cells);
    PetLook look = context.look(species, cells.text(Column.BREED));
    PetLook plain =
        context.look(Optional.of(look.species()), look.breed().map(Breed::name).orElse(""));
    OptionalInt grams = OptionalInt.empty();
    Optional<SizeClass> size = Optional.empty();
    if (WeightGrammar.looksLike(cells.text(Column.SIZE))) {
      Optional<Integer> weight =
          cells.read(Column.SIZE, text -> WeightGrammar.read(text, context.weightUnit()));
      grams = weight.map(OptionalInt::of).orElse(OptionalInt.empty());
      size = weight.map(SizeClass::ofGrams);
    } else if (cells.has(Column.SIZE)) {
      size = word(cells, Column.SIZE, context.tables().size(cells.text(Column.SIZE)));
      guessed.add(PetFact.SIZE);
      size.ifPresent(
          named ->
              cells.add(
                  "guess",
                  Severity.NOTE,
                  Column.SIZE,
                  "was read as the size " + named.name().toLowerCase(Locale.ROOT),
                  "a weight narrows the minutes"));
    }
    if (size.isEmpty()) {
      guessed.add(PetFact.SIZE);
      boolean said = !look.size().equals(plain.size());
      size = said ? Optional.of(look.size().taken()) : Optional.empty();
    }
    Optional<Coat> coat = Optional.empty();
    if (cells.has(Column.COAT)) {
      Match<Coat> match = context.tables().coat(cells.text(Column.COAT));
      coat = word(cells, Column.COAT, match);
      if (!match.isSure()) {
        guessed.add(PetFact.COAT);
      }
    }
    if (coat.isEmpty()) {
      guessed.add(PetFact.COAT);
      boolean said = !look.coat().equals(plain.coat());
      coat = said ? Optional.of(look.coat().taken()) : Optional.empty();
    }
    Optional<Behaviour> behaviour = Optional.empty();
    if (cells.has(Column.BEHAVIOUR)) {
      behaviour =
          word(cells, Column.BEHAVIOUR, context.tables().behaviour(cells.text(Column.BEHAVIOUR)));
    } else if (look.behaviour().isPresent()) {
      behaviour = look.behaviour();
      guessed.add(PetFact.BEHAVIOUR);
    }
    if (species.isEmpty()) {
      guessed.add(PetFact.SPECIES);
    }
    if (look.breed().isPresent() && (look.grade() == MatchGrade.NEAR || !look.unread().isEmpty())) {
      guessed.add(PetFact.BREED);
    }
    // A breed alone, found as written, needs no remark; loose words do.
    boolean plainBreed =
        (look.grade() == MatchGrade.EXACT || look.grade() == MatchGrade.ALIAS)
            && look.size().equals(plain.size())
            && look.coat().equals(plain.coat())
            && look.state().isEmpty()
            && look.behaviour().isEmpty();
    boolean measured = grams.isPresent() && !guessed.contains(PetFact.COAT);
    look.fault(cells.at(Column.BREED))
        .filter(fault -> fault.severity() != Severity.NOTE || !(measured || plainBreed))
        .ifPresent(cells::add);
    List<String> tags = new ArrayList<>();
    if (look.senior()) {
      tags.add("senior");
    }
    if (look.puppy()) {
      tags.add("puppy");
    }
    return new PetLooks(
        look.species(),
        look.breed().map(Breed::name),
        grams,
        size,
        coat,
        behaviour.orElse(Behaviour.EASY),
        look.state(),
        tags,
        guessed);
  }

  private static Optional<Species> species(Cells cells) {
    String text = cells.text(Column.SPECIES).toLowerCase(Locale.ROOT);
    switch (text) {
      case "" -> {
        return Optional.empty();
      }
      case "dog", "dogs", "d", "puppy", "canine" -> {
        return Optional.of(Species.DOG);
      }
      case "cat", "cats", "c", "kitten", "feline" -> {
        return Optional.of(Species.CAT);
      }
      default -> {
        cells.add("unknown-species", Severity.ASIDE, Column.SPECIES, "dog or cat was expected", "");
        return Optional.empty();
      }
    }
  }

  /** A word of the tables; one that is not understood is looked at, and the row goes on. */
  static <T> Optional<T> word(Cells cells, Column column, Match<T> match) {
    if (!match.isSure()) {
      String known = column == Column.COAT_STATE ? "state" : column.label();
      cells.add(
          "unknown-" + known.replace('_', '-'),
          Severity.LOOK,
          column,
          match
              .value()
              .map(value -> "was read as " + value.toString().toLowerCase(Locale.ROOT))
              .orElse("a word for the " + known + " was expected; it is taken as not known"),
          match.hint());
    }
    return match.value();
  }
}
