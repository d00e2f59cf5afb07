package dev.dogleg.address;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Names and codes of countries. Source: ISO 3166 and CLDR as the Java runtime carries them. */
final class Countries {
  private static final List<String> LANGUAGES =
      List.of("en", "de", "fr", "es", "ca", "it", "pt", "nl");

  private static final Map<String, String> CODES = new HashMap<>();

  static {
    for (String code : Locale.getISOCountries()) {
      Locale country = new Locale.Builder().setRegion(code).build();
      String small = code.toLowerCase(Locale.ROOT);
      for (String language : LANGUAGES) {
        CODES.put(
            Letters.bare(
                country.getDisplayCountry(new Locale.Builder().setLanguage(language).build())),
            small);
      }
    }
    CODES.put("usa", "us");
    CODES.put("uk", "gb");
    for (String code : Locale.getISOCountries()) {
      CODES.put(code.toLowerCase(Locale.ROOT), code.toLowerCase(Locale.ROOT));
    }
  }

  private Countries() {}

  /** Two small letters for a bare name or code, empty where it is no country. */
  static String code(String bareName) {
    return CODES.getOrDefault(bareName, "");
  }
}
