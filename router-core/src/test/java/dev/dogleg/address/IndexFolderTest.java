package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.extract.Extract;
import dev.dogleg.fault.FaultException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.apache.commons.compress.compressors.bzip2.BZip2CompressorOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The index in its cache, and map files that are not what they should be. */
class IndexFolderTest {
  @TempDir Path folder;

  private static SmallMap map(String number) {
    SmallMap map = new SmallMap();
    map.street("Mill Lane", 0, 400, 0);
    map.house(20, 15, number, "Mill Lane");
    return map;
  }

  private Path write(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }

  private Path write(String name, String xml) throws IOException {
    return write(name, xml.getBytes(StandardCharsets.UTF_8));
  }

  private AddressIndex open(Path file, AtomicInteger builds) {
    return AddressIndex.open(
        new Extract(file),
        folder.resolve("cache"),
        (phase, permille) -> {
          if (phase.equals("reading areas") && permille == 0) {
            builds.incrementAndGet();
          }
        });
  }

  private String code(Path file) {
    FaultException fault =
        assertThrows(FaultException.class, () -> open(file, new AtomicInteger()));
    assertEquals(file.toString(), fault.faults().get(0).where().file());
    return fault.faults().get(0).code();
  }

  private List<String> left() throws IOException {
    Path cache = folder.resolve("cache");
    if (!Files.exists(cache)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(cache)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(n -> !n.endsWith(".lock"))
          .toList();
    }
  }

  @Test
  void isBuiltOnceAndKeptApartFromOtherMaps() throws IOException {
    AtomicInteger builds = new AtomicInteger();
    Path file = write("map.osm", map("12").xml());
    open(file, builds).close();
    open(file, builds).close();
    assertEquals(1, builds.get());
    Files.writeString(file, map("14").xml());
    try (AddressIndex other = open(file, builds)) {
      assertEquals(Grade.EXACT, other.find("14 Mill Lane").grade());
    }
    assertEquals(2, builds.get());
    assertEquals(2, left().size());
  }

  @Test
  void threadsThatOpenAtOnceBuildOnce() throws Exception {
    AtomicInteger builds = new AtomicInteger();
    Path file = write("map.osm", map("12").xml());
    ExecutorService threads = Executors.newFixedThreadPool(4);
    List<Future<Grade>> grades = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      grades.add(
          threads.submit(
              () -> {
                try (AddressIndex index = open(file, builds)) {
                  return index.find("12 Mill Lane").grade();
                }
              }));
    }
    for (Future<Grade> grade : grades) {
      assertEquals(Grade.EXACT, grade.get());
    }
    threads.shutdown();
    assertEquals(1, builds.get());
  }

  @Test
  void twoProcessesThatOpenAtOnceBothAnswer() throws Exception {
    Path file = write("map.osm", map("12").xml());
    List<Process> processes = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      processes.add(
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-cp",
                  System.getProperty("java.class.path"),
                  OpensOnce.class.getName(),
                  file.toString(),
                  folder.resolve("cache").toString(),
                  "12 Mill Lane")
              .redirectErrorStream(true)
              .start());
    }
    for (Process process : processes) {
      String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(0, process.waitFor(), said);
      assertTrue(said.contains("EXACT"), said);
    }
    assertEquals(1, left().size());
  }

  @Test
  void aDamagedIndexIsBuiltAgainAndRemainsOfAKilledBuildGo() throws IOException {
    AtomicInteger builds = new AtomicInteger();
    Path file = write("map.osm", map("12").xml());
    open(file, builds).close();
    Path index = folder.resolve("cache").resolve(left().get(0));
    try (Stream<Path> files = Files.list(index)) {
      for (Path part : files.toList()) {
        Files.write(part, new byte[] {1, 2, 3});
      }
    }
    Files.createDirectories(folder.resolve("cache").resolve(left().get(0) + ".building-x/index"));
    try (AddressIndex again = open(file, builds)) {
      assertEquals(Grade.EXACT, again.find("12 Mill Lane").grade());
    }
    assertEquals(2, builds.get());
    assertEquals(1, left().size());
  }

  @Test
  void packedMapsAreRead() throws IOException {
    byte[] xml = map("12").xml().getBytes(StandardCharsets.UTF_8);
    ByteArrayOutputStream gz = new ByteArrayOutputStream();
    try (OutputStream out = new GZIPOutputStream(gz)) {
      out.write(xml);
    }
    ByteArrayOutputStream bz2 = new ByteArrayOutputStream();
    try (OutputStream out = new BZip2CompressorOutputStream(bz2)) {
      out.write(xml);
    }
    for (Path file :
        List.of(write("a.osm.gz", gz.toByteArray()), write("b.osm.bz2", bz2.toByteArray()))) {
      try (AddressIndex index = open(file, new AtomicInteger())) {
        assertEquals(Grade.EXACT, index.find("12 Mill Lane").grade());
      }
    }
  }

  @Test
  void whatIsNoMapIsAFaultAndLeavesNothing() throws IOException {
    assertEquals("map-missing", code(folder.resolve("none.osm.pbf")));
    assertEquals("map-missing", code(Files.createDirectory(folder.resolve("dir.osm.pbf"))));
    assertEquals("map-unknown-kind", code(write("map.zip", "PK")));
    assertEquals("map-unreadable", code(write("empty.osm.pbf", "")));
    assertEquals("map-unreadable", code(write("text.osm.pbf", "not a map at all, only words")));
    assertEquals("map-unreadable", code(write("empty.osm", "")));
    assertEquals("map-unreadable", code(write("page.osm", "<html><body/></html>")));
    assertEquals("map-unreadable", code(write("cut.osm", map("12").xml().substring(0, 300))));
    assertEquals("map-unreadable", code(write("a.osm.gz", "no gzip")));
    assertEquals("map-without-streets", code(write("bare.osm", "<osm></osm>")));
    assertEquals(List.of(), left());
  }

  @Test
  void anOuterEntityIsNotFetched() throws IOException {
    Path secret = write("secret.txt", "12");
    String xml = "<!DOCTYPE osm [<!ENTITY x SYSTEM \"" + secret.toUri() + "\">]><osm>&x;</osm>";
    assertFalse(code(write("entity.osm", xml)).isEmpty());
  }

  @Test
  void aFileThatUnpacksBeyondReasonIsRefused() throws IOException {
    ByteArrayOutputStream gz = new ByteArrayOutputStream();
    try (OutputStream out = new GZIPOutputStream(gz)) {
      out.write("<osm>".getBytes(StandardCharsets.UTF_8));
      byte[] spaces = " ".repeat(1 << 20).getBytes(StandardCharsets.UTF_8);
      for (int i = 0; i < 40; i++) {
        out.write(spaces);
      }
      out.write("</osm>".getBytes(StandardCharsets.UTF_8));
    }
    assertEquals("map-unreadable", code(write("bomb.osm.gz", gz.toByteArray())));
  }

  @Test
  void manyThreadsGetTheSameAnswers() throws Exception {
    Path file = write("map.osm", map("12").xml());
    try (AddressIndex index = open(file, new AtomicInteger())) {
      String alone = index.find("12 Mil Lane").toString();
      ExecutorService threads = Executors.newFixedThreadPool(8);
      List<Future<String>> answers = new ArrayList<>();
      for (int i = 0; i < 200; i++) {
        answers.add(threads.submit(() -> index.find("12 Mil Lane").toString()));
      }
      for (Future<String> answer : answers) {
        assertEquals(alone, answer.get());
      }
      threads.shutdown();
    }
  }
}
