package dev.dogleg.cli.tell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Alphabet and segments after 3GPP TS 23.038 and TS 23.040. */
class TextSizeTest {

  /** Septets by code point, from the table beside this test, which names its source. */
  private static Map<Integer, Integer> published() throws Exception {
    try (InputStream stream =
        TextSizeTest.class.getResourceAsStream("/tell/gsm-7-bit-default-alphabet.txt")) {
      Map<Integer, Integer> septets = new HashMap<>();
      for (String line :
          new String(stream.readAllBytes(), StandardCharsets.US_ASCII).lines().toList()) {
        if (!line.startsWith("#")) {
          String[] parts = line.split(" ");
          septets.put(Integer.parseInt(parts[1], 16), parts[0].length() / 2);
        }
      }
      return septets;
    }
  }

  @Test
  void theAlphabetIsThePublishedOne() throws Exception {
    Map<Integer, Integer> published = published();
    assertEquals(137, published.size(), "127 characters and 10 of the extension");
    for (int sign = 0; sign <= Character.MAX_CODE_POINT; sign++) {
      assertEquals(published.getOrDefault(sign, 0), Gsm7.septets(sign), "U+%04X".formatted(sign));
    }
  }

  @Test
  void lengthsAreThoseOfTheStandard() {
    // 140 octets: 160 septets or 70 units; joined 153 and 67 (TS 23.040 clause 9.2.3.24.1).
    assertEquals(new TextSize(false, 0, 0), TextSize.of(""));
    assertEquals(new TextSize(false, 160, 1), TextSize.of("a".repeat(160)));
    assertEquals(new TextSize(false, 161, 2), TextSize.of("a".repeat(161)));
    assertEquals(new TextSize(false, 306, 2), TextSize.of("a".repeat(306)));
    assertEquals(new TextSize(false, 307, 3), TextSize.of("a".repeat(307)));
    assertEquals(new TextSize(true, 70, 1), TextSize.of("я".repeat(70)));
    assertEquals(new TextSize(true, 71, 2), TextSize.of("я".repeat(71)));
    assertEquals(new TextSize(true, 134, 2), TextSize.of("я".repeat(134)));
    assertEquals(new TextSize(true, 135, 3), TextSize.of("я".repeat(135)));
  }

  @Test
  void anExtensionCharacterTakesTwoSeptetsThatStayTogether() {
    assertEquals(new TextSize(false, 160, 1), TextSize.of("€".repeat(80)));
    assertEquals(new TextSize(false, 162, 2), TextSize.of("€".repeat(81)));
    // 76 euros are 152 septets; the next does not go into the one septet left of 153.
    assertEquals(new TextSize(false, 304, 2), TextSize.of("€".repeat(152)));
    assertEquals(new TextSize(false, 306, 3), TextSize.of("€".repeat(153)));
    assertEquals(new TextSize(false, 306, 2), TextSize.of("a" + "€".repeat(152) + "a"));
  }

  @Test
  void aSurrogatePairStaysTogether() {
    // 33 pairs are 66 of 67 units; the next pair begins a new segment.
    assertEquals(new TextSize(true, 70, 1), TextSize.of("😀".repeat(35)));
    assertEquals(new TextSize(true, 132, 2), TextSize.of("😀".repeat(66)));
    assertEquals(new TextSize(true, 134, 3), TextSize.of("😀".repeat(67)));
  }

  @Test
  void oneLetterOutsideTheAlphabetMakesTheWholeTextUcs2() {
    assertFalse(TextSize.of("Señora Müller à Åbo").ucs2());
    assertTrue(TextSize.of("Núñez").ucs2());
    assertTrue(TextSize.of("garçon").ucs2(), "the alphabet has the capital c with cedilla alone");
  }

  @Test
  void noMarkDoublesTheCost() {
    String typographic = "“Fern’s” groom — 9–10 … see you\u00a0then «soon» ‹now› 2 × 3";
    assertTrue(TextSize.of(typographic).ucs2());
    String plain = PlainMarks.of(typographic);
    assertEquals("\"Fern's\" groom - 9-10 ... see you then \"soon\" 'now' 2 x 3", plain);
    assertFalse(TextSize.of(plain).ucs2());
  }

  @Test
  void namesKeepTheirLetters() {
    assertEquals("José Núñez, Çağ, Žofia", PlainMarks.of("José Núñez, Çağ, Žofia"));
    assertEquals("é", PlainMarks.of("e\u0301"), "composed, nothing lost");
    assertEquals("office", PlainMarks.of("oﬃce"));
    assertEquals("a b c", PlainMarks.of(" a\r\n\tb \u0007 c "));
  }

  /** Packs by brute force: the fewest parts into which a text can be cut. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void segmentsAreTheFewestPossible(long seed) {
    Random random = new Random(seed);
    List<String> some = List.of("a", "€", "{", "Z", "я", "😀");
    for (int n = 0; n < 300; n++) {
      StringBuilder text = new StringBuilder();
      int kinds = random.nextBoolean() ? 4 : 6;
      int length = random.nextInt(330);
      for (int i = 0; i < length; i++) {
        text.append(some.get(random.nextInt(kinds)));
      }
      TextSize size = TextSize.of(text.toString());
      int alone = size.ucs2() ? 70 : 160;
      int joined = size.ucs2() ? 67 : 153;
      int[] widths =
          text.codePoints()
              .map(
                  sign ->
                      size.ucs2() ? Character.charCount(sign) : sign == 'a' || sign == 'Z' ? 1 : 2)
              .toArray();
      int total = java.util.Arrays.stream(widths).sum();
      int fewest = total == 0 ? 0 : total <= alone ? 1 : fewest(widths, joined);
      assertEquals(fewest, size.segments(), "seed " + seed + ", text " + text);
      assertEquals(total, size.units(), "seed " + seed);
    }
  }

  /** Fewest parts over all cuts, by the textbook recursion over where the last part begins. */
  private static int fewest(int[] widths, int room) {
    int[] best = new int[widths.length + 1];
    for (int end = 1; end <= widths.length; end++) {
      best[end] = Integer.MAX_VALUE;
      int sum = 0;
      for (int begin = end - 1; begin >= 0; begin--) {
        sum += widths[begin];
        if (sum > room) {
          break;
        }
        best[end] = Math.min(best[end], best[begin] + 1);
      }
    }
    return best[widths.length];
  }
}
