package dev.dogleg.address;

import dev.dogleg.address.DistrictLookUp.Outcome;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.NumericDocValues;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.SortedSetDocValues;
import org.apache.lucene.index.StoredFields;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.DocIdSetIterator;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKBReader;

/**
 * Reads what the index knows of named areas; safe for several threads, because nothing is kept.
 *
 * <p>Of areas of one name that overlap the smallest is meant: who says the name of a town that is
 * also that of its county means the town.
 */
final class DistrictReader {
  /** Areas of one name are one place where so much of the smaller lies in the other. */
  private static final double SHARED = 0.5;

  private final DirectoryReader reader;

  DistrictReader(DirectoryReader reader) {
    this.reader = reader;
  }

  private record Limited(String name, Geometry shape) {}

  DistrictLookUp of(String name) {
    String key = Letters.bare(name);
    try {
      List<Limited> areas = areas(key);
      if (!areas.isEmpty()) {
        Limited smallest = areas.get(0);
        return areas.stream().allMatch(other -> same(smallest.shape, other.shape))
            ? found(name, Outcome.AREA, District.limited(smallest.name, smallest.shape))
            : new DistrictLookUp(name, Outcome.SEVERAL, Optional.empty());
      }
      for (String field : List.of(Fields.SAID_DISTRICT, Fields.SAID_TOWN)) {
        if (!key.isEmpty() && reader.docFreq(new Term(field, key)) > 0) {
          return found(name, Outcome.ADDRESSES, said(field, key));
        }
      }
      Outcome other =
          reader.docFreq(new Term(Fields.WIDE_NAME, key)) > 0
              ? Outcome.CUT
              : reader.docFreq(new Term(Fields.NAMED, key)) > 0 ? Outcome.POINT : Outcome.NONE;
      return new DistrictLookUp(name, other, Optional.empty());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static DistrictLookUp found(String asked, Outcome outcome, District district) {
    return new DistrictLookUp(asked, outcome, Optional.of(district));
  }

  private static boolean same(Geometry smallest, Geometry other) {
    return smallest.intersection(other).getArea() >= SHARED * smallest.getArea();
  }

  /** Areas of a name, the smallest first. */
  private List<Limited> areas(String key) throws IOException {
    List<Limited> areas = new ArrayList<>();
    StoredFields stored = reader.storedFields();
    for (int document : documents(Fields.NAMED, key)) {
      var fields = stored.document(document);
      var outline = fields.getBinaryValue(Fields.OUTLINE);
      if (outline != null) {
        byte[] bytes = new byte[outline.length];
        System.arraycopy(outline.bytes, outline.offset, bytes, 0, outline.length);
        areas.add(new Limited(fields.get(Fields.SHOWN_NAME), geometry(bytes)));
      }
    }
    areas.sort(Comparator.comparingDouble(area -> area.shape.getArea()));
    return areas;
  }

  private static Geometry geometry(byte[] bytes) throws IOException {
    try {
      return new WKBReader().read(bytes);
    } catch (ParseException damaged) {
      throw new IOException("damaged outline in the address index", damaged);
    }
  }

  private List<Integer> documents(String field, String key) throws IOException {
    List<Integer> found = new ArrayList<>();
    for (LeafReaderContext context : reader.leaves()) {
      PostingsEnum postings = context.reader().postings(new Term(field, key), PostingsEnum.NONE);
      if (postings != null) {
        for (int at = postings.nextDoc();
            at != DocIdSetIterator.NO_MORE_DOCS;
            at = postings.nextDoc()) {
          found.add(context.docBase + at);
        }
      }
    }
    return found;
  }

  /** Every address that names its district (or settlement), and which bear this name. */
  private District said(String field, String key) throws IOException {
    List<SaidAddresses.Said> all = new ArrayList<>();
    String written = "";
    for (LeafReaderContext context : reader.leaves()) {
      SortedSetDocValues names = DocValues.getSortedSet(context.reader(), field);
      NumericDocValues at = DocValues.getNumeric(context.reader(), Fields.PLACE);
      for (int document = names.nextDoc();
          document != DocIdSetIterator.NO_MORE_DOCS;
          document = names.nextDoc()) {
        boolean one = false;
        for (int i = 0; i < names.docValueCount(); i++) {
          String name = names.lookupOrd(names.nextOrd()).utf8ToString();
          if (Letters.bare(name).equals(key)) {
            one = true;
            written = written.isEmpty() ? name : written;
          }
        }
        if (at.advanceExact(document)) {
          all.add(new SaidAddresses.Said(at.longValue(), one));
        }
      }
    }
    return District.said(written, new SaidAddresses(all));
  }

  /** Names of areas with limits, and those that addresses bear. */
  List<String> names() {
    TreeSet<String> names = new TreeSet<>();
    try {
      StoredFields stored = reader.storedFields();
      for (int document : documents(Fields.KIND, Fields.LIMITED)) {
        names.add(stored.document(document).get(Fields.SHOWN_NAME));
      }
      for (LeafReaderContext context : reader.leaves()) {
        for (String field : List.of(Fields.SAID_DISTRICT, Fields.SAID_TOWN)) {
          SortedSetDocValues said = DocValues.getSortedSet(context.reader(), field);
          for (long ord = 0; ord < said.getValueCount(); ord++) {
            names.add(said.lookupOrd(ord).utf8ToString());
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return List.copyOf(names);
  }
}
