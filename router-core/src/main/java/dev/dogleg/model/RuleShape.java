package dev.dogleg.model;

import java.util.Locale;

/** The closed list of what a rule by tag can say; ten shapes, some of them with several words. */
public enum RuleShape {
  /** Clock: the van arrives within hours. */
  ARRIVE,
  /** Clock: the groom is done by a time. */
  DONE_BY,
  /** Clock: the van stands there only within hours. */
  VAN,
  /** Place in the day: first. */
  FIRST,
  /** Place in the day: last. */
  LAST,
  /** Place in the day: not first. */
  NOT_FIRST,
  /** Place in the day: not last. */
  NOT_LAST,
  /** All A before any B. */
  BEFORE,
  /** A not right after B. */
  NOT_AFTER,
  /** At most N pets, or N load points, a day. */
  AT_MOST,
  /** Minutes between A and a B directly after it. */
  CHANGEOVER,
  /** Only on days that match. */
  ONLY_ON,
  /** Never on days that match. */
  NEVER_ON,
  /** Only with a person, van or helper that matches. */
  ONLY_WITH,
  /** Minutes plus or times, by place in the day too. */
  MINUTES,
  /** All on one van-day, or none. */
  TOGETHER,
  /** Never two on one van-day. */
  NOT_TOGETHER;

  /** {@return the words that stand in a rules file} */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** {@return whether it is settled in minutes and so can only be a must} */
  public boolean mustOnly() {
    return this == CHANGEOVER || this == MINUTES;
  }

  /** {@return whether it speaks of two sides} */
  public boolean twoSided() {
    return switch (this) {
      case BEFORE, NOT_AFTER, CHANGEOVER, ONLY_ON, NEVER_ON, ONLY_WITH -> true;
      default -> false;
    };
  }
}
