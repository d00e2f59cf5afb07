package dev.dogleg.address;

/** Names of the fields of the search index; a change of meaning needs a new {@link #FORMAT}. */
final class Fields {
  /** Version of the layout; part of the name of an index folder. */
  static final int FORMAT = 3;

  /**
   * {@code h} house, {@code s} street, {@code l} interpolation way, {@code a} area cut off, {@code
   * d} area with its limits, {@code p} place that is a point.
   */
  static final String KIND = "kind";

  static final String HOUSE = "h";
  static final String STREET = "s";
  static final String LINE = "l";
  static final String WIDE = "a";
  static final String LIMITED = "d";
  static final String POINT = "p";

  /** Keys of the street, see {@link StreetKeys}. */
  static final String STRICT = "strict";

  static final String LOOSE = "loose";
  static final String CORE = "core";

  /** Loose keys, and the words as they are spelled: what typing errors are sought in. */
  static final String SPELLED = "spelled";

  /** Numbers a house bears, and numbers its range or division may stand for. */
  static final String NUMBER = "number";

  static final String MEMBER = "member";

  /** Keys of places and postcodes, both searched and read back. */
  static final String AREA = "area";

  static final String POSTCODE = "post";

  /** Key of a name whose area the extract cuts. */
  static final String WIDE_NAME = "wide";

  /** Keys of the names of an area or a point, the name as the map writes it, and the polygons. */
  static final String NAMED = "named";

  static final String SHOWN_NAME = "name";
  static final String OUTLINE = "outline";

  /** Names of districts and of settlements that a house bears itself: keys, and as written. */
  static final String SAID_DISTRICT = "district";

  static final String SAID_TOWN = "settlement";

  /** Id of a point that an interpolation way asks for. */
  static final String NODE = "node";

  /** What is shown and measured. */
  static final String SHOWN_STREET = "street";

  static final String SHOWN_NUMBER = "no";
  static final String SHOWN_POSTCODE = "postcode";
  static final String SHOWN_TOWN = "town";
  static final String PLACE = "at";
  static final String SOURCE = "source";
  static final String RADIUS = "radius";
  static final String SHAPE = "shape";

  private Fields() {}
}
