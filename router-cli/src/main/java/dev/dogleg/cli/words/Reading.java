package dev.dogleg.cli.words;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What one cell was read as.
 *
 * @param <T> kind of value
 * @param value the value, or empty where the cell could not be read
 * @param remarks what is to be said; at least one where the value is empty
 */
public record Reading<T>(Optional<T> value, List<Remark> remarks) {

  /** Checks that an unread cell says why. */
  public Reading {
    Objects.requireNonNull(value, "value");
    remarks = List.copyOf(remarks);
    if (value.isEmpty() && remarks.isEmpty()) {
      throw new IllegalArgumentException("an unread cell must say why");
    }
  }

  /**
   * A value without remarks.
   *
   * @param <T> kind of value
   * @param value the value
   * @return the reading
   */
  public static <T> Reading<T> of(T value) {
    return new Reading<>(Optional.of(value), List.of());
  }

  /**
   * A value with one remark.
   *
   * @param <T> kind of value
   * @param value the value
   * @param remark the remark
   * @return the reading
   */
  public static <T> Reading<T> of(T value, Remark remark) {
    return new Reading<>(Optional.of(value), List.of(remark));
  }

  /**
   * No value, and why.
   *
   * @param <T> kind of value
   * @param remark why
   * @return the reading
   */
  public static <T> Reading<T> none(Remark remark) {
    return new Reading<>(Optional.empty(), List.of(remark));
  }
}
