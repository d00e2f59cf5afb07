package dev.dogleg.audit;

import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import java.util.ArrayList;
import java.util.List;

/** One number of one event changed. */
enum StopEdit {
  PLACE,
  ARRIVE,
  START,
  LEAVE,
  DRIVE,
  METRES,
  WAIT,
  SPARE;

  PlannedStop set(PlannedStop s, int value) {
    return new PlannedStop(
        s.kind(),
        this == PLACE ? value : s.place(),
        s.visitId(),
        this == ARRIVE ? value : s.arriveSeconds(),
        this == START ? value : s.startSeconds(),
        this == LEAVE ? value : s.leaveSeconds(),
        this == DRIVE ? value : s.driveSeconds(),
        this == METRES ? value : s.driveMetres(),
        this == WAIT ? value : s.waitSeconds(),
        this == SPARE ? value : s.spareSeconds());
  }

  int get(PlannedStop s) {
    return switch (this) {
      case PLACE -> s.place();
      case ARRIVE -> s.arriveSeconds();
      case START -> s.startSeconds();
      case LEAVE -> s.leaveSeconds();
      case DRIVE -> s.driveSeconds();
      case METRES -> s.driveMetres();
      case WAIT -> s.waitSeconds();
      case SPARE -> s.spareSeconds();
    };
  }

  /** The events with this number of one of them changed. */
  List<PlannedStop> in(List<PlannedStop> stops, int index, int value) {
    List<PlannedStop> edited = new ArrayList<>(stops);
    edited.set(index, set(stops.get(index), value));
    return edited;
  }

  static PlannedStop named(PlannedStop s, Kind kind, String id) {
    return new PlannedStop(
        kind,
        s.place(),
        id,
        s.arriveSeconds(),
        s.startSeconds(),
        s.leaveSeconds(),
        s.driveSeconds(),
        s.driveMetres(),
        s.waitSeconds(),
        s.spareSeconds());
  }
}
