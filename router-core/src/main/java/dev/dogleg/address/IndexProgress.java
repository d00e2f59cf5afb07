package dev.dogleg.address;

/** Told how far the building of an index has come; called from the building thread. */
@FunctionalInterface
public interface IndexProgress {

  /** Listens to nothing. */
  IndexProgress SILENT = (phase, permille) -> {};

  /**
   * Reports progress.
   *
   * @param phase what is being done, a few words, for example {@code reading streets}
   * @param permille how far this phase has come, 0..1000
   */
  void at(String phase, int permille);
}
