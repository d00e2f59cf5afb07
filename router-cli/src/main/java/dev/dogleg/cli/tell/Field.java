package dev.dogleg.cli.tell;

import java.util.Locale;

/**
 * What may stand in a message. There is no field for a gate code, a price, a phone, an address or
 * another client, so no template can give one away.
 */
enum Field {
  CLIENT,
  FIRST,
  PETS,
  DATE,
  FROM,
  TO,
  BUSINESS,
  GROOMER,
  OLD_DATE;

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
