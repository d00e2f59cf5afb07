package dev.dogleg.fault;

import java.util.List;

/** Thrown where nothing can go on because of the input; carries every fault known by then. */
public final class FaultException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Fault> faults;

  /**
   * Wraps faults.
   *
   * @param faults at least one
   */
  public FaultException(List<Fault> faults) {
    super(faults.isEmpty() ? "no fault given" : faults.get(0).toString());
    this.faults = List.copyOf(faults);
  }

  /**
   * Wraps one fault.
   *
   * @param fault the fault
   */
  public FaultException(Fault fault) {
    this(List.of(fault));
  }

  /**
   * Wraps one fault and what caused it.
   *
   * @param fault the fault
   * @param cause what a library or the system said
   */
  public FaultException(Fault fault, Throwable cause) {
    this(List.of(fault));
    initCause(cause);
  }

  /** {@return the faults, unmodifiable} */
  public List<Fault> faults() {
    return faults;
  }
}
