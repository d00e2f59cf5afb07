package dev.dogleg.cli.command;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import dev.dogleg.address.AddressQuery;
import dev.dogleg.address.LookUp;
import dev.dogleg.address.Match;
import dev.dogleg.address.Outcome;
import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.ExitCode;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Faults;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Locale;
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
      description = "Book folder whose card names the map. Default: the current folder.")
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
  public Integer call() throws IOException {
    if (address.isBlank() || address.length() > AddressQuery.LONGEST) {
      throw new ParameterException(
          spec.commandLine(),
          "an address has 1.." + AddressQuery.LONGEST + " characters: " + address.length());
    }
    Console console = surroundings.console();
    Faults faults = new Faults();
    try {
      Optional<Path> file =
          map != null ? Optional.of(map) : BookInput.mapOf(new BookChoice(book, null), faults);
      if (file.isEmpty()) {
        throw new FaultException(faults.all());
      }
      try (MapInUse open = new MapInUse(file.get(), surroundings.cache(), console, faults)) {
        LookUp answer = open.addresses().find(AddressQuery.of(address));
        if (json) {
          console.say(array(answer));
        } else {
          print(answer, file.get());
        }
        return (answer.outcome() == Outcome.FOUND ? ExitCode.DONE : ExitCode.LOOK).number();
      }
    } catch (FaultException failed) {
      console.warn(FaultReport.of(failed.faults(), true));
      return ExitCode.STOPPED.number();
    }
  }

  private void print(LookUp answer, Path file) {
    Console console = surroundings.console();
    console.say(answer.reason());
    for (Match match : answer.matches()) {
      console.say("  %-12s  %s  %s".formatted(grade(match), match.point(), match.address()));
    }
    console.say(PlanNotes.attribution(file));
  }

  private static String grade(Match match) {
    return match.grade().name().toLowerCase(Locale.ROOT);
  }

  private static String array(LookUp answer) throws IOException {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.writeStartArray();
      for (Match match : answer.matches()) {
        json.writeStartObject();
        json.writeFieldName("lat");
        json.writeNumber(degrees(match.point().lat()));
        json.writeFieldName("lon");
        json.writeNumber(degrees(match.point().lon()));
        json.writeStringField("grade", grade(match));
        json.writeStringField("address", match.address());
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    return text.toString();
  }

  private static String degrees(double value) {
    return String.format(Locale.ROOT, "%.6f", value);
  }
}
