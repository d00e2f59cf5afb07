package dev.dogleg.cli.settings;

import dev.dogleg.cli.file.TextFile;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.nio.file.Path;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads a business card from {@code business.yaml}. */
public final class CardReader {
  /** Name of the card in a book folder. */
  public static final String FILE = "business.yaml";

  private static final int MOST_CHARACTERS = 200_000;
  private static final int DEEPEST = 50;

  private CardReader() {}

  /**
   * Reads a card.
   *
   * @param path where it lies; the map's path in it is relative to its folder
   * @param name as faults shall call it
   * @param faults takes what is wrong; see {@code docs/FORMATS.md} for the codes
   * @return the card, or empty where a fault stops the run
   */
  public static Optional<Card> read(Path path, String name, Faults faults) {
    Optional<TextFile> file = TextFile.read(path, name, faults);
    if (file.isEmpty()) {
      return Optional.empty();
    }
    CardLog log = new CardLog(name, faults);
    Optional<Node> root = compose(file.get().text(), log, name);
    if (root.isEmpty()) {
      return Optional.empty();
    }
    if (!(root.get() instanceof MappingNode mapping)) {
      log.stop(
          "unreadable-card", log.where(root.get(), ""), "", "keys and values were expected", "");
      return Optional.empty();
    }
    Path folder = path.toAbsolutePath().normalize().getParent();
    return new CardBuilder(log, new CardMap(log, "", mapping), folder).build();
  }

  private static Optional<Node> compose(String text, CardLog log, String name) {
    if (text.length() > MOST_CHARACTERS || depth(text) > DEEPEST) {
      log.stop("unreadable-card", Where.file(name), "", "is too big or too deep for a card", "");
      return Optional.empty();
    }
    try {
      LoadSettings settings =
          LoadSettings.builder().setLabel(name).setMaxAliasesForCollections(0).build();
      Optional<Node> root = new Compose(settings).composeString(text);
      if (root.isEmpty()) {
        log.stop("empty-file", Where.file(name), "", "holds no settings", "");
      }
      return root;
    } catch (MarkedYamlEngineException e) {
      int row = e.getProblemMark().map(mark -> mark.getLine() + 1).orElse(0);
      log.add(unreadable(new Where(name, row, ""), e.getProblem()));
    } catch (YamlEngineException e) {
      log.add(unreadable(Where.file(name), String.valueOf(e.getMessage())));
    }
    return Optional.empty();
  }

  /** Most brackets open at once and most leading spaces by two: recursion of the parser. */
  private static int depth(String text) {
    int deepest = 0;
    int open = 0;
    int dashes = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      open += c == '[' || c == '{' ? 1 : c == ']' || c == '}' ? -1 : 0;
      dashes = c == '-' || c == '?' || c == ':' ? dashes + 1 : c == ' ' ? dashes : 0;
      deepest = Math.max(deepest, Math.max(open, dashes));
    }
    return deepest;
  }

  private static Fault unreadable(Where where, String problem) {
    return new Fault(
        "unreadable-card",
        Severity.STOP,
        where,
        "",
        "cannot be read as YAML: " + problem.replaceAll("\\s+", " "),
        "indent with spaces, and put texts with : or # in quotes");
  }
}
