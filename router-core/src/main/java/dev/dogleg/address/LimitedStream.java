package dev.dogleg.address;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Ends with an error where a packed file grows beyond all reason when unpacked. */
final class LimitedStream extends FilterInputStream {
  private long left;

  LimitedStream(InputStream in, long limitBytes) {
    super(in);
    this.left = limitBytes;
  }

  @Override
  public int read() throws IOException {
    int value = super.read();
    if (value >= 0) {
      spend(1);
    }
    return value;
  }

  @Override
  public int read(byte[] buffer, int offset, int length) throws IOException {
    int count = super.read(buffer, offset, length);
    if (count > 0) {
      spend(count);
    }
    return count;
  }

  private void spend(int count) throws IOException {
    left -= count;
    if (left < 0) {
      throw new IOException("unpacks to more than a map of this size can hold");
    }
  }
}
