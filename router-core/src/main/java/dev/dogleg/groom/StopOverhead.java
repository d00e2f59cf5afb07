package dev.dogleg.groom;

import java.util.List;
import java.util.OptionalInt;

/** Time at a door that is not grooming, with its basis. */
final class StopOverhead {
  private static final String CARD = "the business card";

  private StopOverhead() {}

  static int seconds(StopQuestion question, int pets, GroomTables tables, List<BasisLine> basis) {
    int seconds = part("stop", question.ownStopSeconds(), AddOnKind.STOP, tables, basis);
    for (int pet = 2; pet <= pets; pet++) {
      seconds +=
          part(
              "stop: pet " + pet + " at the same door",
              question.ownFurtherPetSeconds(),
              AddOnKind.FURTHER_PET,
              tables,
              basis);
    }
    if (question.extraStopSeconds() > 0) {
      basis.add(
          line("stop: extra for this client", question.extraStopSeconds(), "the client list"));
    }
    return seconds + question.extraStopSeconds();
  }

  private static int part(
      String what, OptionalInt own, AddOnKind kind, GroomTables tables, List<BasisLine> basis) {
    if (own.isPresent()) {
      basis.add(line(what, own.getAsInt(), CARD));
      return own.getAsInt();
    }
    int seconds = 0;
    for (AddOn part : tables.addOns(kind)) {
      basis.add(line("stop: " + part.name(), part.minutes() * 60, part.provenance()));
      seconds += part.minutes() * 60;
    }
    return seconds;
  }

  private static BasisLine line(String what, int seconds, String provenance) {
    return new BasisLine(what, seconds, BasisUnit.SECONDS, provenance);
  }
}
