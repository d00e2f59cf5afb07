package dev.dogleg.model;

import java.util.regex.Pattern;

/** The form of an id: what may stand in a list joined by {@code ;} and in any file name. */
final class Ids {
  private static final Pattern FORM =
      Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N}._@+-]{0,119}");

  private Ids() {}

  static String checked(String id) {
    if (!FORM.matcher(id).matches()) {
      throw new IllegalArgumentException("not an id: " + id);
    }
    return id;
  }
}
