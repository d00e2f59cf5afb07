package dev.dogleg.travel;

import java.util.List;

/**
 * One road path per ordered pair of places: free-flow seconds per road class, turn seconds, metres.
 *
 * <p>Flat arrays, row after row; never mirrored, never completed by a straight line. A pair without
 * a road is marked in {@code reaches}.
 */
public final class TravelMatrix {
  private final int size;
  private final List<String> roadClasses;
  private final int[] classSeconds;
  private final int[] turnSeconds;
  private final int[] lengthMetres;
  private final boolean[] reaches;

  /**
   * Takes over the arrays' contents (they are copied).
   *
   * @param size number of places n, at least 1
   * @param roadClasses names of the k road classes that traffic slows apart, at least one
   * @param classSeconds n*n*k free-flow seconds, index {@code (from*n + to)*k + class}
   * @param turnSeconds n*n seconds for turns, which traffic does not change
   * @param lengthMetres n*n metres
   * @param reaches n*n, false where no road leads; the other arrays hold 0 there
   * @throws IllegalArgumentException where a length or a sign is wrong, or a diagonal is not 0 and
   *     reached
   */
  public TravelMatrix(
      int size,
      List<String> roadClasses,
      int[] classSeconds,
      int[] turnSeconds,
      int[] lengthMetres,
      boolean[] reaches) {
    int pairs = Math.multiplyExact(size, size);
    if (size < 1 || roadClasses.isEmpty()) {
      throw new IllegalArgumentException("a matrix needs a place and a road class");
    }
    if (classSeconds.length != pairs * roadClasses.size()
        || turnSeconds.length != pairs
        || lengthMetres.length != pairs
        || reaches.length != pairs) {
      throw new IllegalArgumentException("array lengths do not fit " + size + " places");
    }
    this.size = size;
    this.roadClasses = List.copyOf(roadClasses);
    this.classSeconds = classSeconds.clone();
    this.turnSeconds = turnSeconds.clone();
    this.lengthMetres = lengthMetres.clone();
    this.reaches = reaches.clone();
    for (int from = 0; from < size; from++) {
      for (int to = 0; to < size; to++) {
        checkPair(from, to);
      }
    }
  }

  private void checkPair(int from, int to) {
    int pair = from * size + to;
    long seconds = turnSeconds[pair];
    boolean negative = turnSeconds[pair] < 0 || lengthMetres[pair] < 0;
    for (int k = 0; k < roadClasses.size(); k++) {
      negative |= classSeconds[pair * roadClasses.size() + k] < 0;
      seconds += classSeconds[pair * roadClasses.size() + k];
    }
    if (negative || seconds > 86_400) {
      throw new IllegalArgumentException(
          "pair " + from + "->" + to + " must lie in 0..86400 s, was " + seconds);
    }
    if (!reaches[pair] && (seconds != 0 || lengthMetres[pair] != 0)) {
      throw new IllegalArgumentException(
          "pair " + from + "->" + to + " has no road and so no seconds");
    }
    if (from == to && (seconds != 0 || lengthMetres[pair] != 0 || !reaches[pair])) {
      throw new IllegalArgumentException("place " + from + " must reach itself in 0 s and 0 m");
    }
  }

  /**
   * A matrix of one road class from plain tables, for tests and for callers with their own times.
   *
   * @param seconds n rows of n free-flow seconds; a negative number means no road
   * @param metres n rows of n metres
   * @return the matrix
   */
  public static TravelMatrix of(int[][] seconds, int[][] metres) {
    int n = seconds.length;
    int[] flatSeconds = new int[n * n];
    int[] flatMetres = new int[n * n];
    boolean[] reaches = new boolean[n * n];
    for (int from = 0; from < n; from++) {
      for (int to = 0; to < n; to++) {
        int pair = from * n + to;
        reaches[pair] = seconds[from][to] >= 0;
        flatSeconds[pair] = Math.max(0, seconds[from][to]);
        flatMetres[pair] = reaches[pair] ? metres[from][to] : 0;
      }
    }
    return new TravelMatrix(n, List.of("road"), flatSeconds, new int[n * n], flatMetres, reaches);
  }

  /** {@return number of places} */
  public int size() {
    return size;
  }

  /** {@return names of the road classes, in the order of the arrays} */
  public List<String> roadClasses() {
    return roadClasses;
  }

  /**
   * Whether a road leads from one place to another.
   *
   * @param from place left
   * @param to place reached
   * @return true for a place and itself
   */
  public boolean reaches(int from, int to) {
    return reaches[from * size + to];
  }

  /**
   * Free-flow seconds on one road class.
   *
   * @param from place left
   * @param to place reached
   * @param roadClass index into {@link #roadClasses()}
   * @return seconds, 0 where no road leads
   */
  public int classSeconds(int from, int to, int roadClass) {
    return classSeconds[(from * size + to) * roadClasses.size() + roadClass];
  }

  /**
   * Seconds spent in turns.
   *
   * @param from place left
   * @param to place reached
   * @return seconds, 0 where no road leads
   */
  public int turnSeconds(int from, int to) {
    return turnSeconds[from * size + to];
  }

  /**
   * Length of the path.
   *
   * @param from place left
   * @param to place reached
   * @return metres, 0 where no road leads
   */
  public int lengthMetres(int from, int to) {
    return lengthMetres[from * size + to];
  }

  /**
   * Free-flow duration: all classes plus turns.
   *
   * @param from place left
   * @param to place reached
   * @return seconds, 0 where no road leads
   */
  public int freeFlowSeconds(int from, int to) {
    int seconds = turnSeconds(from, to);
    for (int k = 0; k < roadClasses.size(); k++) {
      seconds += classSeconds(from, to, k);
    }
    return seconds;
  }

  /**
   * The matrix of some of the places, in the order given.
   *
   * @param places place numbers of this matrix, at least one
   * @return a matrix in which place {@code i} is {@code places[i]}
   */
  public TravelMatrix part(int[] places) {
    int n = places.length;
    int k = roadClasses.size();
    int[] seconds = new int[n * n * k];
    int[] turns = new int[n * n];
    int[] metres = new int[n * n];
    boolean[] reached = new boolean[n * n];
    for (int from = 0; from < n; from++) {
      for (int to = 0; to < n; to++) {
        int pair = from * n + to;
        int old = places[from] * size + places[to];
        turns[pair] = turnSeconds[old];
        metres[pair] = lengthMetres[old];
        reached[pair] = reaches[old];
        System.arraycopy(classSeconds, old * k, seconds, pair * k, k);
      }
    }
    return new TravelMatrix(n, roadClasses, seconds, turns, metres, reached);
  }
}
