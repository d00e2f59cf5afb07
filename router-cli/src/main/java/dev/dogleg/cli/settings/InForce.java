package dev.dogleg.cli.settings;

/**
 * One setting as it is in force.
 *
 * @param key key path in the card
 * @param value its value
 * @param source {@code business.yaml:12}, {@code default} or the flag that set it
 */
public record InForce(String key, String value, String source) {
  /** {@return {@code key: value (source)}} */
  @Override
  public String toString() {
    return key + ": " + value + "  (" + source + ")";
  }
}
