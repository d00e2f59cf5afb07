package dev.dogleg.address;

/** How well the map knows the door that was asked for, best first. */
public enum Grade {
  /** A map object bears this number in this street, and nothing that was typed contradicts it. */
  EXACT,
  /** The number stands between known numbers of its side, or on an interpolation way. */
  INTERPOLATED,
  /** The street is known, the number's place in it is not. */
  STREET,
  /** Not what was typed; shown only so that a person can compare. */
  NONE
}
