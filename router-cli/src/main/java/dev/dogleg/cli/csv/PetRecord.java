package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.DateGrammar;
import dev.dogleg.cli.words.MinutesGrammar;
import dev.dogleg.cli.words.MoneyGrammar;
import dev.dogleg.cli.words.Reading;
import dev.dogleg.cli.words.Remark;
import dev.dogleg.cli.words.TagGrammar;
import dev.dogleg.fault.Faults;
import dev.dogleg.groom.AddOn;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.ServiceOrder;
import dev.dogleg.model.Pet;
import dev.dogleg.model.Species;
import dev.dogleg.model.Tag;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.regex.Pattern;

/** Makes a pet of one row. */
final class PetRecord {
  /** Least groom minutes that make sense for one pet. */
  static final int LEAST_MINUTES = 3;

  private static final int MOST_LITRES = 500;
  private static final Pattern NUMBER = Pattern.compile("\\d{1,3}");
  private static final Pattern WEEK_WORDS =
      Pattern.compile("^every\\s+|\\s*(w|wk|wks|week|weeks)\\.?$");

  /** Most groom minutes that make sense for one pet. */
  static final int MOST_MINUTES = 480;

  private static final Set<String> NEVER = Set.of("never", "new", "first", "first visit", "none");

  private final Cells cells;
  private final Context context;

  private PetRecord(Cells cells, Context context) {
    this.cells = cells;
    this.context = context;
  }

  /** Fills in the animal's record where its row is sound. */
  static void read(Animal animal, Context context) {
    new PetRecord(animal.cells(), context).read(animal);
  }

  private void read(Animal animal) {
    PetLooks looks = PetLooks.of(cells, context);
    List<String> order =
        cells.has(Column.SERVICE)
            ? order(
                looks.species(),
                cells.text(Column.SERVICE),
                Column.SERVICE,
                cells,
                context.tables())
            : List.of();
    Optional<Integer> minutes =
        cells.read(Column.MINUTES, text -> MinutesGrammar.read(text, LEAST_MINUTES, MOST_MINUTES));
    Optional<Long> price =
        context
            .card()
            .flatMap(
                card ->
                    cells.read(
                        Column.PRICE, text -> MoneyGrammar.read(text, card.business().currency())));
    Optional<Integer> weeks = cells.readOrLook(Column.EVERY_WEEKS, PetRecord::weeks);
    Optional<LocalDate> born = cells.readOrLook(Column.BORN, this::born);
    boolean never = NEVER.contains(cells.text(Column.LAST_GROOMED).toLowerCase(Locale.ROOT));
    Optional<LocalDate> last =
        never ? Optional.empty() : cells.readOrLook(Column.LAST_GROOMED, this::day);
    Optional<LocalDate> rabies = cells.readOrLook(Column.RABIES_UNTIL, this::day);
    List<Tag> tags =
        new ArrayList<>(
            cells
                .readOrLook(Column.TAGS, text -> TagGrammar.read(text, context.dateOrder()))
                .orElse(List.of()));
    Optional<Integer> litres = cells.readOrLook(Column.LITRES, PetRecord::litres);
    if (cells.bad() || animal.owner().client().isEmpty()) {
      return;
    }
    looks.tags().stream()
        .filter(word -> tags.stream().noneMatch(tag -> tag.name().equals(word)))
        .forEach(word -> tags.add(Tag.of(word)));
    Pet pet =
        new Pet(
            animal.id(),
            animal.owner().id(),
            animal.name(),
            looks.species(),
            looks.breed(),
            looks.grams(),
            looks.size(),
            looks.coat(),
            looks.behaviour(),
            List.copyOf(tags),
            order.stream().findFirst(),
            minutes.map(OptionalInt::of).orElse(OptionalInt.empty()),
            price.map(OptionalLong::of).orElse(OptionalLong.empty()),
            weeks.map(OptionalInt::of).orElse(OptionalInt.empty()),
            born,
            last,
            never,
            rabies,
            looks.guessed(),
            litres.map(OptionalInt::of).orElse(OptionalInt.empty()));
    animal.sound(pet, order, looks.state());
  }

  /** Main service and add-ons by the names of the tables; empty where not understood. */
  static List<String> order(
      Species species, String text, Column column, Cells cells, GroomTables tables) {
    Faults faults = new Faults();
    Optional<ServiceOrder> order = tables.order(species, text, cells.at(column), faults);
    faults.all().forEach(cells::add);
    List<String> names = new ArrayList<>();
    order.ifPresent(
        found -> {
          names.add(found.service().name());
          found.addOns().stream().map(AddOn::name).forEach(names::add);
        });
    return names;
  }

  private static Reading<Integer> litres(String text) {
    String number = text.toLowerCase(Locale.ROOT).replaceAll("\\s*(l|litres?|liters?)$", "");
    return NUMBER.matcher(number).matches() && Integer.parseInt(number) <= MOST_LITRES
        ? Reading.of(Integer.parseInt(number))
        : Reading.none(
            Remark.look(
                "bad-number", "whole litres from 0 to " + MOST_LITRES + " were expected", ""));
  }

  private static Reading<Integer> weeks(String text) {
    String number = WEEK_WORDS.matcher(text.toLowerCase(Locale.ROOT)).replaceAll("");
    if (NUMBER.matcher(number).matches()) {
      int weeks = Integer.parseInt(number);
      if (weeks >= 1 && weeks <= 104) {
        return Reading.of(weeks);
      }
    }
    return Reading.none(Remark.look("bad-number", "weeks from 1 to 104 were expected", ""));
  }

  private Reading<LocalDate> born(String text) {
    if (text.matches("(19|20)\\d{2}")) {
      return Reading.of(LocalDate.of(Integer.parseInt(text), 7, 1));
    }
    return day(text);
  }

  private Reading<LocalDate> day(String text) {
    Reading<dev.dogleg.model.DateSpan> span = DateGrammar.read(text, context.dateOrder());
    if (span.value().isPresent() && !span.value().get().single()) {
      return Reading.none(Remark.look("bad-date", "one day was expected", ""));
    }
    return new Reading<>(span.value().map(dev.dogleg.model.DateSpan::from), span.remarks());
  }
}
