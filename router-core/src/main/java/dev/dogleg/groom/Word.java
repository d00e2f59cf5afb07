package dev.dogleg.groom;

import dev.dogleg.fault.Faults;
import dev.dogleg.model.Behaviour;
import dev.dogleg.model.Coat;
import dev.dogleg.model.CoatState;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import java.util.List;

/**
 * One row of the word table: words people use, and what they mean.
 *
 * @param kind what the words are about
 * @param means name of the value meant, empty for a filler
 * @param words the words, one phrase each
 */
record Word(Kind kind, String means, List<String> words) {

  /** What a word is about. */
  enum Kind {
    SIZE(SizeClass.class),
    COAT(Coat.class),
    STATE(CoatState.class),
    BEHAVIOUR(Behaviour.class),
    AGE(Age.class),
    SPECIES(Species.class),
    FILLER(null);

    final Class<? extends Enum<?>> values;

    Kind(Class<? extends Enum<?>> values) {
      this.values = values;
    }
  }

  /** Ages that matter. */
  enum Age {
    SENIOR,
    PUPPY
  }

  /** The value meant, as one of the kind's. */
  <E extends Enum<E>> E value(Class<E> type) {
    return Enum.valueOf(type, means);
  }

  /** Reads one row of words.csv, or says what is wrong with it. */
  static void read(TableRow row, List<Word> into, Faults faults) {
    Cells cells = new Cells(row, faults);
    Kind kind = cells.word("kind", Kind.class);
    cells.needed("words");
    cells.needed("provenance");
    String means = "";
    if (cells.sound() && kind != Kind.FILLER) {
      means = name(cells, kind.values);
    }
    if (cells.sound()) {
      into.add(new Word(kind, means, cells.list("words")));
    }
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static String name(Cells cells, Class<? extends Enum<?>> values) {
    return cells.word("means", (Class) values).name();
  }
}
