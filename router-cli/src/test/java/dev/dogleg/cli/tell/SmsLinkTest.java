package dev.dogleg.cli.tell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import org.junit.jupiter.api.Test;

/** Links after RFC 5724 and RFC 3966, read back by the platform's URI parser. */
class SmsLinkTest {
  @Test
  void theExampleOfTheStandardIsWritten() {
    // RFC 5724, section 2.5 (from memory): sms:+15105550101?body=hello%20there
    assertEquals(
        "sms:+15105550101?body=hello%20there", SmsLink.text("+15105550101", "hello there"));
  }

  @Test
  void whateverAMessageHoldsComesBack() {
    String message = "Ä & \"q\" <b>'x'</b> 100% #1 ?a=b&c=d;+,/ 😀\\";
    String link = SmsLink.text("+12065550101", message);
    assertTrue(link.matches("sms:\\+12065550101\\?body=[A-Za-z0-9._~%-]*"), link);
    URI uri = URI.create(link);
    assertEquals("sms", uri.getScheme());
    assertEquals("+12065550101?body=" + message, uri.getSchemeSpecificPart());
  }

  @Test
  void onlyPhonesGetIn() {
    assertThrows(IllegalArgumentException.class, () -> SmsLink.text("+1206?body=x", "y"));
    assertThrows(IllegalArgumentException.class, () -> SmsLink.call("javascript:1"));
    assertEquals("tel:+12065550103", SmsLink.call("+12065550103"));
  }
}
