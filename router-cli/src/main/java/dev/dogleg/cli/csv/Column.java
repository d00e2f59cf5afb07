package dev.dogleg.cli.csv;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Every column of a book's tables, named once. */
public enum Column {
  /** Client's name; joins the tables. */
  CLIENT,
  /** Client's own id. */
  CLIENT_ID,
  /** Phone number. */
  PHONE,
  /** How to tell. */
  TELL,
  /** Address of the door. */
  ADDRESS,
  /** Latitude and longitude pasted by hand. */
  PIN,
  /** Where the van parks. */
  PARKING,
  /** Getting in. */
  ENTRY,
  /** Extra stop minutes. */
  EXTRA_MINUTES,
  /** Notes about the client. */
  NOTES,
  /** Pet's name, or several in a booking. */
  PET,
  /** Several pets of a booking. */
  PETS,
  /** Pet's own id. */
  PET_ID,
  /** Dog or cat. */
  SPECIES,
  /** Breed, or words for it. */
  BREED,
  /** Weight or size word. */
  SIZE,
  /** Coat type. */
  COAT,
  /** Behaviour. */
  BEHAVIOUR,
  /** Tags. */
  TAGS,
  /** Service and add-ons. */
  SERVICE,
  /** Groom minutes. */
  MINUTES,
  /** Price. */
  PRICE,
  /** Interval between grooms. */
  EVERY_WEEKS,
  /** Born. */
  BORN,
  /** Last groomed. */
  LAST_GROOMED,
  /** Rabies proof. */
  RABIES_UNTIL,
  /** Booking's own id. */
  BOOKING,
  /** Date or span. */
  DATE,
  /** Limits by weekday and time. */
  WHEN,
  /** State of the coat. */
  COAT_STATE,
  /** Told time. */
  TOLD,
  /** Where the booking stands. */
  STATUS,
  /** Note about the booking or correction. */
  NOTE,
  /** Latitude. */
  LAT,
  /** Longitude. */
  LON;

  static final Set<Column> CLIENTS =
      EnumSet.of(
          CLIENT, CLIENT_ID, PHONE, TELL, ADDRESS, PIN, PARKING, ENTRY, EXTRA_MINUTES, NOTES);
  static final Set<Column> PETS_TABLE =
      EnumSet.of(
          PET,
          PET_ID,
          CLIENT,
          SPECIES,
          BREED,
          SIZE,
          COAT,
          BEHAVIOUR,
          TAGS,
          SERVICE,
          MINUTES,
          PRICE,
          EVERY_WEEKS,
          BORN,
          LAST_GROOMED,
          RABIES_UNTIL);
  static final Set<Column> BOOKINGS = bookings();
  static final Set<Column> PLACES = EnumSet.of(ADDRESS, LAT, LON, NOTE);

  private static Set<Column> bookings() {
    Set<Column> all =
        EnumSet.of(
            BOOKING,
            CLIENT,
            PET,
            PETS,
            DATE,
            WHEN,
            SERVICE,
            MINUTES,
            COAT_STATE,
            TOLD,
            STATUS,
            NOTE);
    all.addAll(CLIENTS);
    all.addAll(PETS_TABLE);
    return all;
  }

  /** {@return the name in a file's first line} */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The column of a folded header cell, among some. */
  static Optional<Column> of(String label, Set<Column> among) {
    return among.stream().filter(column -> column.label().equals(label)).findFirst();
  }

  static List<String> labels(Set<Column> columns) {
    return Arrays.stream(values()).filter(columns::contains).map(Column::label).toList();
  }
}
