package dev.dogleg.model;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Whose pets are groomed.
 *
 * @param id unique in a book; letters, digits and {@code . _ @ + -}, starting with a letter or
 *     digit
 * @param name as the groomer writes it
 * @param phone E.164 ({@code +15550100}), or empty
 * @param tell how to tell
 * @param place the door
 * @param parking where the van parks, free text
 * @param entry getting in: gate code, key, bell; free text, shown only to the groomer
 * @param extraStopSeconds added to each stop here, 0..7,200
 * @param notes free text
 * @param tags tags of the client and of the place
 * @param language language of texts, a BCP 47 tag such as {@code de}; empty: that of the card
 * @param calendar whether the client wants calendar files of visits
 */
public record Client(
    String id,
    String name,
    Optional<String> phone,
    HowToTell tell,
    Place place,
    String parking,
    String entry,
    int extraStopSeconds,
    String notes,
    List<Tag> tags,
    Optional<String> language,
    boolean calendar) {
  private static final Pattern E_164 = Pattern.compile("\\+[1-9][0-9]{3,14}");

  /** Checks id and ranges. */
  public Client {
    tags = List.copyOf(tags);
    Ids.checked(id);
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(tell, "tell");
    Objects.requireNonNull(language, "language");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(parking, "parking");
    Objects.requireNonNull(entry, "entry");
    Objects.requireNonNull(notes, "notes");
    if (phone.isPresent() && !E_164.matcher(phone.get()).matches()) {
      throw new IllegalArgumentException("phone must be E.164");
    }
    if (extraStopSeconds < 0 || extraStopSeconds > 7_200) {
      throw new IllegalArgumentException(
          "extraStopSeconds must lie in 0..7200, was " + extraStopSeconds);
    }
  }

  /**
   * A client who says nothing of language and calendar.
   *
   * @param id see the record
   * @param name see the record
   * @param phone see the record
   * @param tell see the record
   * @param place see the record
   * @param parking see the record
   * @param entry see the record
   * @param extraStopSeconds see the record
   * @param notes see the record
   * @param tags see the record
   */
  public Client(
      String id,
      String name,
      Optional<String> phone,
      HowToTell tell,
      Place place,
      String parking,
      String entry,
      int extraStopSeconds,
      String notes,
      List<Tag> tags) {
    this(
        id,
        name,
        phone,
        tell,
        place,
        parking,
        entry,
        extraStopSeconds,
        notes,
        tags,
        Optional.empty(),
        false);
  }

  /**
   * A client without tags.
   *
   * @param id see the record
   * @param name see the record
   * @param phone see the record
   * @param tell see the record
   * @param place see the record
   * @param parking see the record
   * @param entry see the record
   * @param extraStopSeconds see the record
   * @param notes see the record
   */
  public Client(
      String id,
      String name,
      Optional<String> phone,
      HowToTell tell,
      Place place,
      String parking,
      String entry,
      int extraStopSeconds,
      String notes) {
    this(id, name, phone, tell, place, parking, entry, extraStopSeconds, notes, List.of());
  }

  /**
   * The same client under another id.
   *
   * @param otherId the id
   * @return the client
   */
  public Client as(String otherId) {
    return new Client(
        otherId,
        name,
        phone,
        tell,
        place,
        parking,
        entry,
        extraStopSeconds,
        notes,
        tags,
        language,
        calendar);
  }
}
