package dev.dogleg.groom.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ojalgo.matrix.MatrixR064;
import org.ojalgo.matrix.store.RawStore;

/** The fit against published examples and a library's algebra. */
class PooledFitTest {
  private static final double NEVER = Double.POSITIVE_INFINITY;

  /**
   * Yield of dyestuff, grams of standard colour, six batches of five: O. L. Davies, <i>Statistical
   * Methods in Research and Production</i>, 1947; the data set {@code Dyestuff} of the R package
   * lme4. Numbers from memory; the estimates can be reckoned by hand for balanced data: within
   * 58830 / 24 = 2451.25, between (56357.5 / 6 - 2451.25) / 5 = 1388.33.
   */
  private static final double[][] DYESTUFF = {
    {1545, 1440, 1440, 1520, 1580},
    {1540, 1555, 1490, 1560, 1495},
    {1595, 1550, 1605, 1510, 1560},
    {1445, 1440, 1595, 1465, 1545},
    {1595, 1630, 1515, 1635, 1625},
    {1520, 1455, 1450, 1480, 1445}
  };

  @Test
  void dyestuffHasThePublishedMaximumLikelihood() {
    double grand = 1527.5;
    Pool pool = new Pool(List.of(new EffectClass(1000, 0)));
    for (int batch = 0; batch < DYESTUFF.length; batch++) {
      int effect = pool.effect(0, "batch " + batch, () -> new Effect(0, 0, 1));
      for (double yield : DYESTUFF[batch]) {
        pool.see(yield - grand, 1, 1, Map.of(effect, 1.0));
      }
    }
    PooledFit fit = pool.fit(new PooledFit.Terms(1000, 0, NEVER, NEVER, -1));
    assertEquals(1388.33, fit.scale(0), 1.5);
    assertEquals(2451.25, fit.noiseScale(), 0.5);
    // Batch 6 has the mean 1470, 57.5 below; drawn to 1388.33 / (1388.33 + 2451.25 / 5) = 0.739.
    assertEquals(-57.5 * 0.739, fit.mean(5), 0.05);
  }

  /**
   * Batting averages of eighteen players after 45 times at bat and for the rest of 1970: Efron and
   * Morris 1975 (and <i>Stein's paradox in statistics</i>, Scientific American, 1977). Numbers from
   * memory; the article's estimates draw each average by 0.212 towards the mean 0.265 and have less
   * than a third of the averages' squared error.
   */
  private static final double[][] BASEBALL = {
    {.400, .346}, {.378, .298}, {.356, .276}, {.333, .222}, {.311, .273}, {.311, .270},
    {.289, .263}, {.267, .210}, {.244, .269}, {.244, .230}, {.222, .264}, {.222, .256},
    {.222, .303}, {.222, .264}, {.222, .226}, {.200, .285}, {.178, .316}, {.156, .200}
  };

  @Test
  void baseballIsShrunkAsEfronAndMorrisDid() {
    double grand = 0.2654;
    double noise = grand * (1 - grand) / 45;
    Pool pool = new Pool(List.of(new EffectClass(noise, 0)));
    for (int p = 0; p < BASEBALL.length; p++) {
      int effect = pool.effect(0, "player " + p, () -> new Effect(0, 0, 1));
      pool.see(BASEBALL[p][0] - grand, noise, 1, Map.of(effect, 1.0));
    }
    PooledFit fit = pool.fit(new PooledFit.Terms(1, 1e9, NEVER, NEVER, -1));
    double averages = 0;
    double shrunken = 0;
    for (int p = 0; p < BASEBALL.length; p++) {
      double published = grand + 0.212 * (BASEBALL[p][0] - grand);
      double ours = grand + fit.mean(p);
      assertEquals(published, ours, 0.025, "player " + p);
      averages += Math.pow(BASEBALL[p][0] - BASEBALL[p][1], 2);
      shrunken += Math.pow(ours - BASEBALL[p][1], 2);
    }
    assertEquals(0.077, averages, 0.003);
    assertTrue(shrunken < averages / 3, shrunken + " of " + averages);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void equationsAreSolvedAsALibrarySolvesThem(long seed) {
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
    int kinds = 3;
    int each = 6;
    List<Effect> effects = new ArrayList<>();
    for (int j = 0; j < kinds * each; j++) {
      effects.add(new Effect(j / each, random.nextDouble() - 0.5, 0.5 + random.nextDouble()));
    }
    List<Observation> seen = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      List<Load> loads = new ArrayList<>();
      for (int kind = 0; kind < kinds; kind++) {
        int within = i < each ? i : random.nextInt(each);
        loads.add(new Load(kind * each + within, 0.2 + random.nextDouble()));
      }
      seen.add(new Observation(random.nextDouble() * 4, 1, 1, loads));
    }
    double[] prior = new double[effects.size()];
    for (int j = 0; j < prior.length; j++) {
      prior[j] = 0.1 + random.nextDouble();
    }
    double[] precision = new double[seen.size()];
    for (int i = 0; i < precision.length; i++) {
      precision[i] = i % 7 == 6 ? 0 : 0.5 + random.nextDouble();
    }
    double[][] design = new double[seen.size()][effects.size()];
    double[][] left = new double[effects.size()][effects.size()];
    double[][] right = new double[effects.size()][1];
    for (int j = 0; j < prior.length; j++) {
      left[j][j] = 1 / prior[j];
      right[j][0] = effects.get(j).mean() / prior[j];
    }
    for (int i = 0; i < design.length; i++) {
      for (Load load : seen.get(i).loads()) {
        design[i][load.effect()] = load.size();
      }
      for (int a = 0; a < prior.length; a++) {
        right[a][0] += precision[i] * design[i][a] * seen.get(i).value();
        for (int b = 0; b < prior.length; b++) {
          left[a][b] += precision[i] * design[i][a] * design[i][b];
        }
      }
    }
    MatrixR064 inverse = MatrixR064.FACTORY.copy(RawStore.wrap(left)).invert();
    MatrixR064 mean = inverse.multiply(MatrixR064.FACTORY.copy(RawStore.wrap(right)));
    MatrixR064 loads = MatrixR064.FACTORY.copy(RawStore.wrap(design));
    MatrixR064 fitted = loads.multiply(inverse).multiply(loads.transpose());
    for (int apart = -1; apart < kinds; apart++) {
      MixedEquations ours = new MixedEquations(effects, seen, apart);
      ours.solve(prior, precision);
      for (int j = 0; j < prior.length; j++) {
        assertEquals(mean.doubleValue(j, 0), ours.mean[j], 1e-9, "seed " + seed);
        assertEquals(inverse.doubleValue(j, j), ours.variance[j], 1e-9, "seed " + seed);
      }
      for (int i = 0; i < seen.size(); i++) {
        assertEquals(fitted.doubleValue(i, i), ours.fittedVariance[i], 1e-9, "seed " + seed);
      }
    }
  }

  @Test
  void aWildValueIsLeftOutAndAConsistentOddOneIsNot() {
    Pool pool = new Pool(List.of(new EffectClass(0.04, 5)));
    int wild = pool.effect(0, "wild", () -> new Effect(0, 0, 1));
    int odd = pool.effect(0, "odd", () -> new Effect(0, 0, 1));
    for (double value : new double[] {0.1, 2.3, 0.05}) {
      pool.see(value, 0.02, 1, Map.of(wild, 1.0));
    }
    for (double value : new double[] {1.1, 1.2, 1.0, 1.15}) {
      pool.see(value, 0.02, 1, Map.of(odd, 1.0));
    }
    PooledFit fit = pool.fit(new PooledFit.Terms(1, 20, 2, 4.5, -1));
    assertTrue(fit.rejected(1));
    assertEquals(0.06, fit.mean(wild), 0.03);
    for (int i : new int[] {0, 2, 3, 4, 5, 6}) {
      assertTrue(!fit.rejected(i), "observation " + i);
    }
    assertEquals(1.05, fit.mean(odd), 0.08);
  }

  @Test
  void aSingleValueIsDrawnByItsShareOfTheVariance() {
    Pool pool = new Pool(List.of(new EffectClass(0.04, 10)));
    int one = pool.effect(0, "one", () -> new Effect(0, 0, 1));
    pool.see(0.3, 0.02, 1, Map.of(one, 1.0));
    // Drawn to 0.04 / (0.04 + 0.02) of 0.3 = 0.2 where the noise scale stays at its start.
    PooledFit stays = pool.fit(new PooledFit.Terms(1, 1e9, NEVER, NEVER, -1));
    assertEquals(0.2, stays.mean(one), 0.005);
  }
}
