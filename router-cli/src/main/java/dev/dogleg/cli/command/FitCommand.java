package dev.dogleg.cli.command;

import dev.dogleg.cli.command.Newcomers.Described;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Answers: can you take my dog? */
@Command(
    name = "fit",
    description = "Can you take my dog? Yes, when, and at what cost to the day; or no, and why.",
    mixinStandardHelpOptions = true)
final class FitCommand implements Callable<Integer> {
  private static final int USUAL_OFFERS = 3;

  private final Surroundings surroundings;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..2",
      paramLabel = "ADDRESS BOOK",
      description =
          "The newcomer's address, then the book folder (default: the current folder). With"
              + " --client the book alone.")
  private String[] words = {};

  @Option(
      names = "--client",
      paramLabel = "NEW.csv",
      description = "Newcomers, a row each: client,pet,address,breed,size,coat,service,when,price.")
  private Path client;

  @Option(
      names = "--zone",
      paramLabel = "NAME",
      description =
          "Instead of an address: is there room for one more in that zone? Asked at the doors of"
              + " the clients who live there.")
  private String zone;

  @Option(names = "--name", paramLabel = "NAME", description = "Who calls. Default: Newcomer.")
  private String name = "Newcomer";

  @Option(names = "--pet", paramLabel = "NAME", description = "The pet's name. Default: Pet.")
  private String pet = "Pet";

  @Option(names = "--breed", paramLabel = "WORDS", description = "Breed, or words for it.")
  private String breed = "";

  @Option(names = "--size", paramLabel = "SIZE", description = "Weight or size word.")
  private String size = "";

  @Option(names = "--coat", paramLabel = "COAT", description = "Coat type.")
  private String coat = "";

  @Option(names = "--service", paramLabel = "SERVICE", description = "What is to be done.")
  private String service = "";

  @Option(names = "--when", paramLabel = "WHEN", description = "For example: Tue after 2.")
  private String when = "";

  @Option(names = "--price", paramLabel = "PRICE", description = "What the groom earns.")
  private String price = "";

  @Option(
      names = "--top",
      paramLabel = "N",
      description =
          "So many offers are shown, 1..20, and why other days have no room. Default: 3, without.")
  private Integer top;

  @Option(
      names = "--other-days",
      description = "Plan the whole week anew too, so that others may change their day.")
  private boolean otherDays;

  @Option(
      names = "--effort",
      paramLabel = "STEPS",
      description = "Limit of that in solver steps. Default: 100000000.")
  private long effort = dev.dogleg.fit.FitQuestion.USUAL_EFFORT;

  @Option(names = "--json", description = "Print the answers as JSON.")
  private boolean json;

  @Option(
      names = "--plan",
      paramLabel = "PLAN.csv",
      description = "The planned days. Default: BOOK/plan/plan.csv.")
  private Path plan;

  @Option(names = "--map", paramLabel = "FILE", description = "Map file; wins over the card's.")
  private Path map;

  FitCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException {
    boolean file = client != null;
    boolean ofZone = zone != null;
    boolean alone = file || ofZone;
    if ((file && ofZone) || (alone ? words.length > 1 : words.length == 0 || words[0].isBlank())) {
      throw usage("either an address, or --client NEW.csv, or --zone NAME; then the book");
    }
    if (ofZone && otherDays) {
      throw usage("--zone asks while all other days stay: not with --other-days");
    }
    int offers = top == null ? USUAL_OFFERS : top;
    if (offers < 1 || offers > 20 || effort < 1) {
      throw usage("--top must lie in 1..20 and --effort be 1 or more");
    }
    int place = alone ? 0 : 1;
    Path book = words.length > place ? Path.of(words[place]) : Path.of("");
    BookChoice choice = new BookChoice(book, map);
    Described described =
        new Described(alone ? "" : words[0], name, pet, breed, size, coat, service, when, price);
    if (ofZone) {
      return new FitZoneRun(
              surroundings,
              new FitZoneRun.Order(choice, Optional.ofNullable(plan), zone, described, json))
          .run()
          .number();
    }
    FitRun.Order order =
        new FitRun.Order(
            choice,
            Optional.ofNullable(plan),
            file ? Optional.empty() : Optional.of(described),
            Optional.ofNullable(client),
            offers,
            otherDays,
            effort,
            json,
            json || top != null);
    return new FitRun(surroundings, order).run().number();
  }

  private ParameterException usage(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
