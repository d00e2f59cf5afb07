package dev.dogleg.cli.console;

/** Shows how far a piece of work is. Thread-safe; closing it twice does no harm. */
public interface Progress extends AutoCloseable {

  /**
   * Names the phase that begins.
   *
   * @param phase a few words
   */
  void phase(String phase);

  /**
   * Says how far the phase is.
   *
   * @param done parts done, 0 or more
   * @param of parts in all; 0 or less where nobody knows
   */
  void at(long done, long of);

  @Override
  void close();
}
