package dev.dogleg.model;

import java.util.List;

/**
 * Somebody who comes along on some days.
 *
 * @param id unique among helpers
 * @param name as called
 * @param tags what rules may ask of the helper
 */
public record Helper(String id, String name, List<Tag> tags) {
  /** Checks and copies. */
  public Helper {
    Ids.checked(id);
    tags = List.copyOf(tags);
  }
}
