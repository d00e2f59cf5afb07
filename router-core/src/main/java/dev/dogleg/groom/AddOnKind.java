package dev.dogleg.groom;

import java.util.Locale;

/** What a row of the add-on table adds its minutes to. */
public enum AddOnKind {
  /** To a groom, because of the pet: its coat, behaviour, age, history. */
  MODIFIER,
  /** To a groom, because it was asked for. */
  ADD_ON,
  /** To every stop, once. */
  STOP,
  /** To a stop, for each pet after the first. */
  FURTHER_PET,
  /** To the day before the van leaves home, where the business card says so. */
  SET_UP,
  /** To the day after the van is home, where the business card says so. */
  CLOSE_DOWN,
  /** To the day, for each errand such as filling or emptying tanks. */
  ERRAND;

  /** {@return the word used in the table} */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
