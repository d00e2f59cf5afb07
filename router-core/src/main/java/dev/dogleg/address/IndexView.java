package dev.dogleg.address;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.MultiTerms;
import org.apache.lucene.index.NumericDocValues;
import org.apache.lucene.index.SortedDocValues;
import org.apache.lucene.index.SortedSetDocValues;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.Terms;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.Scorer;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.search.Weight;
import org.apache.lucene.util.BytesRef;
import org.apache.lucene.util.automaton.Automaton;
import org.apache.lucene.util.automaton.CompiledAutomaton;
import org.apache.lucene.util.automaton.LevenshteinAutomata;

/** Reads the search index; safe for several threads, because nothing is kept between calls. */
final class IndexView {
  /** More houses of one name are not looked at: the town must then be said. */
  static final int MOST_HITS = 20_000;

  private final DirectoryReader reader;
  private final IndexSearcher searcher;

  IndexView(DirectoryReader reader) {
    this.reader = reader;
    this.searcher = new IndexSearcher(reader);
    this.searcher.setQueryCache(null);
  }

  Map<String, String> facts() throws IOException {
    return new TreeMap<>(reader.getIndexCommit().getUserData());
  }

  boolean has(String field, Collection<String> keys) throws IOException {
    for (String key : keys) {
      if (reader.docFreq(new Term(field, key)) > 0) {
        return true;
      }
    }
    return false;
  }

  List<Hit> node(long id) throws IOException {
    return hits(new TermQuery(new Term(Fields.NODE, Long.toString(id))));
  }

  /** Houses of a street that bear one of the numbers. */
  List<Hit> houses(
      String streetField,
      Collection<String> streets,
      String numberField,
      Collection<String> numbers)
      throws IOException {
    BooleanQuery.Builder query = new BooleanQuery.Builder();
    query.add(anyOf(streetField, streets), Occur.FILTER);
    query.add(anyOf(numberField, numbers), Occur.FILTER);
    return hits(query.build());
  }

  /** Everything of one kind on a street. */
  List<Hit> onStreet(String streetField, Collection<String> streets, String kind)
      throws IOException {
    BooleanQuery.Builder query = new BooleanQuery.Builder();
    query.add(anyOf(streetField, streets), Occur.FILTER);
    query.add(new TermQuery(new Term(Fields.KIND, kind)), Occur.FILTER);
    return hits(query.build());
  }

  /**
   * Street keys that differ from a key in at most so many letters, in no digit, and in none of the
   * words that name another street where they change (road, row; east, west).
   */
  Map<String, Integer> alike(String key, int mostErrors, List<Set<String>> fixedWords)
      throws IOException {
    Map<String, Integer> found = new TreeMap<>();
    Terms terms = MultiTerms.getTerms(reader, Fields.SPELLED);
    if (terms == null || mostErrors == 0) {
      return found;
    }
    String digits = Letters.digits(key);
    Automaton near = new LevenshteinAutomata(key, true).toAutomaton(mostErrors);
    TermsEnum alike = terms.intersect(new CompiledAutomaton(near, false, true), null);
    for (BytesRef term = alike.next(); term != null; term = alike.next()) {
      String candidate = term.utf8ToString();
      boolean fixed =
          fixedWords.stream().allMatch(forms -> forms.stream().anyMatch(candidate::contains));
      if (fixed && Letters.digits(candidate).equals(digits)) {
        int errors = Letters.typingErrors(key, candidate, mostErrors);
        if (errors <= mostErrors) {
          found.put(candidate, errors);
        }
      }
    }
    return found;
  }

  private static Query anyOf(String field, Collection<String> keys) {
    List<BytesRef> terms = new ArrayList<>(keys.size());
    for (String key : new TreeSet<>(keys)) {
      terms.add(new BytesRef(key));
    }
    return new TermInSetQuery(field, terms);
  }

  private List<Hit> hits(Query query) throws IOException {
    List<Hit> hits = new ArrayList<>();
    Weight weight = searcher.createWeight(searcher.rewrite(query), ScoreMode.COMPLETE_NO_SCORES, 1);
    for (LeafReaderContext context : reader.leaves()) {
      Scorer scorer = weight.scorer(context);
      if (scorer == null) {
        continue;
      }
      Leaf leaf = new Leaf(context);
      DocIdSetIterator documents = scorer.iterator();
      for (int at = documents.nextDoc();
          at != DocIdSetIterator.NO_MORE_DOCS && hits.size() < MOST_HITS;
          at = documents.nextDoc()) {
        hits.add(leaf.read(at));
      }
    }
    return hits;
  }

  /** Columns of one segment, read in ascending order of documents. */
  private static final class Leaf {
    private final SortedDocValues street;
    private final SortedDocValues number;
    private final SortedDocValues postcode;
    private final SortedDocValues town;
    private final NumericDocValues at;
    private final NumericDocValues source;
    private final NumericDocValues radius;
    private final SortedSetDocValues areas;
    private final SortedSetDocValues postcodes;
    private final BinaryDocValues shape;

    Leaf(LeafReaderContext context) throws IOException {
      LeafReader leaf = context.reader();
      street = DocValues.getSorted(leaf, Fields.SHOWN_STREET);
      number = DocValues.getSorted(leaf, Fields.SHOWN_NUMBER);
      postcode = DocValues.getSorted(leaf, Fields.SHOWN_POSTCODE);
      town = DocValues.getSorted(leaf, Fields.SHOWN_TOWN);
      at = DocValues.getNumeric(leaf, Fields.PLACE);
      source = DocValues.getNumeric(leaf, Fields.SOURCE);
      radius = DocValues.getNumeric(leaf, Fields.RADIUS);
      areas = DocValues.getSortedSet(leaf, Fields.AREA);
      postcodes = DocValues.getSortedSet(leaf, Fields.POSTCODE);
      shape = DocValues.getBinary(leaf, Fields.SHAPE);
    }

    Hit read(int document) throws IOException {
      Shape line = shape.advanceExact(document) ? Shape.read(shape.binaryValue()) : null;
      boolean house = number.advanceExact(document);
      String kind =
          house
              ? Fields.HOUSE
              : line == null || line.scheme().isEmpty() ? Fields.STREET : Fields.LINE;
      return new Hit(
          kind,
          text(street, document),
          text(number, document),
          text(postcode, document),
          text(town, document),
          number(at, document),
          number(source, document),
          (int) number(radius, document),
          set(areas, document),
          set(postcodes, document),
          line);
    }

    private static String text(SortedDocValues values, int document) throws IOException {
      return values.advanceExact(document)
          ? values.lookupOrd(values.ordValue()).utf8ToString()
          : "";
    }

    private static long number(NumericDocValues values, int document) throws IOException {
      return values.advanceExact(document) ? values.longValue() : 0;
    }

    private static Set<String> set(SortedSetDocValues values, int document) throws IOException {
      Set<String> found = new HashSet<>();
      if (values.advanceExact(document)) {
        for (int i = 0; i < values.docValueCount(); i++) {
          found.add(values.lookupOrd(values.nextOrd()).utf8ToString());
        }
      }
      return found;
    }
  }
}
