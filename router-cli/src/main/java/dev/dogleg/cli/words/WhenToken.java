package dev.dogleg.cli.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Cuts a {@code when} cell into times, words and marks. */
final class WhenToken {
  private static final Pattern TOKEN =
      Pattern.compile(
          "(?<time>\\d{1,4}(?:[:.h]\\d{2}(?::\\d{2})?|h)?(?:\\s*[ap]\\.?\\s?m\\b\\.?)?)(?![\\p{L}\\d])"
              + "|(?<word>\\p{L}+)|(?<mark>[-;,/&+~])|(?<space>[\\s\\u00a0:()]+)");
  private static final Pattern DASH = Pattern.compile("[\\u2010-\\u2015\\u2212]");
  private static final Pattern SPACE = Pattern.compile("\\s");
  private static final Pattern STOP_OF_HALF = Pattern.compile("(?<=[apm])\\.");

  private WhenToken() {}

  /** The tokens in lower case, or empty where a character belongs to none. */
  static Optional<List<String>> cut(String cell) {
    String text = DASH.matcher(cell.toLowerCase(Locale.ROOT)).replaceAll("-").replace('\n', ';');
    text = text.replace("o'clock", "").replace("a.m", "am").replace("p.m", "pm");
    List<String> tokens = new ArrayList<>();
    Matcher matcher = TOKEN.matcher(text);
    int at = 0;
    while (at < text.length()) {
      if (!matcher.find(at) || matcher.start() != at) {
        return Optional.empty();
      }
      if (matcher.group("time") != null) {
        String time = SPACE.matcher(matcher.group("time")).replaceAll("");
        tokens.add(STOP_OF_HALF.matcher(time).replaceAll(""));
      } else if (matcher.group("space") == null) {
        tokens.add(matcher.group());
      }
      at = matcher.end();
    }
    return Optional.of(tokens);
  }
}
