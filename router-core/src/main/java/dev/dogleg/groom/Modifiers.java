package dev.dogleg.groom;

import dev.dogleg.model.Behaviour;
import dev.dogleg.model.CoatState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which rows of the add-on table a question calls for. */
final class Modifiers {
  private static final Pattern OVER_WEEKS = Pattern.compile("over (\\d{1,3}) weeks");

  private Modifiers() {}

  /** All of them, those of the pet first. */
  static List<AddOn> all(GroomQuestion question, GroomTables tables) {
    List<AddOn> all = new ArrayList<>(ofThePet(question, tables));
    all.addAll(ofTheDay(question, tables));
    return all;
  }

  /** What belongs to the pet: behaviour, age, first visit. */
  static List<AddOn> ofThePet(GroomQuestion question, GroomTables tables) {
    List<AddOn> found = new ArrayList<>();
    if (question.behaviour() == Behaviour.NERVOUS) {
      take(Modifier.NERVOUS, tables, found);
    }
    if (question.behaviour() == Behaviour.DIFFICULT) {
      take(Modifier.DIFFICULT, tables, found);
    }
    if (question.senior()) {
      take(Modifier.SENIOR, tables, found);
    }
    if (question.history() == VisitHistory.FIRST) {
      take(Modifier.FIRST_VISIT, tables, found);
    }
    return found;
  }

  /** What belongs to the day: state of the coat, weeks since the last groom, add-ons asked for. */
  static List<AddOn> ofTheDay(GroomQuestion question, GroomTables tables) {
    List<AddOn> found = new ArrayList<>();
    if (question.state() == CoatState.TANGLED) {
      take(Modifier.TANGLED, tables, found);
    }
    if (question.state() == CoatState.MATTED) {
      take(Modifier.MATTED, tables, found);
    }
    if (question.state() == CoatState.PELTED) {
      take(Modifier.PELTED, tables, found);
    }
    question.weeksSinceLast().ifPresent(weeks -> longGap(weeks, tables).ifPresent(found::add));
    found.addAll(question.order().addOns());
    return found;
  }

  private static void take(Modifier modifier, GroomTables tables, List<AddOn> into) {
    into.add(tables.modifier(modifier.rowName()).orElseThrow());
  }

  /** Of the rows {@code over N weeks}, the one with the largest N that the gap exceeds. */
  private static Optional<AddOn> longGap(int weeks, GroomTables tables) {
    AddOn longest = null;
    int most = -1;
    for (AddOn modifier : tables.addOns(AddOnKind.MODIFIER)) {
      Matcher over = OVER_WEEKS.matcher(Folding.fold(modifier.name()));
      if (over.matches()) {
        int limit = Integer.parseInt(over.group(1));
        if (weeks > limit && limit > most) {
          most = limit;
          longest = modifier;
        }
      }
    }
    return Optional.ofNullable(longest);
  }
}
