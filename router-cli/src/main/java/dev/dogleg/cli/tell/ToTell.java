package dev.dogleg.cli.tell;

import dev.dogleg.cli.told.Occasion;
import dev.dogleg.cli.told.ToldRow;
import dev.dogleg.model.HowToTell;
import dev.dogleg.model.WallSpan;
import java.time.ZonedDateTime;
import java.util.Objects;

/**
 * Somebody who is to hear something.
 *
 * @param door the visit
 * @param occasion why
 * @param span what is told: arrival at the door within it
 * @param how text, call or neighbour
 * @param message what to send or say, on one line
 * @param sendAt when, in the owner's time zone
 * @param remark why it is not as the client's row says; empty where it is
 */
public record ToTell(
    AtDoor door,
    Occasion occasion,
    WallSpan span,
    HowToTell how,
    String message,
    ZonedDateTime sendAt,
    String remark) {
  /** Checks that somebody is told; a text needs a phone. */
  public ToTell {
    Objects.requireNonNull(door, "door");
    Objects.requireNonNull(occasion, "occasion");
    Objects.requireNonNull(span, "span");
    Objects.requireNonNull(message, "message");
    Objects.requireNonNull(sendAt, "sendAt");
    Objects.requireNonNull(remark, "remark");
    if (how == HowToTell.NOBODY || (how == HowToTell.TEXT && door.client().phone().isEmpty())) {
      throw new IllegalArgumentException("nobody can be told so: " + how);
    }
  }

  /** {@return the same as the log keeps it} */
  public ToldRow.Told told() {
    return new ToldRow.Told(
        door.bookings(), door.date(), span, occasion, how, sendAt.toOffsetDateTime());
  }
}
