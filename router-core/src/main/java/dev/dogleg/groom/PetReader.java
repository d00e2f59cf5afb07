package dev.dogleg.groom;

import dev.dogleg.model.Behaviour;
import dev.dogleg.model.Coat;
import dev.dogleg.model.CoatState;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads what people write about a pet: first the whole text as a breed; else piece by piece, the
 * longest known phrase first.
 */
final class PetReader {
  /** Other name of the breed row that stands for a pet of which nothing is known. */
  static final String UNKNOWN = "unknown";

  private static final int LONGEST_PHRASE_WORDS = 6;

  private final Map<Species, NameIndex<Breed>> breeds;
  private final NameIndex<Word> words;

  PetReader(Map<Species, NameIndex<Breed>> breeds, NameIndex<Word> words) {
    this.breeds = new EnumMap<>(breeds);
    this.words = words;
  }

  PetLook read(Optional<Species> species, String text) {
    for (Species kind : species.map(List::of).orElse(List.of(Species.DOG, Species.CAT))) {
      Match<Breed> whole = breeds.get(kind).find(text);
      if (whole.isSure()) {
        return new Reading(text, kind).look(whole);
      }
    }
    Reading reading = new Reading(text, species.orElse(Species.DOG));
    reading.readPieces(species.isEmpty());
    if (reading.breed != null || (reading.saidSomething && reading.unread.isEmpty())) {
      return reading.look(null);
    }
    String rest = String.join(" ", reading.unread);
    return reading.look(rest.isEmpty() ? null : breeds.get(reading.species).find(rest));
  }

  /** One text on its way to a look. */
  private final class Reading {
    private final String text;
    private Species species;
    private Breed breed;
    private SizeClass size;
    private Coat coat;
    private CoatState state;
    private Behaviour behaviour;
    private boolean senior;
    private boolean puppy;
    private boolean saidSomething;
    private final List<String> unread = new ArrayList<>();

    Reading(String text, Species species) {
      this.text = text;
      this.species = species;
    }

    void readPieces(boolean speciesOpen) {
      List<String> tokens = Folding.words(text);
      if (speciesOpen && tokens.stream().anyMatch(this::meansCat)) {
        species = Species.CAT;
      }
      int at = 0;
      while (at < tokens.size()) {
        int length = Math.min(LONGEST_PHRASE_WORDS, tokens.size() - at);
        while (length > 0 && !take(String.join(" ", tokens.subList(at, at + length)))) {
          length--;
        }
        if (length == 0) {
          unread.add(tokens.get(at));
        }
        at += Math.max(1, length);
      }
    }

    private boolean meansCat(String token) {
      return words
          .sure(token)
          .filter(word -> word.kind() == Word.Kind.SPECIES && word.means().equals("CAT"))
          .isPresent();
    }

    /** Takes one phrase; of two breeds or two sizes named, the first stands. */
    private boolean take(String phrase) {
      Optional<Word> word = words.sure(phrase);
      if (word.isPresent()) {
        takeWord(word.get());
        return true;
      }
      Optional<Breed> named = breeds.get(species).sure(phrase);
      named.ifPresent(
          found -> {
            saidSomething = true;
            breed = breed == null ? found : breed;
          });
      return named.isPresent();
    }

    private void takeWord(Word word) {
      switch (word.kind()) {
        case SIZE -> size = size == null ? word.value(SizeClass.class) : size;
        case COAT -> coat = coat == null ? word.value(Coat.class) : coat;
        case STATE -> state = state == null ? word.value(CoatState.class) : state;
        case BEHAVIOUR -> behaviour = behaviour == null ? word.value(Behaviour.class) : behaviour;
        case AGE -> {
          senior |= word.value(Word.Age.class) == Word.Age.SENIOR;
          puppy |= word.value(Word.Age.class) == Word.Age.PUPPY;
        }
        default -> {
          // the species was read first; a filler says nothing
        }
      }
      saidSomething |= word.kind() != Word.Kind.FILLER;
    }

    PetLook look(Match<Breed> whole) {
      boolean found = whole != null && whole.value().isPresent();
      Optional<Breed> named = found ? whole.value() : Optional.ofNullable(breed);
      Breed base = named.orElseGet(() -> breeds.get(species).sure(UNKNOWN).orElseThrow());
      Likely<SizeClass> likelySize =
          size == null ? base.size() : Sizes.narrowed(Sizes.named(size), base.size());
      Likely<Coat> likelyCoat = coat == null ? base.coat() : Likely.sure(coat);
      MatchGrade grade = MatchGrade.NONE;
      if (found) {
        grade = whole.grade();
      } else if (breed != null) {
        grade = MatchGrade.ALIAS;
      }
      return new PetLook(
          text,
          grade,
          species,
          named,
          likelySize,
          likelyCoat,
          Optional.ofNullable(state),
          Optional.ofNullable(behaviour),
          senior,
          puppy,
          found ? List.of() : unread,
          whole == null ? List.of() : whole.nearest());
    }
  }
}
