package dev.dogleg.cli.export;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import dev.dogleg.cli.export.ZonesSheet.Cell;
import dev.dogleg.cli.export.ZonesSheet.Line;
import dev.dogleg.cli.export.ZonesSheet.Proposal;
import dev.dogleg.cli.export.ZonesSheet.Shared;
import dev.dogleg.cli.export.ZonesSheet.SharedArea;
import dev.dogleg.cli.export.ZonesSheet.Who;
import dev.dogleg.cli.export.ZonesSheet.WrongDay;
import dev.dogleg.plan.zone.ZoneDayPlan;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/** The zones report for programs: ids of clients, never their names. */
public final class ZonesJson {
  private final ZonesSheet sheet;
  private final JsonGenerator json;

  private ZonesJson(ZonesSheet sheet, JsonGenerator json) {
    this.sheet = sheet;
    this.json = json;
  }

  /**
   * The report as one object.
   *
   * @param sheet what there is to say
   * @return one line; its fields stand in {@code docs/formats-zones.md}
   */
  public static String of(ZonesSheet sheet) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      new ZonesJson(sheet, json).write();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void write() throws IOException {
    json.writeStartObject();
    json.writeArrayFieldStart("lines");
    for (Line line : sheet.lines()) {
      line(line);
    }
    json.writeEndArray();
    clients("gaps", sheet.gaps());
    json.writeArrayFieldStart("overlaps");
    for (Shared shared : sheet.shared()) {
      json.writeStartObject();
      strings("zones", shared.zones());
      clients("clients", shared.clients());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("area_overlaps");
    for (SharedArea area : sheet.sharedAreas()) {
      json.writeStartObject();
      strings("zones", List.of(area.one(), area.other()));
      json.writeNumberField("square_metres", Math.round(area.squareMetres()));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("wrong_days");
    for (WrongDay one : sheet.wrongDays()) {
      wrongDay(one);
    }
    json.writeEndArray();
    if (sheet.proposal().isPresent()) {
      proposal(sheet.proposal().get());
    }
    json.writeEndObject();
  }

  private void line(Line line) throws IOException {
    json.writeStartObject();
    json.writeStringField("about", line.about().name().toLowerCase(Locale.ROOT));
    json.writeStringField("zone", line.name());
    json.writeNumberField("clients", line.clients());
    json.writeArrayFieldStart("days");
    for (int d = 0; d < sheet.days().size(); d++) {
      Cell cell = line.cells().get(d);
      if (!cell.equals(Cell.NONE)) {
        json.writeStartObject();
        day(d);
        json.writeNumberField("visits", cell.visits());
        json.writeNumberField("wrong_day", cell.wrongDay());
        json.writeNumberField("groom_seconds", cell.groomSeconds());
        json.writeNumberField("drive_seconds", cell.driveSeconds());
        json.writeEndObject();
      }
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void day(int number) throws IOException {
    json.writeStringField("date", sheet.days().get(number).date().toString());
    json.writeStringField("groomer", sheet.days().get(number).groomer());
  }

  private void wrongDay(WrongDay one) throws IOException {
    json.writeStartObject();
    json.writeStringField("client", one.who().id());
    strings("bookings", one.bookings());
    day(one.day());
    strings("zones", one.zones());
    json.writeBooleanField("told", one.told());
    json.writeBooleanField("keeps_day", one.keepsDay());
    if (one.extraDriveSeconds().isPresent()) {
      json.writeNumberField("extra_drive_seconds", one.extraDriveSeconds().getAsInt());
    }
    if (one.zoneDay().isPresent()) {
      json.writeObjectFieldStart("zone_day");
      day(one.zoneDay().getAsInt());
      json.writeNumberField("extra_drive_seconds", one.zoneDayDriveSeconds().getAsInt());
      json.writeEndObject();
    }
    json.writeEndObject();
  }

  private void proposal(Proposal proposal) throws IOException {
    ZoneDayPlan answer = proposal.answer();
    json.writeObjectFieldStart("proposal");
    json.writeBooleanField("saves", proposal.saves());
    json.writeNumberField("more_room", proposal.moreRoom());
    json.writeBooleanField("proven", answer.proven());
    json.writeNumberField("weeks", proposal.weeks());
    json.writeNumberField("weeks_planned", answer.weeks());
    json.writeNumberField("visits", proposal.visits());
    json.writeNumberField("visits_free", proposal.free());
    json.writeNumberField("visits_changed", proposal.changed());
    json.writeNumberField("drive_seconds_on_file", proposal.plannedDriveSeconds());
    week("now", proposal, answer.now());
    week("proposed", proposal, answer.best());
    week("every_day_open", proposal, answer.free());
    json.writeEndObject();
  }

  private void week(String name, Proposal proposal, ZoneDayPlan.Week week) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeNumberField("drive_seconds", week.driveSeconds());
    json.writeNumberField("left_out", week.plan().leftOutCounted());
    json.writeNumberField("cost_sixtieths", week.plan().costSixtieths());
    json.writeObjectFieldStart("days");
    for (int zone = 0; zone < proposal.zones().size(); zone++) {
      strings(proposal.zones().get(zone), words(week.days().get(zone)));
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private static List<String> words(Set<DayOfWeek> days) {
    return new TreeSet<>(days)
        .stream().map(day -> day.name().substring(0, 3).toLowerCase(Locale.ROOT)).toList();
  }

  private void clients(String name, List<Who> clients) throws IOException {
    strings(name, clients.stream().map(Who::id).toList());
  }

  private void strings(String name, List<String> values) throws IOException {
    json.writeArrayFieldStart(name);
    for (String value : values) {
      json.writeString(value);
    }
    json.writeEndArray();
  }
}
