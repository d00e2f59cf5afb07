package dev.dogleg.cli.export;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import dev.dogleg.cli.export.ZoneRoomSheet.Day;
import dev.dogleg.time.TimeWindow;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** Room in a zone for programs: figures and times, no addresses. */
public final class ZoneRoomJson {
  private ZoneRoomJson() {}

  /**
   * The answer as one object.
   *
   * @param sheet what there is to say
   * @return one line; its fields stand in {@code docs/formats-fit.md}
   */
  public static String of(ZoneRoomSheet sheet) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.writeStartObject();
      json.writeStringField("zone", sheet.zone());
      json.writeNumberField("doors", sheet.doors());
      json.writeNumberField("fitting", sheet.fitting());
      json.writeBooleanField("proven", sheet.proven());
      json.writeNumberField("planned_seconds", sheet.plannedSeconds());
      json.writeNumberField("span_seconds", sheet.spanSeconds());
      json.writeArrayFieldStart("days");
      for (Day day : sheet.days()) {
        day(json, day);
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static void day(JsonGenerator json, Day day) throws IOException {
    json.writeStartObject();
    json.writeStringField("date", day.day().date().toString());
    json.writeStringField("groomer", day.groomer());
    json.writeNumberField("fitting", day.fitting());
    if (day.fitting() > 0) {
      json.writeNumberField("least_extra_drive_seconds", day.leastDriveSeconds());
      json.writeNumberField("most_extra_drive_seconds", day.mostDriveSeconds());
    }
    json.writeArrayFieldStart("spans");
    for (TimeWindow span : day.spans()) {
      json.writeStartArray();
      json.writeString(day.day().wallAt(span.fromSeconds()).toLocalTime().toString());
      json.writeString(day.day().wallAt(span.toSeconds()).toLocalTime().toString());
      json.writeEndArray();
    }
    json.writeEndArray();
    json.writeBooleanField("spans_proven", day.spansProven());
    json.writeEndObject();
  }
}
