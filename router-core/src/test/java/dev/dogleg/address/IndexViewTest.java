package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.NumericDocValuesField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.NoMergePolicy;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.Sort;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.util.BytesRef;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Houses and streets are found as the search library's own queries find them. */
class IndexViewTest {
  private static final int DOCUMENTS = 300;

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void findsWhatTheLibrarysQueriesFind(long seed) throws IOException {
    Random random = new Random(seed);
    try (ByteBuffersDirectory directory = new ByteBuffersDirectory()) {
      write(directory, random);
      try (DirectoryReader reader = DirectoryReader.open(directory)) {
        IndexView view = new IndexView(reader);
        for (int round = 0; round < 40; round++) {
          Set<String> streets = some(random, "street", 8);
          Set<String> numbers = some(random, "number", 12);
          String asked = "seed " + seed + ", " + streets + ", " + numbers;
          assertEquals(
              byLibrary(
                  reader, List.of(anyOf(Fields.LOOSE, streets), anyOf(Fields.NUMBER, numbers))),
              sources(view.houses(Fields.LOOSE, streets, Fields.NUMBER, numbers)),
              asked);
          String kind = random.nextBoolean() ? Fields.HOUSE : Fields.STREET;
          assertEquals(
              byLibrary(
                  reader, List.of(anyOf(Fields.LOOSE, streets), anyOf(Fields.KIND, Set.of(kind)))),
              sources(view.onStreet(Fields.LOOSE, streets, kind)),
              asked);
        }
        assertEquals(List.of(), view.houses("no such field", Set.of("a"), Fields.NUMBER, Set.of()));
      }
    }
  }

  /** Several segments, some documents with several keys in a field, some with none. */
  private static void write(ByteBuffersDirectory directory, Random random) throws IOException {
    IndexWriterConfig config = new IndexWriterConfig().setMergePolicy(NoMergePolicy.INSTANCE);
    try (IndexWriter writer = new IndexWriter(directory, config)) {
      for (int number = 0; number < DOCUMENTS; number++) {
        Document document = new Document();
        document.add(new NumericDocValuesField(Fields.SOURCE, number));
        add(document, Fields.LOOSE, some(random, "street", 8));
        add(document, Fields.NUMBER, some(random, "number", 12));
        add(document, Fields.KIND, Set.of(random.nextInt(3) > 0 ? Fields.HOUSE : Fields.STREET));
        writer.addDocument(document);
        if (random.nextInt(100) == 0) {
          writer.commit();
        }
      }
    }
  }

  private static Set<String> some(Random random, String word, int kinds) {
    Set<String> keys = new TreeSet<>();
    for (int left = random.nextInt(4); left > 0; left--) {
      keys.add(word + random.nextInt(kinds));
    }
    return keys;
  }

  private static void add(Document document, String field, Set<String> keys) {
    keys.forEach(key -> document.add(new StringField(field, key, Field.Store.NO)));
  }

  private static Query anyOf(String field, Set<String> keys) {
    return new TermInSetQuery(field, keys.stream().map(BytesRef::new).toList());
  }

  private static List<Long> byLibrary(DirectoryReader reader, List<Query> all) throws IOException {
    BooleanQuery.Builder query = new BooleanQuery.Builder();
    all.forEach(one -> query.add(one, Occur.FILTER));
    List<Long> found = new ArrayList<>();
    for (ScoreDoc hit :
        new IndexSearcher(reader).search(query.build(), DOCUMENTS, Sort.INDEXORDER).scoreDocs) {
      found.add((long) hit.doc);
    }
    return found;
  }

  /** Each document's source is its number in the index. */
  private static List<Long> sources(List<Hit> hits) {
    return hits.stream().map(Hit::source).collect(Collectors.toList());
  }
}
