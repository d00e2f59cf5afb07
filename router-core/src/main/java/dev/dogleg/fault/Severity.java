package dev.dogleg.fault;

/** What a fault does to the run it was found in. */
public enum Severity {
  /** The answer would be untrue: the run stops and writes nothing (exit 3). */
  STOP,
  /** One row is set aside loudly and the rest is planned (exit 4). */
  ASIDE,
  /** Everything is planned, but a person should look at this (exit 4). */
  LOOK,
  /** Said for information only; it does not change the exit code. */
  NOTE
}
