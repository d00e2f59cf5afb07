package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.LanguageGrammar;
import dev.dogleg.cli.words.MinutesGrammar;
import dev.dogleg.cli.words.PhoneGrammar;
import dev.dogleg.cli.words.PointGrammar;
import dev.dogleg.cli.words.Reading;
import dev.dogleg.cli.words.Remark;
import dev.dogleg.cli.words.TagGrammar;
import dev.dogleg.cli.words.YesNo;
import dev.dogleg.fault.Severity;
import dev.dogleg.model.Client;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.model.HowToTell;
import dev.dogleg.model.Place;
import dev.dogleg.model.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Makes a client of one row. */
final class ClientRecord {
  /** Most extra stop minutes. */
  static final int MOST_EXTRA_MINUTES = 120;

  private ClientRecord() {}

  /** Fills in the person's record where its row is sound. */
  static void read(Person person, Context context) {
    Cells cells = person.cells();
    Optional<String> phone =
        context
            .card()
            .flatMap(
                card ->
                    cells.read(
                        Column.PHONE, text -> PhoneGrammar.read(text, card.business().country())));
    HowToTell tell =
        cells
            .readOrLook(Column.TELL, ClientRecord::tell)
            .orElse(cells.has(Column.PHONE) ? HowToTell.TEXT : HowToTell.NOBODY);
    Optional<Place> place = place(cells, context);
    int extra =
        cells
            .read(Column.EXTRA_MINUTES, text -> MinutesGrammar.read(text, 0, MOST_EXTRA_MINUTES))
            .orElse(0);
    List<Tag> tags =
        new ArrayList<>(
            cells
                .readOrLook(Column.TAGS, text -> TagGrammar.read(text, context.dateOrder()))
                .orElse(List.of()));
    Optional<String> language = cells.readOrLook(Column.LANGUAGE, LanguageGrammar::read);
    boolean calendar = cells.readOrLook(Column.CALENDAR, YesNo::read).orElse(false);
    if (cells.bad() || place.isEmpty()) {
      return;
    }
    tags.addAll(context.corrections().tags(place.get().address()));
    person.client(
        new Client(
            person.id(),
            person.name(),
            phone,
            tell,
            place.get(),
            cells.text(Column.PARKING),
            cells.text(Column.ENTRY),
            60 * extra,
            cells.text(Column.NOTES),
            tags,
            language,
            calendar));
  }

  private static Optional<Place> place(Cells cells, Context context) {
    String address = cells.text(Column.ADDRESS);
    if (address.isEmpty() && !cells.has(Column.PIN)) {
      cells.add(
          "missing-cell",
          Severity.ASIDE,
          Column.ADDRESS,
          "an address or a pin was expected",
          "write it as on a letter: 12 Mill Lane");
      return Optional.empty();
    }
    Optional<GeoPoint> pin =
        cells.read(Column.PIN, text -> PointGrammar.read(text, context.bounds()));
    if (cells.has(Column.PIN) && pin.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(context.corrections().applied(new Place(address, pin)));
  }

  private static Reading<HowToTell> tell(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "text", "sms", "txt", "message" -> Reading.of(HowToTell.TEXT);
      case "call", "phone", "ring" -> Reading.of(HowToTell.CALL);
      case "nobody", "none", "no", "no one" -> Reading.of(HowToTell.NOBODY);
      case "neighbour", "neighbor" -> Reading.of(HowToTell.NEIGHBOUR);
      default ->
          Reading.none(
              Remark.look("unknown-word", "text, call, nobody or neighbour was expected", ""));
    };
  }
}
