package dev.dogleg.address;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.SerialMergeScheduler;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;

/** Builds one index from one map: scan, vote, write houses and streets, then interpolation ways. */
final class IndexBuilder {
  private static final double WRITER_MEGABYTES = 48;
  private static final int REPORT_EVERY = 4096;

  private final FoldingTable table;
  private final Predicate<MapObject> keep;

  IndexBuilder(FoldingTable table, Predicate<MapObject> keep) {
    this.table = table;
    this.keep = keep;
  }

  /** Fills an empty folder with an index; scratch files lie beside it meanwhile. */
  void build(MapFile map, Path folder, Path scratch, IndexProgress progress) throws IOException {
    Files.createDirectories(scratch);
    try (MapScan scan = new MapScan(scratch, keep)) {
      scan.run(map, progress);
      if (scan.objects().count() == 0) {
        throw map.empty();
      }
      write(scan, folder, progress);
    }
  }

  private void write(MapScan scan, Path folder, IndexProgress progress) throws IOException {
    AreaVotes postcodes = new AreaVotes();
    AreaVotes towns = new AreaVotes();
    OtherNames otherNames = new OtherNames();
    TreeSet<String> countries = new TreeSet<>(scan.areas().countries());
    scan.objects()
        .each(
            object -> {
              if (object.kind() == MapObject.Kind.STREET) {
                otherNames.add(object);
              } else {
                long at = Rings.middle(object.places());
                postcodes.add(at, object.tag("addr:postcode"));
                towns.add(at, object.tag("addr:city"));
              }
              if (object.tag("addr:country").length() == 2) {
                countries.add(Letters.plain(object.tag("addr:country")));
              }
            });
    DocumentMaker maker =
        new DocumentMaker(new StreetKeys(table), scan.areas(), postcodes, towns, otherNames);
    IndexWriterConfig config =
        new IndexWriterConfig()
            .setRAMBufferSizeMB(WRITER_MEGABYTES)
            .setMergeScheduler(new SerialMergeScheduler());
    try (Directory directory = FSDirectory.open(folder);
        IndexWriter writer = new IndexWriter(directory, config)) {
      long[] done = {0};
      long[] houses = {0};
      scan.objects()
          .each(
              object -> {
                if (done[0]++ % REPORT_EVERY == 0) {
                  progress.at("indexing", (int) (done[0] * 1000 / scan.objects().count()));
                }
                houses[0] += add(writer, maker, scan, object);
              });
      houses[0] += addLines(writer, maker, scan);
      for (String name : scan.areas().wideNames()) {
        writer.addDocument(maker.wide(name));
      }
      for (Areas.Named area : scan.areas().named()) {
        writer.addDocument(maker.limited(area));
      }
      for (String name : scan.areas().pointNames()) {
        writer.addDocument(maker.point(name));
      }
      writer.forceMerge(1);
      Map<String, String> facts = new TreeMap<>();
      facts.put("houses", Long.toString(houses[0]));
      facts.put("countries", String.join(" ", countries));
      writer.setLiveCommitData(facts.entrySet());
      writer.commit();
    }
    progress.at("indexing", 1000);
  }

  private static int add(IndexWriter writer, DocumentMaker maker, MapScan scan, MapObject object)
      throws IOException {
    switch (object.kind()) {
      case STREET -> writer.addDocument(maker.street(object));
      case HOUSE -> {
        boolean lineNode = object.type() == 'n' && scan.isLineNode(object.id());
        List<String> streets = DocumentMaker.streetsOf(object);
        if (!streets.isEmpty() || lineNode) {
          writer.addDocument(maker.house(object, streets, lineNode));
          return streets.isEmpty() ? 0 : 1;
        }
      }
      default -> {
        // Interpolation ways wait until the houses at their ends can be read.
      }
    }
    return 0;
  }

  /** Interpolation ways need the numbers and the street of the houses on them. */
  private static int addLines(IndexWriter writer, DocumentMaker maker, MapScan scan)
      throws IOException {
    int[] houses = {0};
    try (DirectoryReader reader = DirectoryReader.open(writer)) {
      IndexView view = new IndexView(reader);
      scan.objects()
          .each(
              line -> {
                if (line.kind() == MapObject.Kind.LINE) {
                  houses[0] += addLine(writer, maker, view, line);
                }
              });
    }
    return houses[0];
  }

  private static int addLine(
      IndexWriter writer, DocumentMaker maker, IndexView view, MapObject line) throws IOException {
    List<Shape.Anchor> anchors = new ArrayList<>();
    Map<String, Integer> votes = new TreeMap<>();
    List<Hit> nameless = new ArrayList<>();
    long[] kept = new long[line.places().length];
    int count = 0;
    for (int i = 0; i < line.places().length; i++) {
      if (line.places()[i] == 0) {
        continue;
      }
      kept[count++] = line.places()[i];
      for (Hit end : view.node(line.nodes()[i])) {
        anchors.add(new Shape.Anchor(count - 1, HouseNumber.canonical(end.number())));
        if (end.street().isEmpty()) {
          nameless.add(end);
        } else {
          votes.merge(end.street(), 1, Integer::sum);
        }
      }
    }
    List<String> streets = DocumentMaker.streetsOf(line);
    if (line.tag("addr:street").isEmpty() && !votes.isEmpty()) {
      streets =
          List.of(
              votes.entrySet().stream()
                  .max(Map.Entry.<String, Integer>comparingByValue())
                  .orElseThrow()
                  .getKey());
    }
    if (streets.isEmpty() || anchors.size() < 2) {
      return 0;
    }
    Shape shape = new Shape(Arrays.copyOf(kept, count), line.tag("addr:interpolation"), anchors);
    writer.addDocument(maker.line(line, streets, shape));
    for (Hit end : nameless) {
      Map<String, String> tags = new TreeMap<>(line.tags());
      tags.put("addr:housenumber", end.number());
      MapObject house =
          new MapObject(
              MapObject.Kind.HOUSE,
              'n',
              end.source() / 4,
              tags,
              new long[0],
              new long[] {end.at()});
      writer.addDocument(maker.house(house, streets, false));
    }
    return nameless.size();
  }

  static void delete(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.deleteIfExists(file);
        }
      }
    }
  }
}
