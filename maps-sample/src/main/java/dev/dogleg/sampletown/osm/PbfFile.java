package dev.dogleg.sampletown.osm;

import com.google.protobuf.MessageLite;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Function;
import org.openstreetmap.osmosis.osmbinary.Osmformat;
import org.openstreetmap.osmosis.osmbinary.file.BlockOutputStream;
import org.openstreetmap.osmosis.osmbinary.file.FileBlock;

/**
 * Writes a map as {@code .osm.pbf}.
 *
 * <p>Blobs are stored raw, which the format allows and every reader understands: a deflated blob
 * may differ from one zlib build to the next, a raw one cannot, so the committed file can be
 * compared byte by byte on any machine. Git deflates it anyway.
 */
public final class PbfFile {
  /** The format's customary number of things in one block. */
  private static final int BLOCK_SIZE = 8000;

  private static final long NANO_PER_E7 = 100;

  private PbfFile() {}

  /**
   * Writes a map into memory.
   *
   * @param map what to write
   * @return the bytes of the file
   */
  public static byte[] bytes(OsmMap map) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      BlockOutputStream out = new BlockOutputStream(bytes);
      out.setCompress("none");
      write(out, "OSMHeader", header(map.nodes()));
      writeAll(out, map.nodes(), PbfBlocks::nodes);
      writeAll(out, map.ways(), PbfBlocks::ways);
      writeAll(out, map.relations(), PbfBlocks::relations);
      out.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static <T> void writeAll(
      BlockOutputStream out, List<T> things, Function<List<T>, Osmformat.PrimitiveBlock> block)
      throws IOException {
    for (int from = 0; from < things.size(); from += BLOCK_SIZE) {
      List<T> part = things.subList(from, Math.min(things.size(), from + BLOCK_SIZE));
      write(out, "OSMData", block.apply(part));
    }
  }

  /**
   * No index data, not even empty: GraphHopper knows the format by the length of the first head.
   */
  private static void write(BlockOutputStream out, String type, MessageLite message)
      throws IOException {
    out.write(FileBlock.newInstance(type, message.toByteString(), null));
  }

  private static Osmformat.HeaderBlock header(List<OsmNode> nodes) {
    int south = Integer.MAX_VALUE;
    int north = Integer.MIN_VALUE;
    int west = Integer.MAX_VALUE;
    int east = Integer.MIN_VALUE;
    for (OsmNode node : nodes) {
      south = Math.min(south, node.latE7());
      north = Math.max(north, node.latE7());
      west = Math.min(west, node.lonE7());
      east = Math.max(east, node.lonE7());
    }
    return Osmformat.HeaderBlock.newBuilder()
        .setBbox(
            Osmformat.HeaderBBox.newBuilder()
                .setLeft(west * NANO_PER_E7)
                .setRight(east * NANO_PER_E7)
                .setBottom(south * NANO_PER_E7)
                .setTop(north * NANO_PER_E7))
        .addRequiredFeatures("OsmSchema-V0.6")
        .addRequiredFeatures("DenseNodes")
        .addOptionalFeatures("Sort.Type_then_ID")
        .setWritingprogram("dogleg-sampletown")
        .setSource("invented; holds no OpenStreetMap data")
        .build();
  }
}
