package dev.dogleg.groom;

/**
 * Typing errors between two words: letters put in, left out, changed, or two neighbours swapped,
 * each counted once and no letter touched twice (optimal string alignment; F. J. Damerau, <i>A
 * technique for computer detection and correction of spelling errors</i>, Communications of the ACM
 * 7, 1964). The text library on the class path counts a swap as two errors, and a swap is the
 * commonest slip; hence these few lines.
 */
final class EditDistance {
  private EditDistance() {}

  static int between(String a, String b) {
    int[] beforeLast = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(change, 1 + Math.min(last[j], row[j - 1]));
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
        }
      }
      beforeLast = last;
      last = row;
    }
    return last[b.length()];
  }
}
