package dev.dogleg.address;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
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
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.SortedDocValues;
import org.apache.lucene.index.SortedSetDocValues;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.Terms;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.util.BytesRef;
import org.apache.lucene.util.automaton.Automaton;
import org.apache.lucene.util.automaton.CompiledAutomaton;
import org.apache.lucene.util.automaton.LevenshteinAutomata;

/** Reads the search index; safe for several threads, because nothing is kept between calls. */
final class IndexView {
  /** More houses of one name are not looked at: the town must then be said. */
  static final int MOST_HITS = 20_000;

  private final DirectoryReader reader;

  IndexView(DirectoryReader reader) {
    this.reader = reader;
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
    return hits(new AnyOf(Fields.NODE, List.of(Long.toString(id))));
  }

  /** Houses of a street that bear one of the numbers. */
  List<Hit> houses(
      String streetField,
      Collection<String> streets,
      String numberField,
      Collection<String> numbers)
      throws IOException {
    return hits(new AnyOf(streetField, streets), new AnyOf(numberField, numbers));
  }

  /** Everything of one kind on a street. */
  List<Hit> onStreet(String streetField, Collection<String> streets, String kind)
      throws IOException {
    return hits(new AnyOf(streetField, streets), new AnyOf(Fields.KIND, List.of(kind)));
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

  /** Documents that have one of the keys in a field. */
  private record AnyOf(String field, Collection<String> keys) {

    /** Their lists in one segment, each in ascending order; none for a key that it has not. */
    List<PostingsEnum> in(LeafReader leaf) throws IOException {
      List<PostingsEnum> found = new ArrayList<>();
      Terms terms = leaf.terms(field);
      if (terms != null) {
        TermsEnum seeking = terms.iterator();
        for (String key : keys) {
          if (seeking.seekExact(new BytesRef(key))) {
            found.add(seeking.postings(null, PostingsEnum.NONE));
          }
        }
      }
      return found;
    }
  }

  /**
   * Documents that have one of the keys of each, in ascending order.
   *
   * <p>Maintainers: the library's queries give the same, but set up far more than these short lists
   * need; that was half the time of a look-up in a cold program.
   */
  private List<Hit> hits(AnyOf first, AnyOf... others) throws IOException {
    List<Hit> hits = new ArrayList<>();
    for (LeafReaderContext context : reader.leaves()) {
      NavigableSet<Integer> documents = new TreeSet<>();
      for (PostingsEnum list : first.in(context.reader())) {
        for (int at = list.nextDoc(); at != DocIdSetIterator.NO_MORE_DOCS; at = list.nextDoc()) {
          documents.add(at);
        }
      }
      for (AnyOf other : others) {
        keep(documents, other.in(context.reader()));
      }
      if (!documents.isEmpty()) {
        Leaf leaf = new Leaf(context);
        for (int at : documents) {
          if (hits.size() < MOST_HITS) {
            hits.add(leaf.read(at));
          }
        }
      }
    }
    return hits;
  }

  /** Keeps the documents that stand in one of the lists. */
  private static void keep(NavigableSet<Integer> documents, List<PostingsEnum> lists)
      throws IOException {
    for (Iterator<Integer> each = documents.iterator(); each.hasNext(); ) {
      int document = each.next();
      boolean listed = false;
      for (PostingsEnum list : lists) {
        int at = list.docID() < document ? list.advance(document) : list.docID();
        listed |= at == document;
      }
      if (!listed) {
        each.remove();
      }
    }
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
