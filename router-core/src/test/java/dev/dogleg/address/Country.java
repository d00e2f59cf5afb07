package dev.dogleg.address;

/** How addresses are written in the five extracts; common practice of each country. */
enum Country {
  US("USA", true, "us-ny-queens-village-2016"),
  DE("Deutschland", false, "de-heidelberg-2024"),
  LI("Liechtenstein", false, "li-liechtenstein-2021"),
  AD("Andorra", false, "ad-andorra-2025"),
  MC("Monaco", true, "mc-monaco-2023");

  final String name;
  final boolean numberFirst;
  final String extract;

  Country(String name, boolean numberFirst, String extract) {
    this.name = name;
    this.numberFirst = numberFirst;
    this.extract = extract;
  }

  String plain(OwnAddresses.Own own) {
    return line(own.number(), own.street(), own.postcode(), own.city());
  }

  String line(String number, String street, String postcode, String city) {
    String door = numberFirst ? number + " " + street : street + " " + number;
    String town = this == US ? (city + " " + postcode).strip() : (postcode + " " + city).strip();
    return town.isEmpty() ? door : door + ", " + town;
  }
}
