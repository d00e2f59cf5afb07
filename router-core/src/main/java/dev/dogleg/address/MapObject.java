package dev.dogleg.address;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;

/**
 * What the index needs of one element of the map; immutable by agreement, arrays are not copied.
 */
final class MapObject {
  private final Kind kind;
  private final char type;
  private final long id;
  private final Map<String, String> tags;
  private final long[] nodes;
  private final long[] places;

  /**
   * Takes its parts.
   *
   * @param kind house, street, interpolation way, area
   * @param type {@code n}, {@code w} or {@code r}
   * @param id id of the element
   * @param tags the tags that matter
   * @param nodes ids of the points in order, only of interpolation ways
   * @param places packed places of the points in order, 0 where the file does not hold one
   */
  MapObject(Kind kind, char type, long id, Map<String, String> tags, long[] nodes, long[] places) {
    this.kind = kind;
    this.type = type;
    this.id = id;
    this.tags = tags;
    this.nodes = nodes;
    this.places = places;
  }

  /** What an element is to the index. */
  enum Kind {
    /** Bears a house number. */
    HOUSE('h'),
    /** A named street or square. */
    STREET('s'),
    /** A way along which numbers are interpolated. */
    LINE('l'),
    /** A closed way around a town, a district or a postcode. */
    AREA('a');

    private final char code;

    Kind(char code) {
      this.code = code;
    }

    private static Kind of(char code) throws IOException {
      for (Kind kind : values()) {
        if (kind.code == code) {
          return kind;
        }
      }
      throw new IOException("scratch file is damaged");
    }
  }

  Kind kind() {
    return kind;
  }

  char type() {
    return type;
  }

  long id() {
    return id;
  }

  Map<String, String> tags() {
    return tags;
  }

  long[] nodes() {
    return nodes;
  }

  long[] places() {
    return places;
  }

  String tag(String key) {
    return tags.getOrDefault(key, "");
  }

  void write(DataOutput out) throws IOException {
    out.writeByte(kind.code);
    out.writeByte(type);
    out.writeLong(id);
    out.writeShort(tags.size());
    for (Map.Entry<String, String> tag : new TreeMap<>(tags).entrySet()) {
      out.writeUTF(cut(tag.getKey()));
      out.writeUTF(cut(tag.getValue()));
    }
    writeLongs(out, nodes);
    writeLongs(out, places);
  }

  static MapObject read(DataInput in) throws IOException {
    Kind kind = Kind.of((char) in.readByte());
    char type = (char) in.readByte();
    long id = in.readLong();
    int count = in.readShort();
    Map<String, String> tags = new TreeMap<>();
    for (int i = 0; i < count; i++) {
      String key = in.readUTF();
      tags.put(key, in.readUTF());
    }
    return new MapObject(kind, type, id, tags, readLongs(in), readLongs(in));
  }

  private static String cut(String text) {
    return text.length() > 255 ? text.substring(0, 255) : text;
  }

  static void writeLongs(DataOutput out, long[] values) throws IOException {
    out.writeInt(values.length);
    for (long value : values) {
      out.writeLong(value);
    }
  }

  static long[] readLongs(DataInput in) throws IOException {
    long[] values = new long[in.readInt()];
    for (int i = 0; i < values.length; i++) {
      values[i] = in.readLong();
    }
    return values;
  }
}
