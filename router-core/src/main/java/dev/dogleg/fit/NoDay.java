package dev.dogleg.fit;

import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.WeekNoRoom.Change;
import java.util.Objects;
import java.util.Optional;

/**
 * A van-day on which a newcomer does not fit while everything else stays.
 *
 * @param day number of the van-day
 * @param proven whether it is proven that it does not fit
 * @param reason the rule that blocks and by how much, or the visits that leave no room; worked out
 *     where no van-day of the question has room, and by {@link FitWeek#why}; empty otherwise
 * @param change the smallest move of one time that makes room, verified by planning the day again;
 *     sought where the reason is; empty where none of up to four hours does
 */
public record NoDay(int day, boolean proven, Optional<NoRoom> reason, Optional<Change> change) {
  /** Checks that nothing is null. */
  public NoDay {
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(change, "change");
  }
}
