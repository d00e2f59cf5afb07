package dev.dogleg.fault;

import java.util.ArrayList;
import java.util.List;

/**
 * All faults of one run, in the order in which they were found.
 *
 * <p>Life cycle: made by the command, filled by one thread while input is read, then read.
 */
public final class Faults {
  private final List<Fault> found = new ArrayList<>();

  /** Makes an empty collection. */
  public Faults() {}

  /**
   * Adds one fault.
   *
   * @param fault the fault
   */
  public void add(Fault fault) {
    found.add(java.util.Objects.requireNonNull(fault, "fault"));
  }

  /**
   * Adds all faults of another collection, after those already here.
   *
   * @param more the other collection
   */
  public void addAll(Faults more) {
    found.addAll(more.found);
  }

  /** {@return all faults, unmodifiable, in the order found} */
  public List<Fault> all() {
    return List.copyOf(found);
  }

  /**
   * Faults of one severity.
   *
   * @param severity which
   * @return unmodifiable list, in the order found
   */
  public List<Fault> of(Severity severity) {
    return found.stream().filter(fault -> fault.severity() == severity).toList();
  }

  /** {@return whether any fault stops the run} */
  public boolean stops() {
    return found.stream().anyMatch(fault -> fault.severity() == Severity.STOP);
  }

  /** {@return whether nothing was found} */
  public boolean isEmpty() {
    return found.isEmpty();
  }
}
