package dev.dogleg.address;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;

/** Plain spelling: small letters without marks. */
final class Letters {
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");

  private Letters() {}

  /** Small letters, compatibility forms resolved, marks taken off; other scripts stay. */
  static String plain(String text) {
    if (isAscii(text)) {
      return text.toLowerCase(Locale.ROOT);
    }
    String lower =
        Normalizer.normalize(text, Normalizer.Form.NFKC)
            .toLowerCase(Locale.ROOT)
            .replace('\u2044', '/');
    char[] in = Normalizer.normalize(lower, Normalizer.Form.NFC).toCharArray();
    char[] out = new char[in.length * 4];
    int length = ASCIIFoldingFilter.foldToASCII(in, 0, out, 0, in.length);
    String folded = Normalizer.normalize(new String(out, 0, length), Normalizer.Form.NFD);
    return MARKS.matcher(folded).replaceAll("");
  }

  private static boolean isAscii(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= 0x80) {
        return false;
      }
    }
    return true;
  }

  /** Plain spelling with letters and digits only, for comparing names of places. */
  static String bare(String text) {
    String plain = plain(text);
    StringBuilder kept = new StringBuilder(plain.length());
    for (int i = 0; i < plain.length(); i++) {
      if (Character.isLetterOrDigit(plain.charAt(i))) {
        kept.append(plain.charAt(i));
      }
    }
    return kept.toString();
  }

  /** The digits of a key in order; two streets whose digits differ are never one. */
  static String digits(String key) {
    StringBuilder kept = new StringBuilder();
    for (int i = 0; i < key.length(); i++) {
      char c = key.charAt(i);
      if (c >= '0' && c <= '9') {
        kept.append(c);
      } else if (kept.length() > 0 && kept.charAt(kept.length() - 1) != '.') {
        kept.append('.');
      }
    }
    return kept.toString();
  }

  /**
   * Letters that differ, a swap of two neighbours counting one (optimal string alignment; Damerau
   * 1964); more than {@code most} is said as {@code most + 1}.
   */
  static int typingErrors(String a, String b, int most) {
    if (Math.abs(a.length() - b.length()) > most) {
      return most + 1;
    }
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      cost[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      cost[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(cost[i - 1][j], cost[i][j - 1]) + 1;
        least = Math.min(least, cost[i - 1][j - 1] + change);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          least = Math.min(least, cost[i - 2][j - 2] + 1);
        }
        cost[i][j] = least;
      }
    }
    return Math.min(cost[a.length()][b.length()], most + 1);
  }
}
