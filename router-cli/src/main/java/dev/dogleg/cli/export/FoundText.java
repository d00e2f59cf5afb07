package dev.dogleg.cli.export;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import dev.dogleg.address.LookUp;
import dev.dogleg.address.Match;
import dev.dogleg.model.GeoPoint;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What was found for one address: for a person with a line to paste, or as JSON. */
public final class FoundText {
  private static final String EXACT = "exact";

  private FoundText() {}

  /**
   * The answer for a person.
   *
   * @param typed address as typed
   * @param answer what the map says
   * @return lines: the reason, then each place with its link and the line that fixes it
   */
  public static List<String> lines(String typed, LookUp answer) {
    List<String> lines = new ArrayList<>(List.of(answer.reason()));
    for (Match match : answer.matches()) {
      String grade = grade(match);
      String clients =
          match.metresFromClients() < 0
              ? ""
              : ", " + match.metresFromClients() + " m from your other clients";
      lines.add(
          String.format(
              Locale.ROOT,
              "  %-12s  %s, within about %d m%s",
              grade,
              match.address(),
              match.distanceEstimateMetres(),
              clients));
      lines.add("                " + GeoLink.of(match));
      lines.add("                " + PlacesLine.of(typed, match.point()));
    }
    if (answer.matches().isEmpty()) {
      lines.add("  Find it on a map and fill in:");
      lines.add("                " + PlacesLine.blank(typed));
    }
    lines.add(
        "To fix it for a book: the quoted line into "
            + PlacesLine.FILE
            + " (first line: "
            + PlacesLine.HEADER
            + ")"
            + (answer.matches().isEmpty() ? "." : ", or a geo: link into the column pin."));
    return lines;
  }

  /**
   * The answer for a person, where the book's corrections know the address.
   *
   * @param point the corrected point
   * @return lines
   */
  public static List<String> corrected(GeoPoint point) {
    return List.of(
        PlacesLine.FILE + " says where this is, which wins over the map",
        "  " + EXACT + "         geo:" + point);
  }

  /**
   * The answer as a JSON array, best first, of objects with {@code lat, lon, grade, address}.
   *
   * @param typed address as typed
   * @param answer what the map says
   * @param corrected the point of the book's corrections, which wins
   * @return one line; an empty array where nothing was found
   */
  public static String json(String typed, LookUp answer, Optional<GeoPoint> corrected) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.writeStartArray();
      if (corrected.isPresent()) {
        write(json, corrected.get(), EXACT, typed);
      } else {
        for (Match match : answer.matches()) {
          write(json, match.point(), grade(match), match.address());
        }
      }
      json.writeEndArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static void write(JsonGenerator json, GeoPoint point, String grade, String address)
      throws IOException {
    json.writeStartObject();
    json.writeFieldName("lat");
    json.writeNumber(degrees(point.lat()));
    json.writeFieldName("lon");
    json.writeNumber(degrees(point.lon()));
    json.writeStringField("grade", grade);
    json.writeStringField("address", address);
    json.writeEndObject();
  }

  private static String grade(Match match) {
    return match.grade().name().toLowerCase(Locale.ROOT);
  }

  private static String degrees(double value) {
    return String.format(Locale.ROOT, "%.6f", value);
  }
}
