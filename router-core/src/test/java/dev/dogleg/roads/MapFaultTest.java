package dev.dogleg.roads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Severity;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.compressors.bzip2.BZip2CompressorOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every bad map file ends in one clear fault, and nothing is left behind. */
class MapFaultTest {
  @TempDir Path folder;

  private static TownSketch town() {
    return new TownSketch()
        .node(1, 0, 0)
        .node(2, 5, 3)
        .way("1 2", "highway=residential", "name=Long Street");
  }

  private Path file(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }

  private Path file(String name, String text) throws IOException {
    return file(name, text.getBytes(StandardCharsets.UTF_8));
  }

  private void expect(String code, Path map) throws IOException {
    Path cache = folder.resolve("made").resolve("cache");
    FaultException thrown =
        assertThrows(
            FaultException.class,
            () -> RoadNetwork.open(map, VanCard.starter(), cache, Progress.SILENT).close());
    Fault fault = thrown.faults().get(0);
    assertEquals(code, fault.code(), fault.toString());
    assertEquals(Severity.STOP, fault.severity());
    assertEquals(map.toString(), fault.where().file());
    assertFalse(fault.hint().isEmpty(), fault.toString());
    assertFalse(Files.exists(folder.resolve("made")), "left behind after " + code);
  }

  @Test
  void whatIsNoMapAtAll() throws IOException {
    expect("map-missing", folder.resolve("nowhere.osm.pbf"));
    expect("map-is-folder", folder);
    expect("map-empty", file("empty.osm.pbf", new byte[0]));
    expect("map-not-osm", file("notes.osm", "Dear diary, today I met a poodle.\n"));
    expect("map-not-osm", file("page.osm", "<!DOCTYPE html><html><body>404</body></html>"));
    expect("map-not-osm", file("noise.osm.pbf", new byte[] {0, 0, 0, 13, 10, 9, 'x', 1, 2, 3}));
    expect("map-not-osm", file("change.osm", "<osmChange version='0.6'><create/></osmChange>"));
    expect(
        "map-not-osm", file("diary.osm.gz", gzip("Dear diary".getBytes(StandardCharsets.UTF_8))));
    expect("map-not-osm", file("twice.osm.gz", gzip(gzip(new byte[] {1, 2, 3}))));
    String entity =
        "<?xml version='1.0'?><!DOCTYPE osm [<!ENTITY x SYSTEM 'file:///etc/hostname'>]><osm>&x;</osm>";
    expect("map-not-osm", file("entity.osm", entity));
    ByteArrayOutputStream zip = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(zip)) {
      out.putNextEntry(new ZipEntry("map.osm"));
      out.write(town().xml().getBytes(StandardCharsets.UTF_8));
    }
    expect("map-zipped", file("map.osm.zip", zip.toByteArray()));
  }

  @Test
  void whatIsCutShort() throws IOException {
    String xml = town().xml();
    expect("map-truncated", file("cut.osm", xml.substring(0, xml.length() - 40)));
    byte[] gzip = gzip(xml.getBytes(StandardCharsets.UTF_8));
    expect("map-truncated", file("cut.osm.gz", Arrays.copyOf(gzip, gzip.length - 20)));
    byte[] bzip = bzip(xml.getBytes(StandardCharsets.UTF_8));
    expect("map-truncated", file("cut.osm.bz2", Arrays.copyOf(bzip, bzip.length - 20)));
    byte[] pbf = Files.readAllBytes(SampleTown.MAP);
    expect("map-truncated", file("cut.osm.pbf", Arrays.copyOf(pbf, pbf.length - 1)));
    expect("map-truncated", file("cut2.osm.pbf", Arrays.copyOf(pbf, pbf.length / 2)));
  }

  @Test
  void whatIsDamagedInside() throws IOException {
    byte[] pbf = Files.readAllBytes(SampleTown.MAP);
    Arrays.fill(pbf, pbf.length / 2, pbf.length / 2 + 2000, (byte) 0xff);
    Path map = file("damaged.osm.pbf", pbf);
    FaultException thrown =
        assertThrows(
            FaultException.class,
            () -> RoadNetwork.open(map, VanCard.starter(), folder.resolve("c"), Progress.SILENT));
    assertTrue(
        List.of("map-damaged", "map-truncated").contains(thrown.faults().get(0).code()),
        thrown.getMessage());
    assertFalse(Files.exists(folder.resolve("c")));
  }

  @Test
  void whatIsInTheWrongOrderOrWronglyNumbered() throws IOException {
    String xml = town().xml();
    String relation =
        "<relation id=\"7\"><member type=\"way\" ref=\"100\" role=\"x\"/>"
            + "<tag k=\"type\" v=\"route\"/></relation>\n";
    expect("map-unsorted", file("relation-first.osm", xml.replace("<way", relation + "<way")));
    String way = xml.lines().filter(line -> line.startsWith("<way")).findFirst().orElseThrow();
    expect(
        "map-unsorted",
        file(
            "way-first.osm",
            xml.replace(way, "").replaceFirst("<node", way.replace("$", "") + "\n<node")));
    String negative = xml.replace("id=\"1\"", "id=\"-1\"").replace("ref=\"1\"", "ref=\"-1\"");
    expect("map-negative-ids", file("negative.osm", negative));
  }

  @Test
  void whatHoldsNoRoad() throws IOException {
    expect("map-without-roads", file("bare.osm", "<osm version=\"0.6\"></osm>"));
    String path = town().xml().replace("residential", "footway");
    expect("map-without-roads", file("footpath.osm", path));
    String closed = town().xml().replace("</way>", "<tag k=\"access\" v=\"no\"/></way>");
    expect("map-without-roads", file("closed.osm", closed));
  }

  @Test
  void whatUnpacksWithoutEnd() throws IOException {
    ByteArrayOutputStream bomb = new ByteArrayOutputStream();
    byte[] head = "<osm version=\"0.6\">".getBytes(StandardCharsets.UTF_8);
    byte[] blank = new byte[1 << 20];
    Arrays.fill(blank, (byte) ' ');
    try (GZIPOutputStream out = new GZIPOutputStream(bomb)) {
      out.write(head);
      for (int i = 0; i < 100; i++) {
        out.write(blank);
      }
    }
    expect("map-too-large", file("bomb.osm.gz", bomb.toByteArray()));
  }

  @Test
  void packedFilesAreReadLikePlainOnes() throws IOException {
    byte[] xml = town().xml().getBytes(StandardCharsets.UTF_8);
    for (Path map :
        List.of(
            file("a.osm", xml),
            file("odd name.xml.txt", xml),
            file("b.osm.gz", gzip(xml)),
            file("c.osm.bz2", bzip(xml)))) {
      Path cache = folder.resolve("cache of " + map.getFileName());
      try (RoadNetwork roads = RoadNetwork.open(map, VanCard.starter(), cache, Progress.SILENT)) {
        assertEquals("Long Street", roads.snap(Sketches.at(1, 1), "").roadName());
      }
      try (var inside = Files.walk(cache)) {
        assertTrue(inside.noneMatch(path -> path.toString().endsWith("unpacked.osm")));
      }
    }
  }

  private static byte[] gzip(byte[] bytes) throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (OutputStream out = new GZIPOutputStream(packed)) {
      out.write(bytes);
    }
    return packed.toByteArray();
  }

  private static byte[] bzip(byte[] bytes) throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (OutputStream out = new BZip2CompressorOutputStream(packed)) {
      out.write(bytes);
    }
    return packed.toByteArray();
  }
}
