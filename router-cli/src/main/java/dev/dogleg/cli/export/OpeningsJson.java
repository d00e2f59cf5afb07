package dev.dogleg.cli.export;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import dev.dogleg.cli.export.OpeningsSheet.Cell;
import dev.dogleg.cli.export.OpeningsSheet.Kind;
import dev.dogleg.cli.export.OpeningsSheet.NotPlanned;
import dev.dogleg.cli.export.OpeningsSheet.Row;
import dev.dogleg.cli.export.OpeningsSheet.Zone;
import dev.dogleg.time.TimeWindow;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.format.DateTimeFormatter;

/** The table of times that may be told as JSON (RFC 8259), for programs. */
public final class OpeningsJson {
  private final OpeningsSheet sheet;
  private final JsonGenerator json;

  private OpeningsJson(OpeningsSheet sheet, JsonGenerator json) {
    this.sheet = sheet;
    this.json = json;
  }

  /**
   * The table as one object.
   *
   * @param sheet the table
   * @return one line; its fields stand in {@code docs/formats-openings.md}
   */
  public static String of(OpeningsSheet sheet) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      new OpeningsJson(sheet, json).write();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void write() throws IOException {
    json.writeStartObject();
    json.writeStringField(
        "made", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(sheet.made().withNano(0)));
    json.writeNumberField("span_seconds", sheet.terms().spanSeconds());
    json.writeNumberField("step_seconds", sheet.terms().stepSeconds());
    json.writeNumberField("margin_seconds", sheet.terms().marginSeconds());
    json.writeNumberField("enough_percent", sheet.terms().enoughPercent());
    json.writeBooleanField("overtime", sheet.terms().overtime());
    json.writeNumberField("kept_percent", sheet.terms().keptPercent());
    json.writeNumberField("good_for_clients_a_line", 1);
    json.writeArrayFieldStart("kinds");
    for (Kind kind : sheet.kinds()) {
      json.writeStartObject();
      json.writeStringField("kind", kind.word());
      json.writeStringField("stands_for", kind.standsFor());
      json.writeNumberField("planned_seconds", kind.plannedSeconds());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("zones");
    for (Zone zone : sheet.zones()) {
      zone(zone);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("not_planned");
    for (NotPlanned day : sheet.notPlanned()) {
      json.writeStartObject();
      json.writeStringField("date", day.date().toString());
      json.writeNumberField("in_the_book", day.waiting().size());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeNumberField("not_counted", sheet.notCounted().size());
    json.writeEndObject();
  }

  private void zone(Zone zone) throws IOException {
    json.writeStartObject();
    json.writeStringField("zone", zone.name());
    json.writeNumberField("doors", zone.doors());
    json.writeArrayFieldStart("lines");
    for (Row row : zone.rows()) {
      json.writeStartObject();
      json.writeStringField("date", row.day().date().toString());
      json.writeStringField("groomer", row.groomer());
      json.writeArrayFieldStart("cells");
      for (int kind = 0; kind < sheet.kinds().size(); kind++) {
        cell(row, sheet.kinds().get(kind), row.cells().get(kind));
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void cell(Row row, Kind kind, Cell cell) throws IOException {
    json.writeStartObject();
    json.writeStringField("kind", kind.word());
    json.writeBooleanField("allowed", cell.allowed());
    json.writeBooleanField("proven", cell.proven());
    json.writeNumberField("dearer_seconds", cell.dearerSeconds());
    json.writeArrayFieldStart("may_tell");
    for (TimeWindow span : cell.spans()) {
      json.writeStartObject();
      json.writeStringField("from", row.day().wallText(span.fromSeconds()));
      json.writeStringField("to", row.day().wallText(span.toSeconds()));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }
}
