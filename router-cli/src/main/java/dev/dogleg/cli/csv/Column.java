package dev.dogleg.cli.csv;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
  /** Language of texts. */
  LANGUAGE,
  /** Whether the client wants calendar files. */
  CALENDAR,
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
  LON,
  /** Water of a pet's bath. */
  LITRES,
  /** Whether a booking may be moved. */
  MOVES,
  /** Worth of a waiting-list booking. */
  VALUE,
  /** Preferred days and hours. */
  LIKES,
  /** Groomer of a booking, day, errand or zone. */
  GROOMER,
  /** Van that a booking needs. */
  VAN,
  /** What of the earlier plan stays. */
  LOCK,
  /** Shift of a day. */
  HOURS,
  /** Where a day starts. */
  START,
  /** Where a day ends. */
  END,
  /** Who comes along. */
  HELPER,
  /** Whether a day is not worked. */
  OFF,
  /** Name of a rule. */
  RULE,
  /** What a rule says. */
  SHAPE,
  /** Whom a rule concerns. */
  A,
  /** Other side of a rule. */
  B,
  /** Days on which a rule holds. */
  ON,
  /** At most so many. */
  NUMBER,
  /** Places in the day. */
  AT_PLACE,
  /** Must or rather. */
  STRENGTH,
  /** Last day of a rule. */
  UNTIL,
  /** Line on the day of a stop. */
  LINE,
  /** Where a rule comes from. */
  PROVENANCE,
  /** Name of an errand. */
  ERRAND,
  /** Name of a zone. */
  ZONE,
  /** Days of a zone. */
  DAYS,
  /** Postcodes of a zone. */
  POSTCODES,
  /** Districts of the map that a zone is made of. */
  DISTRICTS,
  /** From where minutes are counted. */
  FROM,
  /** When the van was at the door. */
  ARRIVED,
  /** When the first groom began. */
  STARTED,
  /** When the last groom ended. */
  DONE,
  /** When the van left. */
  LEFT,
  /** How a visit ended. */
  OUTCOME,
  /** Minutes that the plan had for the drive to the visit. */
  PLANNED_DRIVE_MINUTES,
  /** Minutes that the drive took. */
  DRIVE_MINUTES,
  /** Traffic band of the drive. */
  BAND,
  /** Planned minutes on motorways. */
  MOTORWAY_MINUTES,
  /** Planned minutes on main roads. */
  MAIN_MINUTES,
  /** Planned minutes on streets. */
  STREET_MINUTES,
  /** Planned minutes on service roads. */
  SERVICE_MINUTES,
  /** What a learned row speaks of. */
  KIND,
  /** Whose a learned row is. */
  WHAT,
  /** Learned factor. */
  FACTOR,
  /** Learned spread. */
  SPREAD,
  /** From how many visits. */
  VISITS,
  /** Date of the last of them. */
  LAST,
  /** Whether a learned row stays as it is. */
  KEEP;

  static final Set<Column> CLIENTS =
      EnumSet.of(
          CLIENT,
          CLIENT_ID,
          PHONE,
          TELL,
          ADDRESS,
          PIN,
          PARKING,
          ENTRY,
          EXTRA_MINUTES,
          NOTES,
          LANGUAGE,
          CALENDAR,
          TAGS);
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
          RABIES_UNTIL,
          LITRES);
  static final Set<Column> BOOKINGS = bookings();
  static final Set<Column> PLACES = EnumSet.of(ADDRESS, LAT, LON, NOTE, TAGS);
  static final Set<Column> DAY_TABLE =
      EnumSet.of(DATE, GROOMER, HOURS, START, END, HELPER, OFF, TAGS, NOTE);
  static final Set<Column> RULES =
      EnumSet.of(
          RULE,
          SHAPE,
          A,
          B,
          ON,
          WHEN,
          NUMBER,
          MINUTES,
          AT_PLACE,
          STRENGTH,
          UNTIL,
          LINE,
          PROVENANCE);
  static final Set<Column> ERRANDS =
      EnumSet.of(ERRAND, DATE, WHEN, MINUTES, ADDRESS, GROOMER, NOTE);
  static final Set<Column> ZONES =
      EnumSet.of(ZONE, DAYS, POSTCODES, DISTRICTS, FROM, MINUTES, GROOMER, STRENGTH, NOTE);

  static final Set<Column> VISIT_LOG =
      EnumSet.of(
          DATE,
          GROOMER,
          CLIENT,
          CLIENT_ID,
          PET,
          PETS,
          BOOKING,
          SERVICE,
          COAT_STATE,
          ARRIVED,
          STARTED,
          DONE,
          LEFT,
          OUTCOME,
          PLANNED_DRIVE_MINUTES,
          DRIVE_MINUTES,
          BAND,
          MOTORWAY_MINUTES,
          MAIN_MINUTES,
          STREET_MINUTES,
          SERVICE_MINUTES,
          NOTE);
  static final Set<Column> LEARNED_TABLE =
      EnumSet.of(KIND, WHAT, FACTOR, SPREAD, VISITS, LAST, KEEP, NOTE);

  /**
   * Columns without which no row of a table can be read, each behind the column by which the table
   * is known; the first that the table has decides.
   */
  private static final List<Map.Entry<Column, Column>> NEEDED =
      List.of(
          Map.entry(OUTCOME, DATE),
          Map.entry(KIND, KIND),
          Map.entry(CLIENT, CLIENT),
          Map.entry(HELPER, DATE),
          Map.entry(RULE, RULE),
          Map.entry(ERRAND, ERRAND),
          Map.entry(ZONE, ZONE));

  /** The column without which no row of a table can be read, or empty. */
  static Optional<Column> needed(Set<Column> table) {
    return NEEDED.stream()
        .filter(entry -> table.contains(entry.getKey()))
        .map(Map.Entry::getValue)
        .findFirst();
  }

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
            NOTE,
            MOVES,
            VALUE,
            LIKES,
            GROOMER,
            VAN,
            LOCK);
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
