package dev.dogleg.sampletown;

import dev.dogleg.sampletown.osm.PbfFile;
import dev.dogleg.sampletown.town.Brindlewick;
import dev.dogleg.sampletown.town.Landmark;
import dev.dogleg.sampletown.town.TownMap;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;

/** The command that writes the sample map. */
public final class SampleTown {
  /** Name of the map file. */
  public static final String MAP_FILE = "brindlewick.osm.pbf";

  /** Name of the table of landmarks. */
  public static final String LANDMARKS_FILE = "landmarks.csv";

  /** Name of the picture. */
  public static final String PICTURE_FILE = "brindlewick.png";

  private SampleTown() {}

  /**
   * Writes map, landmarks and picture.
   *
   * @param args the folder to write into; the current one if there is none
   * @throws IOException if a file cannot be written
   */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args.length > 0 ? args[0] : ".");
    TownMap town = Brindlewick.draw();
    Files.write(folder.resolve(MAP_FILE), PbfFile.bytes(town.map()));
    Files.writeString(folder.resolve(LANDMARKS_FILE), landmarks(town), StandardCharsets.UTF_8);
    MapPicture.write(town.map(), folder.resolve(PICTURE_FILE));
  }

  /**
   * Makes the table of landmarks.
   *
   * @param town the town
   * @return CSV text with a heading
   */
  public static String landmarks(TownMap town) {
    return "name,lat,lon,what,address\n"
        + town.landmarks().stream().map(Landmark::line).collect(Collectors.joining("\n"))
        + "\n";
  }
}
