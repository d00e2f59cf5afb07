package dev.dogleg.groom.learn;

import dev.dogleg.groom.Learned;
import java.util.List;
import java.util.Optional;

/**
 * What a log taught.
 *
 * @param learned the values, to be laid over the tables
 * @param visits visits that were learned from
 * @param pets pets groomed in them
 * @param odd visits left out because they are unlike everything else, in the log's order
 * @param drives how well drives fit, where the log has any
 */
public record Lesson(
    Learned learned, int visits, int pets, List<OddVisit> odd, Optional<DriveScore> drives) {

  /** Copies the list. */
  public Lesson {
    odd = List.copyOf(odd);
  }
}
