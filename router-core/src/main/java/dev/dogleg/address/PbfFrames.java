package dev.dogleg.address;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import org.openstreetmap.osmosis.osmbinary.Fileformat;
import org.openstreetmap.osmosis.osmbinary.file.BlockInputStream;

/**
 * Cuts a PBF stream into its blocks and hands each to the library whole: left to itself the library
 * takes a file that ends within a block for one that ends. Lengths and their limits: OpenStreetMap
 * wiki, PBF Format, "File format" (from memory).
 */
final class PbfFrames {
  private static final int LONGEST_HEADER = 64 << 10;
  private static final int LONGEST_BLOB = 32 << 20;

  private PbfFrames() {}

  static void read(InputStream raw, PbfBlocks blocks) throws IOException {
    DataInputStream in = new DataInputStream(raw);
    int count = 0;
    for (int first = in.read(); first >= 0; first = in.read()) {
      int headerLength = first << 24 | in.readUnsignedByte() << 16 | in.readUnsignedShort();
      byte[] header = bytes(in, headerLength, LONGEST_HEADER);
      int blobLength = Fileformat.BlobHeader.parseFrom(header).getDatasize();
      byte[] blob = bytes(in, blobLength, LONGEST_BLOB);
      ByteBuffer block =
          ByteBuffer.allocate(Integer.BYTES + header.length + blob.length)
              .putInt(headerLength)
              .put(header)
              .put(blob);
      new BlockInputStream(new ByteArrayInputStream(block.array()), blocks).process();
      count++;
    }
    if (count == 0) {
      throw new EOFException("the file is empty");
    }
  }

  private static byte[] bytes(DataInputStream in, int length, int most) throws IOException {
    if (length < 0 || length > most) {
      throw new IOException("a block says it is " + length + " bytes long");
    }
    byte[] bytes = new byte[length];
    in.readFully(bytes);
    return bytes;
  }
}
