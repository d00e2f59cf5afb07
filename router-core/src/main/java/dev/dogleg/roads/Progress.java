package dev.dogleg.roads;

import dev.dogleg.fault.Fault;

/**
 * Hears how the opening of a map goes on. Called by the thread that opens it; must return soon and
 * throw nothing.
 */
@FunctionalInterface
public interface Progress {

  /** Hears nothing. */
  Progress SILENT = (phase, detail) -> {};

  /**
   * A step begins.
   *
   * @param phase which
   * @param detail more about it in a few words, for example the memory it will need; may be empty
   */
  void begins(MapPhase phase, String detail);

  /**
   * Something worth saying that stops nothing, for example a damaged cache that is built anew.
   *
   * @param fault what, with a severity below STOP
   */
  default void notice(Fault fault) {}
}
