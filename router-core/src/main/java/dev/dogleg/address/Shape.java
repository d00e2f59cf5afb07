package dev.dogleg.address;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.util.BytesRef;

/** A line with, on interpolation ways, the numbers known along it; the array is not copied. */
final class Shape {
  private final long[] places;
  private final String scheme;
  private final List<Anchor> anchors;

  /**
   * Takes its parts.
   *
   * @param places packed places in order, none absent
   * @param scheme value of {@code addr:interpolation}, empty for streets
   * @param anchors numbers and where they stand, in the order of the line
   */
  Shape(long[] places, String scheme, List<Anchor> anchors) {
    this.places = places;
    this.scheme = scheme;
    this.anchors = List.copyOf(anchors);
  }

  /**
   * A number known on the line.
   *
   * @param index into the places
   * @param number canonical house number
   */
  record Anchor(int index, String number) {}

  long[] places() {
    return places;
  }

  String scheme() {
    return scheme;
  }

  List<Anchor> anchors() {
    return anchors;
  }

  static Shape of(long[] places) {
    return new Shape(java.util.Arrays.stream(places).filter(p -> p != 0).toArray(), "", List.of());
  }

  BytesRef bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      out.writeInt(places.length);
      for (long place : places) {
        out.writeLong(place);
      }
      out.writeUTF(scheme);
      out.writeInt(anchors.size());
      for (Anchor anchor : anchors) {
        out.writeInt(anchor.index);
        out.writeUTF(anchor.number);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new BytesRef(bytes.toByteArray());
  }

  static Shape read(BytesRef bytes) {
    try (DataInputStream in =
        new DataInputStream(new ByteArrayInputStream(bytes.bytes, bytes.offset, bytes.length))) {
      long[] places = MapObject.readLongs(in);
      String scheme = in.readUTF();
      int count = in.readInt();
      List<Anchor> anchors = new ArrayList<>(count);
      for (int i = 0; i < count; i++) {
        int index = in.readInt();
        anchors.add(new Anchor(index, in.readUTF()));
      }
      return new Shape(places, scheme, anchors);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
