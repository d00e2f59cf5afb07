package dev.dogleg.cli.tell;

import java.nio.charset.StandardCharsets;

/**
 * Links that open a text, ready to be sent, or a call: {@code sms:+12065550103?body=...} (RFC 5724)
 * and {@code tel:+12065550103} (RFC 3966).
 */
public final class SmsLink {
  /** RFC 3986 unreserved characters; everything else of a body is percent-encoded. */
  private static final String UNRESERVED = "-._~";

  private SmsLink() {}

  /**
   * A link to one text.
   *
   * @param phone E.164
   * @param message what it says
   * @return the link; its body is UTF-8, percent-encoded
   * @throws IllegalArgumentException where the phone is not E.164
   */
  public static String text(String phone, String message) {
    StringBuilder link = new StringBuilder("sms:").append(checked(phone)).append("?body=");
    for (byte octet : message.getBytes(StandardCharsets.UTF_8)) {
      char sign = (char) (octet & 0xFF);
      boolean plain =
          (sign >= 'a' && sign <= 'z')
              || (sign >= 'A' && sign <= 'Z')
              || (sign >= '0' && sign <= '9')
              || UNRESERVED.indexOf(sign) >= 0;
      if (plain) {
        link.append(sign);
      } else {
        link.append('%').append("%02X".formatted((int) sign));
      }
    }
    return link.toString();
  }

  /**
   * A link to a call.
   *
   * @param phone E.164
   * @return the link
   * @throws IllegalArgumentException where the phone is not E.164
   */
  public static String call(String phone) {
    return "tel:" + checked(phone);
  }

  private static String checked(String phone) {
    if (!phone.matches("\\+[1-9][0-9]{3,14}")) {
      throw new IllegalArgumentException("phone must be E.164");
    }
    return phone;
  }
}
