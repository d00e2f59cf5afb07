package dev.dogleg.groom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Behaviour;
import dev.dogleg.model.Coat;
import dev.dogleg.model.CoatState;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people write about a pet, and what is read from it. */
class PetReaderTest {
  private static final GroomTables TABLES = StarterTables.load();

  private static PetLook look(String text) {
    return TABLES.look(Optional.empty(), text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Poodle               | Poodle                        | EXACT | SMALL  | CURLY
          Miniature Poodle     | Miniature Poodle              | EXACT | SMALL  | CURLY
          mini poodle          | Miniature Poodle              | ALIAS | SMALL  | CURLY
          Poodle (Miniature)   | Miniature Poodle              | ALIAS | SMALL  | CURLY
          STANDARD POODLE      | Standard Poodle               | EXACT | LARGE  | CURLY
          cockapoo             | Cockapoo                      | EXACT | SMALL  | CURLY
          doodle               | Doodle                        | EXACT | LARGE  | CURLY
          golden doodle        | Standard Goldendoodle         | ALIAS | LARGE  | CURLY
          Bichon Frisé         | Bichon Frise                  | EXACT | SMALL  | CURLY
          westie               | West Highland White Terrier   | ALIAS | SMALL  | WIRE
          st. bernard          | Saint Bernard                 | ALIAS | GIANT  | DOUBLE
          shih-tzu             | Shih Tzu                      | EXACT | SMALL  | LONG
          Yorkie               | Yorkshire Terrier             | ALIAS | TINY   | LONG
          lab                  | Labrador Retriever            | ALIAS | LARGE  | DOUBLE
          Labradodle           | Standard Labradoodle          | NEAR  | LARGE  | CURLY
          pomeranain           | Pomeranian                    | NEAR  | TINY   | DOUBLE
          """)
  void findsTheBreed(String text, String name, MatchGrade grade, SizeClass size, Coat coat) {
    PetLook look = look(text);
    assertEquals(name, look.breed().map(Breed::name).orElse("none"));
    assertEquals(grade, look.grade());
    assertEquals(size, look.size().taken());
    assertEquals(coat, look.coat().taken());
    assertEquals(Species.DOG, look.species());
  }

  @Test
  void looseWordsAreReadAndMarked() {
    PetLook look = look("big, bad coat, some doodle");
    assertEquals("Doodle", look.breed().orElseThrow().name());
    assertEquals(SizeClass.LARGE, look.size().taken());
    assertEquals(Optional.of(CoatState.MATTED), look.state());
    assertEquals(Coat.CURLY, look.coat().taken());
    assertTrue(look.unread().isEmpty());
    assertTrue(look.isGuess());
    assertEquals(Severity.NOTE, look.fault(Where.NOWHERE).orElseThrow().severity());
  }

  @Test
  void bigAndTheBreedNarrowEachOther() {
    // "big" alone: medium to giant; a doodle: small to large; together medium or large.
    assertEquals(List.of(SizeClass.LARGE, SizeClass.MEDIUM), look("big doodle").size().mayBe());
  }

  @Test
  void behaviourAndAgeAreRead() {
    PetLook look = look("old curly thing, nervous");
    assertTrue(look.senior());
    assertEquals(Optional.of(Behaviour.NERVOUS), look.behaviour());
    assertEquals(Coat.CURLY, look.coat().taken());
    assertFalse(look.coat().isGuess());
    assertEquals(List.of("thing"), look.unread());
  }

  @Test
  void catsAreCats() {
    assertEquals(Species.CAT, look("Persian").species());
    assertEquals(Species.CAT, look("cat").species());
    PetLook old = look("old long haired cat");
    assertEquals(Species.CAT, old.species());
    assertEquals(Coat.LONG, old.coat().taken());
    assertTrue(old.senior());
    PetLook said = TABLES.look(Optional.of(Species.CAT), "long hair");
    assertEquals("Domestic longhair", said.breed().orElseThrow().name());
  }

  @Test
  void unknownBreedIsNotRefusedAndTheNearestAreOffered() {
    PetLook look = look("Zorgblat");
    assertTrue(look.breed().isEmpty());
    assertTrue(look.isGuess());
    assertEquals(5, look.size().mayBe().size());
    Fault fault = look.fault(new Where("pets.csv", 4, "breed")).orElseThrow();
    assertEquals("unknown-breed", fault.code());
    assertEquals(Severity.LOOK, fault.severity());
    assertEquals("Zorgblat", fault.seen());
    PetLook close = look("Labradorable Retriver");
    assertTrue(close.nearest().contains("Labrador Retriever"), close.nearest()::toString);
  }

  @Test
  void emptyTextIsAnUnknownDog() {
    PetLook look = look("  ");
    assertTrue(look.breed().isEmpty() && look.unread().isEmpty());
    assertEquals(SizeClass.MEDIUM, look.size().taken());
    assertEquals("guessed-pet", look.fault(Where.NOWHERE).orElseThrow().code());
  }

  @Test
  void weightAndCoatEndTheGuess() {
    PetLook look = look("Poodle").withSize(Sizes.weighed(6_200));
    assertFalse(look.isGuess());
    assertEquals(Optional.empty(), look.fault(Where.NOWHERE));
  }

  @Test
  void wordsOfSingleCells() {
    assertEquals(Optional.of(SizeClass.LARGE), TABLES.size("Big").value());
    assertEquals(Optional.of(SizeClass.GIANT), TABLES.size("XL").value());
    assertEquals(Optional.of(Coat.WIRE), TABLES.coat("wire-haired").value());
    assertEquals(Optional.of(CoatState.PELTED), TABLES.coatState("felted").value());
    assertEquals(Optional.of(CoatState.TANGLED), TABLES.coatState("a few knots").value());
    assertEquals(Optional.of(Behaviour.DIFFICULT), TABLES.behaviour("bites").value());
    assertEquals(MatchGrade.NEAR, TABLES.coat("curlly").grade());
    assertEquals(MatchGrade.NONE, TABLES.coat("purple").grade());
  }
}
