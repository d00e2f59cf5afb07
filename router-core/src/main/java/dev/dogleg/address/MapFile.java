package dev.dogleg.address;

import dev.dogleg.extract.Extract;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.io.BufferedInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.zip.GZIPInputStream;
import javax.xml.stream.XMLStreamException;
import org.apache.commons.compress.compressors.bzip2.BZip2CompressorInputStream;

/** A map file that can be read several times, one pass a sink, whatever its packing. */
final class MapFile {
  /** XML maps pack about 1:15; far beyond that it is no map. */
  private static final long MOST_UNPACKED_PER_BYTE = 100;

  private static final long ALWAYS_ALLOWED_BYTES = 16L << 20;

  private final Extract extract;
  private final Path path;
  private final long sizeBytes;

  MapFile(Extract extract) {
    this.extract = extract;
    this.path = extract.path();
    if (!Files.isRegularFile(path)) {
      throw new FaultException(
          fault(
              "map-missing", "a map file, but there is none here", "give the path of an extract"));
    }
    try {
      this.sizeBytes = Files.size(path);
    } catch (IOException e) {
      throw unreadable(e);
    }
  }

  /** SHA-256 of the bytes, in hexadecimal. */
  String checksum() {
    try {
      return extract.checksum();
    } catch (IOException e) {
      throw unreadable(e);
    }
  }

  /** Reads the whole file once. */
  void pass(OsmSink sink, String phase, IndexProgress progress) {
    String name = path.getFileName().toString().toLowerCase(Locale.ROOT);
    progress.at(phase, 0);
    try (InputStream raw =
        new BufferedInputStream(
            new Counting(Files.newInputStream(path), phase, progress), 1 << 16)) {
      if (name.endsWith(".pbf")) {
        PbfFrames.read(raw, new PbfBlocks(sink));
      } else if (name.endsWith(".osm")) {
        new XmlElements(sink).read(raw);
      } else if (name.endsWith(".osm.gz")) {
        new XmlElements(sink).read(limited(new GZIPInputStream(raw, 1 << 16)));
      } else if (name.endsWith(".osm.bz2")) {
        new XmlElements(sink).read(limited(new BZip2CompressorInputStream(raw, true)));
      } else {
        throw new FaultException(
            fault(
                "map-unknown-kind",
                "a map file ending in .osm.pbf, .osm, .osm.gz or .osm.bz2",
                "rename or convert it"));
      }
    } catch (IOException | XMLStreamException e) {
      throw unreadable(e);
    } catch (FaultException | java.io.UncheckedIOException e) {
      throw e;
    } catch (RuntimeException e) {
      // Damaged blocks surface as all kinds of unchecked exceptions in the parsers.
      throw unreadable(e);
    }
    progress.at(phase, 1000);
  }

  private InputStream limited(InputStream in) {
    return new LimitedStream(in, ALWAYS_ALLOWED_BYTES + MOST_UNPACKED_PER_BYTE * sizeBytes);
  }

  FaultException unreadable(Exception cause) {
    Throwable root = cause;
    while (root.getCause() != null) {
      root = root.getCause();
    }
    String said = root.getMessage() == null ? root.getClass().getSimpleName() : root.getMessage();
    return new FaultException(
        fault(
            "map-unreadable",
            "a whole OpenStreetMap extract, but reading it failed: " + said,
            "fetch the file again; osmium fileinfo -e tells whether it is whole"),
        cause);
  }

  FaultException empty() {
    return new FaultException(
        fault(
            "map-without-streets",
            "an extract with named streets or house numbers, but it holds neither",
            "take an extract of the region you drive in"));
  }

  private Fault fault(String code, String expected, String hint) {
    return new Fault(
        code,
        Severity.STOP,
        Where.file(path.toString()),
        path.getFileName().toString(),
        expected,
        hint);
  }

  /** Counts bytes as they are read, for progress. */
  private final class Counting extends FilterInputStream {
    private final String phase;
    private final IndexProgress progress;
    private long readBytes;
    private int lastPermille;

    Counting(InputStream in, String phase, IndexProgress progress) {
      super(in);
      this.phase = phase;
      this.progress = progress;
    }

    @Override
    public int read() throws IOException {
      int value = super.read();
      readBytes++;
      return value;
    }

    @Override
    public int read(byte[] buffer, int offset, int length) throws IOException {
      int count = super.read(buffer, offset, length);
      readBytes += Math.max(0, count);
      int permille = (int) Math.min(999, readBytes * 1000 / Math.max(1, sizeBytes));
      if (permille / 10 > lastPermille / 10) {
        lastPermille = permille;
        progress.at(phase, permille);
      }
      return count;
    }
  }
}
