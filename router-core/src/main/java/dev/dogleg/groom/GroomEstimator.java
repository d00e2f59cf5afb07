package dev.dogleg.groom;

import dev.dogleg.model.Coat;
import dev.dogleg.model.SizeClass;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** Answers how long a groom and a stop take, from the tables in force. */
public final class GroomEstimator {
  private static final String OWN = "the groomer's own minutes";

  private final GroomTables tables;

  /**
   * An estimator over tables.
   *
   * @param tables tables in force
   */
  public GroomEstimator(GroomTables tables) {
    this.tables = Objects.requireNonNull(tables, "tables");
  }

  /**
   * Minutes of one groom.
   *
   * @param question what is asked
   * @return the estimate: median, spread, and the basis of each number
   */
  public GroomEstimate estimate(GroomQuestion question) {
    TimeCell cell = cell(question, question.look().size().taken(), question.look().coat().taken());
    List<BasisLine> basis = new ArrayList<>();
    List<String> guesses = new ArrayList<>();
    double minutes;
    double guessVariance = 0;
    if (question.ownMinutes().isPresent()) {
      minutes = question.ownMinutes().getAsInt();
      basis.add(minutes(what(question), question.ownMinutes().getAsInt(), OWN + " for this groom"));
    } else if (question.usualMinutes().isPresent()) {
      int usual = question.usualMinutes().getAsInt();
      basis.add(minutes(what(question), usual, OWN + " for this pet"));
      minutes = usual + add(Modifiers.ofTheDay(question, tables), question, basis);
    } else {
      basis.add(minutes(what(question), cell.minutes(), cell.provenance()));
      minutes = cell.minutes() + add(Modifiers.all(question, tables), question, basis);
      minutes = LearnedMinutes.paced(minutes, question, tables.learned(), basis);
      guessVariance = guessVariance(question, cell);
      guesses.addAll(guesses(question));
    }
    double spread =
        LearnedMinutes.spread(
            question, table(minutes, cell, guessVariance), cell, tables.learned(), basis);
    return new GroomEstimate(
        question, ServiceTime.of(minutes * 60, spread), basis, guesses, Cautions.of(question));
  }

  /**
   * What the tables alone say of one groom: no pace, nothing learned, nobody's own minutes.
   *
   * @param question what is asked
   * @return median and spreads
   */
  public TableTime table(GroomQuestion question) {
    TimeCell cell = cell(question, question.look().size().taken(), question.look().coat().taken());
    int added = add(Modifiers.all(question, tables), question, new ArrayList<>());
    return table(cell.minutes() + added, cell, guessVariance(question, cell));
  }

  private static TableTime table(double minutes, TimeCell cell, double guessVariance) {
    return new TableTime(minutes, cell.spreadKnown(), cell.spreadNew(), guessVariance);
  }

  /**
   * Minutes of one stop: one arrival, and a groom for each pet.
   *
   * @param question what is asked
   * @return the estimate; the overhead is held fixed, the grooms are summed as independent
   */
  public StopEstimate stop(StopQuestion question) {
    List<GroomEstimate> grooms = new ArrayList<>();
    List<ServiceTime> times = new ArrayList<>();
    List<BasisLine> basis = new ArrayList<>();
    for (GroomGroup group : question.groups()) {
      List<GroomEstimate> pets = group.pets().stream().map(this::estimate).toList();
      grooms.addAll(pets);
      if (group.ownMinutes().isPresent()) {
        times.add(together(group, basis));
      } else {
        pets.forEach(
            pet -> {
              times.add(pet.time());
              basis.addAll(pet.basis());
            });
      }
    }
    int overhead = StopOverhead.seconds(question, grooms.size(), tables, basis);
    return new StopEstimate(grooms, overhead, basis, ServiceTime.sum(times).plusFixed(overhead));
  }

  /** Minutes given for several pets together: their sum is known, each one's part is not. */
  private ServiceTime together(GroomGroup group, List<BasisLine> basis) {
    double spread = 0;
    String provenance = "";
    for (GroomQuestion pet : group.pets()) {
      TimeCell cell = cell(pet, pet.look().size().taken(), pet.look().coat().taken());
      if (cell.spreadKnown() > spread) {
        spread = cell.spreadKnown();
        provenance = cell.provenance();
      }
    }
    int minutes = group.ownMinutes().getAsInt();
    basis.add(
        minutes(
            String.join("; ", group.pets().stream().map(GroomEstimator::what).toList()),
            minutes,
            OWN + " for this booking"));
    basis.add(LearnedMinutes.line("spread, known pet", spread, provenance));
    return ServiceTime.of(minutes * 60.0, spread);
  }

  private TimeCell cell(GroomQuestion question, SizeClass size, Coat coat) {
    return tables.time(question.look().species(), question.order().service().name(), size, coat);
  }

  private static int add(List<AddOn> addOns, GroomQuestion question, List<BasisLine> basis) {
    int sum = 0;
    for (AddOn addOn : addOns) {
      int minutes = addOn.minutesWith(question.order().service());
      sum += minutes;
      basis.add(
          minutes(
              minutes == 0 ? addOn.name() + " (part of the service)" : addOn.name(),
              minutes,
              addOn.provenance()));
    }
    return sum;
  }

  /**
   * Mean square distance, on the log scale, of the cells it could be from the cell taken. It widens
   * the spread and leaves the median where the table has it, so that a person finds the number
   * again.
   */
  private double guessVariance(GroomQuestion question, TimeCell taken) {
    Likely<SizeClass> size = question.look().size();
    Likely<Coat> coat = question.look().coat();
    double sum = 0;
    for (SizeClass otherSize : size.mayBe()) {
      for (Coat otherCoat : coat.mayBe()) {
        double distance =
            StrictMath.log(
                (double) cell(question, otherSize, otherCoat).minutes() / taken.minutes());
        sum += distance * distance;
      }
    }
    return sum / (size.mayBe().size() * coat.mayBe().size());
  }

  private static List<String> guesses(GroomQuestion question) {
    Likely<SizeClass> size = question.look().size();
    Likely<Coat> coat = question.look().coat();
    List<String> guesses = new ArrayList<>();
    if (size.isGuess()) {
      guesses.add("size " + word(size.taken()) + ", may be " + others(size));
    }
    if (coat.isGuess()) {
      guesses.add("coat " + word(coat.taken()) + ", may be " + others(coat));
    }
    if (question.look().grade() == MatchGrade.NEAR) {
      guesses.add("breed read with a typing error: " + question.look().asked());
    }
    if (!question.look().unread().isEmpty()) {
      guesses.add("not understood: " + String.join(" ", question.look().unread()));
    }
    return guesses;
  }

  private static String what(GroomQuestion question) {
    PetLook look = question.look();
    return (question.pet().isEmpty() ? "" : question.pet() + ": ")
        + question.order().service().name()
        + ", "
        + word(look.size().taken())
        + " "
        + word(look.species())
        + ", "
        + word(look.coat().taken())
        + " coat"
        + look.breed().map(breed -> " (" + breed.name() + ")").orElse("");
  }

  private static <E extends Enum<E>> String others(Likely<E> likely) {
    return String.join(", ", likely.mayBe().stream().skip(1).map(GroomEstimator::word).toList());
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  private static BasisLine minutes(String what, int minutes, String provenance) {
    return new BasisLine(what, minutes * 60, BasisUnit.SECONDS, provenance);
  }
}
