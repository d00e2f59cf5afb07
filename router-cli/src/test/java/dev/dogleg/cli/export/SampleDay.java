package dev.dogleg.cli.export;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A small day written down by hand. */
final class SampleDay {
  private static final int EIGHT = 8 * 3600;

  private SampleDay() {}

  static PlannedDay of(Proof proof) {
    return of(proof, ZoneId.of("UTC"), LocalDate.of(2027, 3, 2), "Ada Fenwick");
  }

  /** Leave 08:00, first door 08:10:30-09:00:30, break of 30 min there, second door, home. */
  static PlannedDay of(Proof proof, ZoneId zone, LocalDate date, String firstClient) {
    DayShift shift =
        new DayShift(
            "robin",
            "van-1",
            new WorkDay(date, zone),
            0,
            0,
            new TimeWindow(EIGHT, EIGHT + 9 * 3600),
            0,
            Optional.empty());
    List<PlannedStop> stops =
        List.of(
            stop(PlannedStop.Kind.LEAVE, 0, "", 0, 0, 0, 0, 0, 0, 300),
            stop(PlannedStop.Kind.VISIT, 1, "a1", 630, 900, 3900, 630, 4215, 270, 500),
            stop(PlannedStop.Kind.BREAK, 1, "a1", 3900, 3900, 5700, 0, 0, 0, 1234),
            stop(PlannedStop.Kind.VISIT, 2, "b1;b2", 6300, 6300, 9900, 600, 3000, 0, 1300),
            stop(PlannedStop.Kind.HOME, 0, "", 10500, 10500, 10500, 600, 5055, 0, 20000));
    List<NoRoom> noRoom =
        List.of(
            new NoRoom("c1", NoRoom.Why.IMPOSSIBLE_ALONE, "done-by", 700, List.of()),
            new NoRoom("d1", NoRoom.Why.IMPOSSIBLE_TOGETHER, "", 0, List.of("a1", "b1;b2")));
    DayPlan plan = new DayPlan(shift, stops, noRoom, 2, 7200, proof);
    Map<String, StopLabel> labels =
        Map.of(
            "a1", new StopLabel("a1", List.of("a1"), firstClient, List.of("Mop"), 3000, true, ""),
            "b1;b2",
                new StopLabel(
                    "b1;b2",
                    List.of("b1", "b2"),
                    "Joss Tarn",
                    List.of("Pip", "Squeak"),
                    3600,
                    true,
                    "told 09:30-10:00"),
            "c1",
                new StopLabel("c1", List.of("c1"), "Nell Ottery", List.of("Fern"), 3600, true, ""),
            "d1", new StopLabel("d1", List.of("d1"), "Wil Pask", List.of("Bo"), 3600, true, ""));
    return new PlannedDay(
        plan,
        "Robin Ashdown",
        "Bluebell",
        List.of(
            new PlaceLabel("1 Yard Lane", new GeoPoint(-30.5, -20.25)),
            new PlaceLabel("14 Quay Street, Old Harbour", new GeoPoint(-30.51, -20.26)),
            new PlaceLabel(
                "The Long Barn at the Far End of Upper Withering Lane, North Moor",
                new GeoPoint(-30.52, -20.27))),
        labels,
        List.of(
            new LeftOut(noRoom.get(0), labels.get("c1"), Optional.empty()),
            new LeftOut(noRoom.get(1), labels.get("d1"), Optional.of(date.plusDays(3)))),
        7);
  }

  private static PlannedStop stop(
      PlannedStop.Kind kind,
      int place,
      String visit,
      int arrive,
      int start,
      int leave,
      int drive,
      int metres,
      int wait,
      int spare) {
    return new PlannedStop(
        kind,
        place,
        visit,
        EIGHT + arrive,
        EIGHT + start,
        EIGHT + leave,
        drive,
        metres,
        wait,
        spare);
  }
}
