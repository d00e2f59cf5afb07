package dev.dogleg.address;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.lucene.document.BinaryDocValuesField;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.NumericDocValuesField;
import org.apache.lucene.document.SortedDocValuesField;
import org.apache.lucene.document.SortedSetDocValuesField;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.util.BytesRef;
import org.locationtech.jts.io.WKBWriter;

/** Turns map objects into documents of the search index. */
final class DocumentMaker {
  /** Tags by which a house names its district. */
  private static final List<String> DISTRICT_TAGS =
      List.of("addr:suburb", "addr:district", "addr:quarter", "addr:neighbourhood");

  /** Tags by which a house names its settlement. */
  private static final List<String> TOWN_TAGS = List.of("addr:city", "addr:hamlet", "addr:place");

  private final StreetKeys keys;
  private final Areas areas;
  private final AreaVotes postcodes;
  private final AreaVotes towns;
  private final OtherNames otherNames;
  private Set<String> lastNames = Set.of();
  private NameKeys lastKeys;

  DocumentMaker(
      StreetKeys keys, Areas areas, AreaVotes postcodes, AreaVotes towns, OtherNames otherNames) {
    this.keys = keys;
    this.areas = areas;
    this.postcodes = postcodes;
    this.towns = towns;
    this.otherNames = otherNames;
    this.lastKeys = new NameKeys(keys, lastNames);
  }

  /** Streets (or places in their stead) that a house names; empty where none. */
  static List<String> streetsOf(MapObject house) {
    for (String key : List.of("addr:street", "addr:place", "addr:hamlet", "addr:city")) {
      String value = house.tag(key);
      if (!value.isEmpty()) {
        return java.util.Arrays.stream(value.split(";"))
            .map(String::strip)
            .filter(name -> !name.isEmpty())
            .toList();
      }
    }
    return List.of();
  }

  /** A house, under the streets given. */
  Document house(MapObject house, List<String> streets, boolean lineNode) {
    long at = Rings.middle(house.places());
    Document document = new Document();
    document.add(new StringField(Fields.KIND, Fields.HOUSE, Field.Store.NO));
    String number = house.tag("addr:housenumber");
    for (String key : HouseNumber.keysOf(number)) {
      document.add(new StringField(Fields.NUMBER, key, Field.Store.NO));
    }
    for (String key : HouseNumber.membersOf(number)) {
      document.add(new StringField(Fields.MEMBER, key, Field.Store.NO));
    }
    if (lineNode) {
      document.add(new StringField(Fields.NODE, Long.toString(house.id()), Field.Store.NO));
    }
    addStreets(document, streets, at);
    document.add(shown(Fields.SHOWN_NUMBER, number));
    addAround(document, house, at);
    addSaid(document, house, Fields.SAID_DISTRICT, DISTRICT_TAGS);
    addSaid(document, house, Fields.SAID_TOWN, TOWN_TAGS);
    document.add(new NumericDocValuesField(Fields.RADIUS, Rings.radiusMetres(house.places())));
    return document;
  }

  /** A street or a square. */
  Document street(MapObject street) {
    Document document = new Document();
    document.add(new StringField(Fields.KIND, Fields.STREET, Field.Store.NO));
    long at = middleOfWay(street.places());
    Set<String> names = new LinkedHashSet<>(List.of(street.tag("name")));
    names.addAll(AddressTags.names(street.tags()));
    addNames(document, names);
    document.add(shown(Fields.SHOWN_STREET, street.tag("name")));
    addAround(document, street, at);
    document.add(new BinaryDocValuesField(Fields.SHAPE, Shape.of(street.places()).bytes()));
    return document;
  }

  /** An interpolation way with the numbers known along it. */
  Document line(MapObject line, List<String> streets, Shape shape) {
    Document document = new Document();
    document.add(new StringField(Fields.KIND, Fields.LINE, Field.Store.NO));
    long at = middleOfWay(line.places());
    addStreets(document, streets, at);
    addAround(document, line, at);
    document.add(new BinaryDocValuesField(Fields.SHAPE, shape.bytes()));
    return document;
  }

  /** A name whose area the extract cuts. */
  Document wide(String name) {
    Document document = new Document();
    document.add(new StringField(Fields.KIND, Fields.WIDE, Field.Store.NO));
    document.add(new StringField(Fields.WIDE_NAME, cut(Letters.bare(name)), Field.Store.NO));
    return document;
  }

  /** An area whose limits are known. */
  Document limited(Areas.Named area) {
    Document document = named(Fields.LIMITED, area.names());
    document.add(new StoredField(Fields.OUTLINE, new WKBWriter().write(area.shape())));
    return document;
  }

  /** A place that the map knows as a point. */
  Document point(String name) {
    return named(Fields.POINT, List.of(name));
  }

  private static Document named(String kind, List<String> names) {
    Document document = new Document();
    document.add(new StringField(Fields.KIND, kind, Field.Store.NO));
    names.forEach(
        name ->
            document.add(new StringField(Fields.NAMED, cut(Letters.bare(name)), Field.Store.NO)));
    document.add(new StoredField(Fields.SHOWN_NAME, names.get(0)));
    return document;
  }

  /** What the house itself says of where it is. */
  private static void addSaid(Document document, MapObject house, String field, List<String> tags) {
    Set<String> said = new LinkedHashSet<>();
    tags.forEach(tag -> said.add(house.tag(tag)));
    for (String name : said) {
      String key = cut(Letters.bare(name));
      if (!key.isEmpty()) {
        document.add(new StringField(field, key, Field.Store.NO));
        document.add(new SortedSetDocValuesField(field, new BytesRef(cut(name))));
      }
    }
  }

  private void addStreets(Document document, List<String> streets, long at) {
    Set<String> names = new LinkedHashSet<>(streets);
    streets.forEach(street -> names.addAll(otherNames.of(street, at)));
    addNames(document, names);
    document.add(shown(Fields.SHOWN_STREET, streets.isEmpty() ? "" : streets.get(0)));
  }

  private void addNames(Document document, Set<String> names) {
    if (!names.equals(lastNames)) {
      // Houses of one street mostly follow each other in the file.
      lastNames = Set.copyOf(names);
      lastKeys = new NameKeys(keys, names);
    }
    addTerms(document, Fields.STRICT, lastKeys.strict());
    addTerms(document, Fields.LOOSE, lastKeys.loose());
    addTerms(document, Fields.CORE, lastKeys.core());
    addTerms(document, Fields.SPELLED, lastKeys.spelled());
  }

  private static void addTerms(Document document, String field, Set<String> terms) {
    for (String term : terms) {
      document.add(new StringField(field, cut(term), Field.Store.NO));
    }
  }

  private void addAround(Document document, MapObject object, long at) {
    Areas.Around around = areas.at(at);
    String tagged = object.tag("addr:postcode");
    List<String> voted = postcodes.at(at);
    String postcode =
        !tagged.isEmpty()
            ? tagged
            : !around.postcode().isEmpty()
                ? around.postcode()
                : voted.isEmpty() ? "" : voted.get(0);
    Set<String> posts = new LinkedHashSet<>();
    posts.add(Letters.bare(postcode));
    posts.add(Letters.bare(around.postcode()));
    if (tagged.isEmpty() && around.postcode().isEmpty()) {
      voted.forEach(value -> posts.add(Letters.bare(value)));
    }
    Set<String> names = new LinkedHashSet<>();
    TOWN_TAGS.forEach(tag -> names.add(Letters.bare(object.tag(tag))));
    DISTRICT_TAGS.forEach(tag -> names.add(Letters.bare(object.tag(tag))));
    around.names().forEach(name -> names.add(Letters.bare(name)));
    String town = object.tag("addr:city");
    List<String> votedTowns = towns.at(at);
    if (town.isEmpty()) {
      votedTowns.forEach(value -> names.add(Letters.bare(value)));
      town =
          !around.town().isEmpty() ? around.town() : votedTowns.isEmpty() ? "" : votedTowns.get(0);
    }
    addSet(document, Fields.POSTCODE, posts);
    addSet(document, Fields.AREA, names);
    document.add(shown(Fields.SHOWN_POSTCODE, postcode));
    document.add(shown(Fields.SHOWN_TOWN, town));
    document.add(new NumericDocValuesField(Fields.PLACE, at));
    long type = object.type() == 'n' ? 0 : object.type() == 'w' ? 1 : 2;
    document.add(new NumericDocValuesField(Fields.SOURCE, object.id() * 4 + type));
  }

  private static void addSet(Document document, String field, Set<String> values) {
    for (String value : values) {
      if (!value.isEmpty()) {
        document.add(new StringField(field, cut(value), Field.Store.NO));
        document.add(new SortedSetDocValuesField(field, new BytesRef(cut(value))));
      }
    }
  }

  private static Field shown(String field, String value) {
    return new SortedDocValuesField(field, new BytesRef(cut(value)));
  }

  private static String cut(String text) {
    return text.length() > 200 ? text.substring(0, 200) : text;
  }

  private static long middleOfWay(long[] places) {
    for (int step = 0; step < places.length; step++) {
      long place = places[(places.length / 2 + step) % places.length];
      if (place != 0) {
        return place;
      }
    }
    return 0;
  }
}
