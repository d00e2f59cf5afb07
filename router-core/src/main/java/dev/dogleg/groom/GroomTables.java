package dev.dogleg.groom;

import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Behaviour;
import dev.dogleg.model.Coat;
import dev.dogleg.model.CoatState;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The groom tables in force: complete, immutable, with look-ups by the words people use. */
public final class GroomTables {
  private final Map<TimeKey, TimeCell> times;
  private final Map<String, Service> services;
  private final Map<String, AddOn> addOns;
  private final Map<String, Breed> breeds;
  private final List<Word> words;
  private final Learned learned;

  private final Map<Species, NameIndex<Breed>> breedIndex = new EnumMap<>(Species.class);
  private final Map<Word.Kind, NameIndex<Word>> wordIndex = new EnumMap<>(Word.Kind.class);
  private final PetReader petReader;
  private final OrderReader orderReader;

  private GroomTables(TableReader read, Learned learned) {
    this.learned = learned;
    times = Collections.unmodifiableMap(new LinkedHashMap<>(read.times));
    services = Collections.unmodifiableMap(new LinkedHashMap<>(read.services));
    addOns = Collections.unmodifiableMap(new LinkedHashMap<>(read.addOns));
    breeds = Collections.unmodifiableMap(new LinkedHashMap<>(read.breeds));
    words = List.copyOf(read.words);
    for (Species species : Species.values()) {
      breedIndex.put(
          species,
          new NameIndex<>(
              breeds.values().stream().filter(breed -> breed.species() == species).toList(),
              Breed::name,
              Breed::alsoCalled));
    }
    for (Word.Kind kind : Word.Kind.values()) {
      wordIndex.put(kind, index(words.stream().filter(word -> word.kind() == kind).toList()));
    }
    petReader = new PetReader(breedIndex, index(words));
    orderReader = new OrderReader(services.values(), addOns(AddOnKind.ADD_ON));
  }

  private static NameIndex<Word> index(List<Word> words) {
    return new NameIndex<>(words, Word::means, Word::words);
  }

  /**
   * Tables from rows alone.
   *
   * @param rows rows of all five tables
   * @return the tables
   * @throws FaultException with every fault, where a row is wrong or a groom has no row
   */
  public static GroomTables of(GroomRows rows) {
    Faults faults = new Faults();
    TableReader reader = new TableReader(faults);
    reader.read(rows);
    if (faults.isEmpty()) {
      Completeness.check(reader, faults);
    }
    if (!faults.isEmpty()) {
      throw new FaultException(faults.all());
    }
    return new GroomTables(reader, Learned.NONE);
  }

  /**
   * These tables with a business's own rows laid over them: a row for the same thing replaces ours,
   * a row for a new thing is added, all else stays.
   *
   * @param own the business's rows; a table may be empty or hold only what differs
   * @param faults takes what is wrong; such a row is set aside and ours holds
   * @return the tables in force
   */
  public GroomTables with(GroomRows own, Faults faults) {
    TableReader reader = copy(faults);
    reader.read(own);
    reader.words.addAll(words);
    Completeness.check(reader, faults);
    return new GroomTables(reader, learned);
  }

  /**
   * These tables with what was learned from a visit log laid over them, in place of what was
   * learned before.
   *
   * @param values learned values; {@link Learned#NONE} for the tables alone
   * @return the tables in force
   */
  public GroomTables with(Learned values) {
    TableReader reader = copy(new Faults());
    reader.words.addAll(words);
    return new GroomTables(reader, values);
  }

  private TableReader copy(Faults faults) {
    TableReader reader = new TableReader(faults);
    reader.times.putAll(times);
    reader.services.putAll(services);
    reader.addOns.putAll(addOns);
    reader.breeds.putAll(breeds);
    return reader;
  }

  /** {@return what was learned from a visit log; {@link Learned#NONE} where nothing was} */
  public Learned learned() {
    return learned;
  }

  /**
   * Reads what people wrote about a pet: a breed, another name of one, a name with one typing
   * error, or words such as {@code big, bad coat, some doodle}. Never fails: what is not understood
   * stands in the answer.
   *
   * @param species dog or cat; empty to let the text decide, a dog where it says nothing
   * @param text the text, may be empty
   * @return what the pet looks like
   */
  public PetLook look(Optional<Species> species, String text) {
    return petReader.read(species, text);
  }

  /**
   * Reads what was asked for: one service and any add-ons, for example {@code full}, {@code bath
   * and brush}, {@code bath + teeth, nail grinding}.
   *
   * @param species dog or cat
   * @param text the text
   * @param where the cell it stands in
   * @param faults takes what is not understood (set aside) or mended (to look at)
   * @return the order; empty where no service was understood
   */
  public Optional<ServiceOrder> order(Species species, String text, Where where, Faults faults) {
    return orderReader.read(species, text, where, faults);
  }

  /**
   * Looks a service up, without add-ons.
   *
   * @param text a service's name or another word for it
   * @return the service
   */
  public Match<Service> service(String text) {
    return orderReader.service(text);
  }

  /**
   * Looks an add-on up.
   *
   * @param text an add-on's name or another word for it
   * @return the add-on
   */
  public Match<AddOn> addOn(String text) {
    return orderReader.addOn(text);
  }

  /**
   * Looks a breed up.
   *
   * @param species dog or cat
   * @param text the breed's name or another name of it
   * @return the breed
   */
  public Match<Breed> breed(Species species, String text) {
    return breedIndex.get(species).find(text);
  }

  /**
   * Reads a size word.
   *
   * @param text for example {@code small}, {@code big}, {@code xl}
   * @return the class named; a word is a guess ({@link Sizes#named})
   */
  public Match<SizeClass> size(String text) {
    return value(Word.Kind.SIZE, text, SizeClass.class);
  }

  /**
   * Reads a coat word.
   *
   * @param text for example {@code curly}, {@code long haired}
   * @return the coat
   */
  public Match<Coat> coat(String text) {
    return value(Word.Kind.COAT, text, Coat.class);
  }

  /**
   * Reads a word for the state of the coat.
   *
   * @param text for example {@code good}, {@code a few knots}, {@code matted}
   * @return the state
   */
  public Match<CoatState> coatState(String text) {
    return value(Word.Kind.STATE, text, CoatState.class);
  }

  /**
   * Reads a word for behaviour.
   *
   * @param text for example {@code easy}, {@code nervous}, {@code bites}
   * @return the behaviour
   */
  public Match<Behaviour> behaviour(String text) {
    return value(Word.Kind.BEHAVIOUR, text, Behaviour.class);
  }

  private <E extends Enum<E>> Match<E> value(Word.Kind kind, String text, Class<E> type) {
    Match<Word> found = wordIndex.get(kind).find(text);
    return new Match<>(
        found.grade(),
        found.value().map(word -> word.value(type)),
        found.nearest().stream().map(name -> name.toLowerCase(java.util.Locale.ROOT)).toList());
  }

  /** {@return the services, in the order of the table} */
  public List<Service> services() {
    return List.copyOf(services.values());
  }

  /** {@return the breeds, in the order of the table} */
  public List<Breed> breeds() {
    return List.copyOf(breeds.values());
  }

  /**
   * Rows of the add-on table.
   *
   * @param kind which
   * @return the rows, in the order of the table
   */
  public List<AddOn> addOns(AddOnKind kind) {
    return addOns.values().stream().filter(addOn -> addOn.kind() == kind).toList();
  }

  /**
   * Minutes of all rows of one kind.
   *
   * @param kind for example {@code STOP}: the stop overhead
   * @return their sum, in minutes
   */
  public int minutes(AddOnKind kind) {
    return addOns(kind).stream().mapToInt(AddOn::minutes).sum();
  }

  Optional<AddOn> modifier(String name) {
    return Optional.ofNullable(addOns.get(TableReader.key(AddOnKind.MODIFIER, name)));
  }

  TimeCell time(Species species, String service, SizeClass size, Coat coat) {
    return Completeness.cell(times, species, service, size, coat)
        .orElseThrow(() -> new IllegalArgumentException(service + " is not done for a " + species));
  }
}
