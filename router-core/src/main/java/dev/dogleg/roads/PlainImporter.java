package dev.dogleg.roads;

import com.graphhopper.GraphHopper;
import com.graphhopper.reader.osm.OSMReader;
import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * The importing library without its table of countries, whose borders take longer to load than a
 * small town to read and which nothing here asks for; and without the date of the import, so that
 * two imports of one file are equal to the last byte.
 */
final class PlainImporter extends GraphHopper {

  @Override
  protected void importOSM() {
    createBaseGraphAndProperties();
    OSMReader reader =
        new OSMReader(getBaseGraph().getBaseGraph(), getOSMParsers(), getReaderConfig())
            .setFile(_getOSMFile());
    try {
      reader.readGraph();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
