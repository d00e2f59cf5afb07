package dev.dogleg.groom.learn;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Collects effects by name and observations of them, to be fitted. */
final class Pool {
  private final List<EffectClass> classes;
  private final List<Map<String, Integer>> numbers = new ArrayList<>();
  private final List<Effect> effects = new ArrayList<>();
  private final List<Observation> seen = new ArrayList<>();

  Pool(List<EffectClass> classes) {
    this.classes = List.copyOf(classes);
    classes.forEach(kind -> numbers.add(new LinkedHashMap<>()));
  }

  /** Number of an effect; the first to name it says how it is before anything is seen. */
  int effect(int kind, String name, Supplier<Effect> before) {
    return numbers
        .get(kind)
        .computeIfAbsent(
            name,
            ignored -> {
              effects.add(before.get());
              return effects.size() - 1;
            });
  }

  /** Adds an observation: loads by effect number. */
  void see(double value, double unitVariance, double weight, Map<Integer, Double> loads) {
    List<Load> sizes = new ArrayList<>();
    loads.forEach((effect, load) -> sizes.add(new Load(effect, load)));
    seen.add(new Observation(value, unitVariance, weight, sizes));
  }

  PooledFit fit(PooledFit.Terms terms) {
    return PooledFit.of(classes, effects, seen, terms);
  }

  /** Names of a class's effects and their numbers, in the order first named. */
  Map<String, Integer> named(int kind) {
    return numbers.get(kind);
  }

  List<Observation> seen() {
    return seen;
  }
}
