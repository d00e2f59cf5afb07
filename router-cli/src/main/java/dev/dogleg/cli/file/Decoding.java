package dev.dogleg.cli.file;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Recognises the encoding of a text: UTF-8 with or without a byte order mark, else Windows-1252.
 *
 * <p>A text that is neither is refused. One that holds more correct UTF-8 letters than broken ones
 * is damaged UTF-8: read as Windows-1252 every good letter of it would turn into two.
 */
final class Decoding {
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
  private static final String HINT = "save it as \"CSV UTF-8\"";

  private Decoding() {}

  static Optional<String> text(byte[] bytes, String name, Faults faults) {
    if (starts(bytes, 0xFF, 0xFE) || starts(bytes, 0xFE, 0xFF)) {
      return refuse(faults, name, 0, "is UTF-16; UTF-8 was expected");
    }
    if (starts(bytes, 'P', 'K', 3, 4) || starts(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
      return refuse(faults, name, 0, "is a spreadsheet or an archive, not plain text");
    }
    int start = starts(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
    for (int i = start; i < bytes.length; i++) {
      int b = bytes[i] & 0xFF;
      if (b < 0x20 && b != '\t' && b != '\n' && b != '\r' && b != '\f') {
        return refuse(
            faults,
            name,
            line(bytes, i),
            b == 0 ? "is UTF-16 or no text at all: it holds zero bytes" : "is no plain text");
      }
    }
    String text;
    int broken = firstBroken(bytes, start);
    if (broken < 0) {
      text = new String(bytes, start, bytes.length - start, StandardCharsets.UTF_8);
    } else if (start > 0 || mostlyUtf8(bytes)) {
      return refuse(faults, name, line(bytes, broken), "is UTF-8 with a broken letter in this row");
    } else {
      text = windows1252(bytes);
      if (text == null) {
        return refuse(faults, name, line(bytes, broken), "is neither UTF-8 nor Windows-1252");
      }
      faults.add(
          new Fault(
              "windows-1252",
              Severity.NOTE,
              Where.row(name, line(bytes, broken)),
              "",
              "is not UTF-8 and was read as Windows-1252",
              "look whether letters with accents are right, or " + HINT));
    }
    if (text.isBlank()) {
      faults.add(
          new Fault(
              "empty-file", Severity.STOP, Where.file(name), "", "is empty", "was it saved?"));
      return Optional.empty();
    }
    return Optional.of(text);
  }

  private static boolean starts(byte[] bytes, int... first) {
    if (bytes.length < first.length) {
      return false;
    }
    for (int i = 0; i < first.length; i++) {
      if ((bytes[i] & 0xFF) != first[i]) {
        return false;
      }
    }
    return true;
  }

  /** Position of the first byte that is not UTF-8, or -1. */
  private static int firstBroken(byte[] bytes, int start) {
    CharsetDecoder decoder = strict(StandardCharsets.UTF_8);
    ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
    CharBuffer out = CharBuffer.allocate(8_192);
    while (true) {
      CoderResult result = decoder.decode(in, out, true);
      if (result.isOverflow()) {
        out.clear();
      } else {
        return result.isError() ? in.position() : -1;
      }
    }
  }

  /**
   * Whether more letters beyond ASCII are correct UTF-8 than not. (A capital with an accent before
   * a curly quote looks like one in Windows-1252: one such pair decides nothing.)
   */
  private static boolean mostlyUtf8(byte[] bytes) {
    int whole = 0;
    int broken = 0;
    for (int i = 0; i < bytes.length; i++) {
      int lead = bytes[i] & 0xFF;
      if (lead < 0x80) {
        continue;
      }
      int more = lead >= 0xC2 && lead < 0xE0 ? 1 : lead >= 0xE0 && lead < 0xF0 ? 2 : 0;
      int seen = 0;
      while (seen < more && i + seen + 1 < bytes.length && (bytes[i + seen + 1] & 0xC0) == 0x80) {
        seen++;
      }
      if (more > 0 && seen == more) {
        whole++;
        i += more;
      } else {
        broken++;
      }
    }
    return whole > broken;
  }

  private static String windows1252(byte[] bytes) {
    try {
      return strict(WINDOWS_1252).decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      return null;
    }
  }

  private static CharsetDecoder strict(Charset charset) {
    return charset
        .newDecoder()
        .onMalformedInput(CodingErrorAction.REPORT)
        .onUnmappableCharacter(CodingErrorAction.REPORT);
  }

  private static int line(byte[] bytes, int position) {
    int line = 1;
    for (int i = 0; i < position; i++) {
      if (bytes[i] == '\n' || (bytes[i] == '\r' && bytes[i + 1] != '\n')) {
        line++;
      }
    }
    return line;
  }

  private static Optional<String> refuse(Faults faults, String name, int row, String expected) {
    faults.add(
        new Fault("wrong-encoding", Severity.STOP, new Where(name, row, ""), "", expected, HINT));
    return Optional.empty();
  }
}
