package dev.dogleg.cli.export;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import dev.dogleg.fit.DoorChange;
import dev.dogleg.fit.FitAnswer;
import dev.dogleg.fit.NoDay;
import dev.dogleg.fit.Offer;
import dev.dogleg.fit.WeekOffer;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.WeekNoRoom.Change;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;

/** Answers about newcomers as JSON (RFC 8259), for programs. */
public final class FitJson {
  private final JsonGenerator json;

  private FitJson(JsonGenerator json) {
    this.json = json;
  }

  /**
   * An array of answers, in the order asked.
   *
   * @param sheets the answers
   * @return one line; its fields stand in {@code docs/formats-fit.md}
   */
  public static String of(List<FitSheet> sheets) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.writeStartArray();
      for (FitSheet sheet : sheets) {
        new FitJson(json).answer(sheet);
      }
      json.writeEndArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void answer(FitSheet sheet) throws IOException {
    FitAnswer answer = sheet.answer();
    json.writeStartObject();
    json.writeStringField("who", sheet.who());
    json.writeStringField("address", sheet.address());
    json.writeStringField("verdict", word(answer.verdict()));
    json.writeStringField("verdict_same_days", word(answer.sameDays()));
    json.writeNumberField("planned_seconds", sheet.minutes().plannedSeconds());
    json.writeArrayFieldStart("guessed");
    for (String guess : sheet.minutes().guessed()) {
      json.writeString(guess);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("offers");
    for (Offer offer : answer.offers()) {
      offer(sheet, offer);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("further_days");
    for (int day : answer.furtherDays()) {
      json.writeStartObject();
      day(sheet, day);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("no_days");
    for (NoDay no : answer.noDays()) {
      noDay(sheet, no);
    }
    json.writeEndArray();
    if (answer.otherDays().isPresent()) {
      otherDays(sheet, answer.otherDays().get());
    }
    json.writeEndObject();
  }

  private void day(FitSheet sheet, int number) throws IOException {
    json.writeStringField("date", sheet.days().get(number).day().date().toString());
    json.writeStringField("groomer", sheet.days().get(number).groomer());
  }

  private void offer(FitSheet sheet, Offer offer) throws IOException {
    FitSheet.Day day = sheet.days().get(offer.day());
    json.writeStartObject();
    day(sheet, offer.day());
    json.writeStringField("arrive", day.day().wallText(offer.newcomer().arriveSeconds()));
    json.writeStringField(
        "tell_from", day.day().wallText(offer.toTell().arriveWithin().fromSeconds()));
    json.writeStringField("tell_to", day.day().wallText(offer.toTell().arriveWithin().toSeconds()));
    json.writeNumberField("kept_permille", offer.toTell().keptPermille());
    json.writeNumberField("extra_drive_seconds", offer.changes().driveSeconds());
    json.writeNumberField("extra_drive_metres", offer.changes().driveMetres());
    json.writeNumberField("extra_wait_seconds", offer.changes().waitSeconds());
    json.writeNumberField("later_home_seconds", offer.changes().endSeconds());
    json.writeNumberField("spare_seconds", offer.spareSeconds());
    json.writeNumberField("cost_minor", sheet.money().costMinor(offer.extraCostSixtieths()));
    if (sheet.money().priceMinor().isPresent()) {
      json.writeNumberField("price_minor", sheet.money().priceMinor().getAsLong());
    }
    json.writeStringField("currency", sheet.money().currency().getCurrencyCode());
    json.writeBooleanField("proven", offer.proven());
    json.writeArrayFieldStart("doors");
    for (DoorChange door : offer.doors()) {
      json.writeStartObject();
      json.writeStringField("stop", door.visitId());
      json.writeStringField("arrive", day.day().wallText(door.arriveAfter()));
      json.writeNumberField("shift_seconds", door.shiftSeconds());
      json.writeBooleanField("told", door.promised());
      if (door.keptBefore().isPresent()) {
        json.writeNumberField("kept_before_permille", door.keptBefore().getAsInt());
      }
      json.writeNumberField("kept_after_permille", door.keptAfter());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void noDay(FitSheet sheet, NoDay no) throws IOException {
    json.writeStartObject();
    day(sheet, no.day());
    json.writeBooleanField("proven", no.proven());
    if (no.reason().isPresent()) {
      NoRoom reason = no.reason().get();
      json.writeStringField("why", word(reason.why()));
      json.writeStringField("rule", reason.rule());
      json.writeNumberField("short_by_seconds", reason.shortBySeconds());
      json.writeArrayFieldStart("beside");
      for (String id : reason.withVisits()) {
        json.writeString(id);
      }
      json.writeEndArray();
    }
    if (no.change().isPresent()) {
      Change change = no.change().get();
      json.writeObjectFieldStart("fits_with");
      json.writeStringField("change", word(change.kind()));
      json.writeNumberField("seconds", change.seconds());
      json.writeEndObject();
    }
    json.writeEndObject();
  }

  private void otherDays(FitSheet sheet, WeekOffer week) throws IOException {
    json.writeObjectFieldStart("other_days");
    json.writeStringField("verdict", word(week.verdict()));
    json.writeBooleanField("proven", week.proven());
    if (week.day().isPresent()) {
      day(sheet, week.day().getAsInt());
      json.writeNumberField("cost_minor", sheet.money().costMinor(week.extraCostSixtieths()));
      json.writeArrayFieldStart("moved");
      for (WeekOffer.Move move : week.moved()) {
        json.writeStartObject();
        json.writeStringField("stop", move.bookingId());
        json.writeStringField("from", sheet.days().get(move.from()).day().date().toString());
        json.writeStringField("to", sheet.days().get(move.to()).day().date().toString());
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    json.writeEndObject();
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
