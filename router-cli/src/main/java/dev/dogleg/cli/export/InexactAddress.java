package dev.dogleg.cli.export;

import dev.dogleg.address.LookUp;
import dev.dogleg.fault.Where;
import java.util.Objects;

/**
 * An address of a book that the map does not know to the door.
 *
 * @param who whose it is
 * @param typed the address as typed
 * @param where the cell it stands in
 * @param answer what the map says, not graded exact
 */
public record InexactAddress(String who, String typed, Where where, LookUp answer) {
  /** Checks that nothing is null. */
  public InexactAddress {
    Objects.requireNonNull(who, "who");
    Objects.requireNonNull(typed, "typed");
    Objects.requireNonNull(where, "where");
    Objects.requireNonNull(answer, "answer");
  }
}
