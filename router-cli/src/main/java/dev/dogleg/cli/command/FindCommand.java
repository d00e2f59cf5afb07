package dev.dogleg.cli.command;

import dev.dogleg.address.AddressQuery;
import dev.dogleg.address.LookUp;
import dev.dogleg.address.Outcome;
import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.ExitCode;
import dev.dogleg.cli.export.FoundText;
import dev.dogleg.cli.prepare.LookUps;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Faults;
import dev.dogleg.model.Client;
import dev.dogleg.model.GeoPoint;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks an address up. */
@Command(
    name = "find",
    description = "Looks an address up on the map, best match first.",
    mixinStandardHelpOptions = true)
final class FindCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "ADDRESS",
      description = "The address as you would type it.")
  private String address;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "BOOK",
      description =
          "Book folder: its card names the map, its places.csv wins, its clients rank what is"
              + " found. Default: the current folder.")
  private Path book;

  @Option(names = "--map", paramLabel = "FILE", description = "Map file; wins over the card's.")
  private Path map;

  @Option(
      names = "--json",
      description = "Print an array, best first, of lat, lon, grade and address.")
  private boolean json;

  FindCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    if (address.isBlank() || address.length() > AddressQuery.LONGEST) {
      throw new ParameterException(
          spec.commandLine(),
          "an address has 1.." + AddressQuery.LONGEST + " characters: " + address.length());
    }
    Console console = surroundings.console();
    Faults faults = new Faults();
    try {
      Optional<BookInput> read = book();
      Optional<Path> file =
          read.map(BookInput::map).or(() -> BookInput.mapOf(new BookChoice(book, map), faults));
      if (file.isEmpty()) {
        throw new FaultException(faults.all());
      }
      try (MapInUse open = new MapInUse(file.get(), surroundings.cache(), console, faults)) {
        List<Client> clients = read.map(input -> input.book().clients()).orElse(List.of());
        Optional<GeoPoint> corrected =
            read.flatMap(input -> input.read().corrections().pin(address));
        LookUp answer = new LookUps(open, clients).of(address);
        if (json) {
          console.say(FoundText.json(address, answer, corrected));
        } else {
          corrected
              .map(FoundText::corrected)
              .orElseGet(() -> FoundText.lines(address, answer))
              .forEach(console::say);
          console.say(PlanNotes.attribution(file.get()));
        }
        boolean clear = corrected.isPresent() || answer.outcome() == Outcome.FOUND;
        return (clear ? ExitCode.DONE : ExitCode.LOOK).number();
      }
    } catch (FaultException failed) {
      console.warn(FaultReport.of(failed.faults(), true));
      return ExitCode.STOPPED.number();
    }
  }

  /** The book, whose corrections win and whose clients rank what is found; none is no fault. */
  private Optional<BookInput> book() {
    if (book == null && map != null) {
      return Optional.empty();
    }
    return BookInput.read(new BookChoice(book, map), false, new Faults());
  }
}
