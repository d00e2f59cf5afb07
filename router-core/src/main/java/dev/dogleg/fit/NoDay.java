package dev.dogleg.fit;

import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.WeekNoRoom.Change;
import java.util.Objects;
import java.util.Optional;

/**
 * A van-day on which a newcomer does not fit while everything else stays.
 *
 * @param day number of the van-day
 * @param reason the rule that blocks and by how much, or the visits that leave no room
 * @param change the smallest move of one time that makes room, verified by planning the day again;
 *     empty where none of up to four hours does, and where some other van-day has room
 */
public record NoDay(int day, NoRoom reason, Optional<Change> change) {
  /** Checks that nothing is null. */
  public NoDay {
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(change, "change");
  }

  /** {@return whether it is proven that it does not fit} */
  public boolean proven() {
    return reason.why() == NoRoom.Why.IMPOSSIBLE_ALONE
        || reason.why() == NoRoom.Why.IMPOSSIBLE_TOGETHER;
  }
}
