package dev.dogleg.address;

import dev.dogleg.extract.Extract;
import dev.dogleg.fault.FaultException;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.apache.lucene.index.DirectoryReader;

/**
 * The addresses of one map extract, ready for look-up.
 *
 * <p>Life cycle: {@link #open} builds the index or maps the one in the cache into memory, then any
 * number of threads may call {@link #find}, then {@link #close}.
 */
public final class AddressIndex implements Closeable {
  /** Goes with anything that shows what was found. */
  public static final String ATTRIBUTION = "© OpenStreetMap contributors, ODbL";

  private final DirectoryReader reader;
  private final IndexView view;
  private final Finder finder;
  private final Set<String> countries;
  private final DistrictReader districts;
  private final int houses;

  private AddressIndex(DirectoryReader reader) throws IOException {
    this.view = new IndexView(reader);
    Map<String, String> facts = view.facts();
    this.reader = reader;
    this.countries = new TreeSet<>();
    for (String country : facts.getOrDefault("countries", "").split(" ")) {
      if (!country.isEmpty()) {
        countries.add(country);
      }
    }
    this.houses = Integer.parseInt(facts.getOrDefault("houses", "0"));
    this.districts = new DistrictReader(reader);
    this.finder = new Finder(view, FoldingTable.whole(), countries);
  }

  /**
   * Opens the index of a map, building it first where the cache has none for exactly this map.
   *
   * @param mapFile extract: {@code .osm.pbf}, {@code .osm}, {@code .osm.gz} or {@code .osm.bz2}
   * @param cacheFolder folder for indexes, made where missing; one folder serves many maps and
   *     several processes at once
   * @param progress told how far a build has come; not called where the cache serves
   * @return the open index
   * @throws FaultException where the map is missing ({@code map-missing}), damaged ({@code
   *     map-unreadable}), of unknown kind ({@code map-unknown-kind}) or without addresses ({@code
   *     map-without-streets}), or the cache cannot be written ({@code cache-unwritable})
   */
  public static AddressIndex open(Path mapFile, Path cacheFolder, IndexProgress progress) {
    return open(new Extract(mapFile), cacheFolder, progress);
  }

  /**
   * The same for a map that others read too: its bytes are summed once for all.
   *
   * @param extract extract, as above
   * @param cacheFolder folder for indexes, as above
   * @param progress told how far a build has come; not called where the cache serves
   * @return the open index
   * @throws FaultException as above
   */
  public static AddressIndex open(Extract extract, Path cacheFolder, IndexProgress progress) {
    return open(extract, cacheFolder, progress, object -> true);
  }

  static AddressIndex open(
      Extract extract, Path cacheFolder, IndexProgress progress, Predicate<MapObject> keep) {
    MapFile map = new MapFile(extract);
    IndexFolder folder = new IndexFolder(cacheFolder, map.checksum());
    IndexBuilder builder = new IndexBuilder(FoldingTable.whole(), keep);
    try {
      return new AddressIndex(folder.open(map, builder, progress));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The same where the cache has it; nothing is built or repaired.
   *
   * @param extract extract, as above
   * @param cacheFolder folder for indexes
   * @return the open index; empty where {@link #open} would have to build it
   * @throws FaultException where the map is missing or cannot be read
   */
  public static Optional<AddressIndex> kept(Extract extract, Path cacheFolder) {
    IndexFolder folder = new IndexFolder(cacheFolder, new MapFile(extract).checksum());
    try {
      Optional<DirectoryReader> reader = folder.kept();
      return reader.isPresent() ? Optional.of(new AddressIndex(reader.get())) : Optional.empty();
    } catch (IOException damaged) {
      return Optional.empty();
    }
  }

  /**
   * Looks one address up.
   *
   * @param query what was typed and what else is known
   * @return found, ambiguous or none, never null
   */
  public LookUp find(AddressQuery query) {
    return find(query, finder);
  }

  /** Looks up with another table of folding, as the test of the table's rows does. */
  LookUp find(AddressQuery query, FoldingTable table) {
    return find(query, new Finder(view, table, countries));
  }

  private LookUp find(AddressQuery query, Finder by) {
    if (query.text().isBlank() || query.text().length() > AddressQuery.LONGEST) {
      String reason =
          query.text().isBlank()
              ? "nothing was typed"
              : "more than " + AddressQuery.LONGEST + " characters are no address";
      return new LookUp(query, Outcome.NONE, List.of(), reason);
    }
    try {
      return new Conclusion(query, countries).of(by.find(query));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Looks up a text alone.
   *
   * @param text the address as typed
   * @return found, ambiguous or none, never null
   */
  public LookUp find(String text) {
    return find(AddressQuery.of(text));
  }

  /**
   * What the map knows of a district, a town or another area by its name.
   *
   * @param name as typed; case, marks and punctuation do not matter
   * @return its limits, the addresses that bear the name, or why neither can be used
   */
  public DistrictLookUp district(String name) {
    return districts.of(name);
  }

  /** {@return names that {@link #district} can use, each once, in the order of the alphabet} */
  public List<String> districtNames() {
    return districts.names();
  }

  /** {@return how many objects with a house number and a street the map holds} */
  public int houseCount() {
    return houses;
  }

  /** Lets go of the files; no look-up may run or follow. */
  @Override
  public void close() {
    try {
      reader.close();
      reader.directory().close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
