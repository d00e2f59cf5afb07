package dev.dogleg.cli.words;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.text.Normalizer;
import java.util.HexFormat;
import java.util.Locale;
import java.util.regex.Pattern;

/** Makes names comparable, and ids out of them. */
public final class Slug {
  private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0]+");
  private static final Pattern NO_LETTERS = Pattern.compile("[^\\p{L}\\p{M}\\p{N}]+");
  private static final Pattern HYPHEN_ENDS = Pattern.compile("^-+|-+$");
  private static final int LONGEST = 30;

  private Slug() {}

  /**
   * A name as names are compared: case and spaces do not matter, accents do.
   *
   * @param name as written
   * @return folded text
   */
  public static String fold(String name) {
    String composed = Normalizer.normalize(name, Normalizer.Form.NFC);
    return SPACES.matcher(composed.strip()).replaceAll(" ").toLowerCase(Locale.ROOT);
  }

  /**
   * An id out of a name: its letters and digits, other signs one hyphen; at most 30 characters. A
   * name without letters or digits becomes {@code x} and its {@link #mark}.
   *
   * @param name as written
   * @return lower-case id that starts with a letter or digit
   */
  public static String of(String name) {
    String words =
        HYPHEN_ENDS.matcher(NO_LETTERS.matcher(fold(name)).replaceAll("-")).replaceAll("");
    if (words.isEmpty() || Character.getType(words.codePointAt(0)) == Character.NON_SPACING_MARK) {
      return "x" + mark(name);
    }
    if (words.length() <= LONGEST) {
      return words;
    }
    int cut = Character.isHighSurrogate(words.charAt(LONGEST - 8)) ? LONGEST - 9 : LONGEST - 7;
    return words.substring(0, cut).replaceAll("-+$", "") + "-" + mark(name);
  }

  /**
   * A short mark that depends on the name alone and tells apart names whose ids are alike.
   *
   * @param name as written
   * @return six hexadecimal digits of the SHA-256 of the folded name
   */
  public static String mark(String name) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(fold(name).getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest, 0, 3);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
