package dev.dogleg.cli.settings;

import dev.dogleg.cli.words.Nearness;
import dev.dogleg.cli.words.Reading;
import dev.dogleg.cli.words.Remark;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * One mapping of a card: gives values by key, remembers which keys were asked for, and says what is
 * wrong with its line. A value that is wrong or missing comes back empty; the fault is in the log.
 */
final class CardMap {
  private final CardLog log;
  private final String path;
  private final Where where;
  private final Map<String, Node> values = new LinkedHashMap<>();
  private final Map<String, Where> places = new LinkedHashMap<>();
  private final List<String> known = new ArrayList<>();

  CardMap(CardLog log, String path, MappingNode node) {
    this.log = log;
    this.path = path;
    this.where = log.where(node, path);
    for (NodeTuple tuple : node.getValue()) {
      String key = tuple.getKeyNode() instanceof ScalarNode name ? name.getValue() : "?";
      Where place = log.where(tuple.getKeyNode(), pathOf(key));
      if (values.put(key, tuple.getValueNode()) != null) {
        log.stop("duplicate-key", place, key, "each key once was expected", "");
      }
      places.put(key, place);
    }
  }

  private String pathOf(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  Where where() {
    return where;
  }

  Where where(String key) {
    return places.getOrDefault(key, where.at(pathOf(key)));
  }

  private Optional<Node> node(String key) {
    known.add(key);
    Node node = values.get(key);
    boolean empty =
        node == null
            || (node instanceof ScalarNode scalar
                && scalar.isPlain()
                && (scalar.getValue().isBlank() || scalar.getValue().equals("~")));
    return empty ? Optional.empty() : Optional.of(node);
  }

  /** A text, or empty where the key is missing. */
  Optional<String> text(String key) {
    Optional<Node> node = node(key);
    if (node.isPresent() && !(node.get() instanceof ScalarNode)) {
      log.stop(
          "bad-card-value", where(key), "", "one value was expected, not a list or a block", "");
      return Optional.empty();
    }
    return node.map(value -> ((ScalarNode) value).getValue().strip());
  }

  /** A text that must be there. */
  Optional<String> required(String key, String example) {
    Optional<String> text = text(key);
    if (text.isEmpty() && !values.containsKey(key)) {
      log.stop("missing-key", where.at(pathOf(key)), "", "the key " + key + " is needed", example);
    } else if (text.isEmpty() && values.get(key) instanceof ScalarNode) {
      log.stop("missing-key", where(key), "", "a value is needed", example);
    }
    return text;
  }

  /** A value read by a grammar, or its default; what is in force is written down. */
  <T> T read(String key, T usual, String shown, Function<String, Reading<T>> grammar) {
    Optional<String> text = text(key);
    if (text.isEmpty()) {
      log.inForce(pathOf(key), shown, "default");
      return usual;
    }
    return said(key, text.get(), grammar.apply(text.get())).orElse(usual);
  }

  /** Writes down what a value was read as, or what is wrong with it. */
  <T> Optional<T> said(String key, String text, Reading<T> reading) {
    for (Remark remark : reading.remarks()) {
      Severity severity = reading.value().isEmpty() ? Severity.STOP : remark.severity();
      log.add(
          new Fault(remark.code(), severity, where(key), text, remark.expected(), remark.hint()));
    }
    if (reading.value().isPresent()) {
      log.inForce(pathOf(key), text, where(key));
    }
    return reading.value();
  }

  boolean yes(String key, boolean usual) {
    return read(key, usual, usual ? "yes" : "no", CardMap::yesOrNo);
  }

  private static Reading<Boolean> yesOrNo(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "yes", "true", "on", "y" -> Reading.of(true);
      case "no", "false", "off", "n" -> Reading.of(false);
      default -> Reading.none(Remark.aside("bad-card-value", "yes or no was expected", ""));
    };
  }

  int whole(String key, int least, int most, int usual) {
    return read(key, usual, String.valueOf(usual), text -> scaled(text, least, most, 0));
  }

  /** A number with a unit of {@code 10^digits} parts: {@code 2.80} metres as 280 centimetres. */
  static Reading<Integer> scaled(String text, int least, int most, int digits) {
    String form = digits == 0 ? "\\d{1,9}" : "\\d{1,6}([.]\\d{1," + digits + "})?";
    if (text.matches(form)) {
      int value = new BigDecimal(text).movePointRight(digits).intValueExact();
      if (value >= least && value <= most) {
        return Reading.of(value);
      }
    }
    return Reading.none(
        Remark.aside(
            "bad-card-value",
            "a number from "
                + BigDecimal.valueOf(least, digits).toPlainString()
                + " to "
                + BigDecimal.valueOf(most, digits).toPlainString()
                + " was expected",
            digits == 0 ? "" : "at most " + digits + " decimals, with a point"));
  }

  /** A mapping, or empty where the key is missing or {@code none}. */
  Optional<CardMap> map(String key) {
    Optional<Node> node = node(key);
    if (node.isEmpty()
        || (node.get() instanceof ScalarNode scalar
            && scalar.getValue().strip().equalsIgnoreCase("none"))) {
      return Optional.empty();
    }
    if (node.get() instanceof MappingNode mapping) {
      return Optional.of(new CardMap(log, pathOf(key), mapping));
    }
    log.stop("bad-card-value", where(key), "", "keys and values were expected here", "");
    return Optional.empty();
  }

  boolean has(String key) {
    return values.containsKey(key);
  }

  /** A list of mappings; one mapping alone counts as a list of one. */
  List<CardMap> maps(String key) {
    Optional<Node> node = node(key);
    List<CardMap> found = new ArrayList<>();
    List<Node> items =
        node.isEmpty()
            ? List.of()
            : node.get() instanceof SequenceNode list ? list.getValue() : List.of(node.get());
    for (Node item : items) {
      if (item instanceof MappingNode mapping) {
        found.add(new CardMap(log, pathOf(key) + "[" + (found.size() + 1) + "]", mapping));
      } else {
        log.stop(
            "bad-card-value",
            log.where(item, pathOf(key)),
            "",
            "keys and values were expected",
            "");
      }
    }
    return found;
  }

  /** A list of texts; one text alone counts as a list, parted by commas. */
  List<ScalarNode> texts(String key) {
    Optional<Node> node = node(key);
    List<ScalarNode> found = new ArrayList<>();
    List<Node> items =
        node.isEmpty()
            ? List.of()
            : node.get() instanceof SequenceNode list ? list.getValue() : List.of(node.get());
    for (Node item : items) {
      if (item instanceof ScalarNode scalar) {
        found.add(scalar);
      } else {
        log.stop("bad-card-value", log.where(item, pathOf(key)), "", "single values expected", "");
      }
    }
    return found;
  }

  /** Says which keys nobody asked for: misspelt ones stop the run, others are looked at. */
  void close() {
    for (String key : values.keySet()) {
      if (known.contains(key)) {
        continue;
      }
      String folded = key.toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
      Optional<String> near =
          known.contains(folded) ? Optional.of(folded) : Nearness.nearest(folded, known);
      if (near.isPresent()) {
        log.stop(
            "misspelt-key", where(key), key, "the key " + near.get() + " is near", "rename it");
      } else {
        log.add(
            new Fault(
                "unknown-key",
                Severity.LOOK,
                where(key),
                key,
                "is no key of a card and is not used",
                "keys here: " + String.join(", ", known)));
      }
    }
  }
}
