package dev.dogleg.roads;

/**
 * The drivable roads in flat arrays of whole numbers; read-only, any number of threads.
 *
 * <p>A stretch of road between two nodes is an edge e; driven as stored it is the edge key {@code
 * 2e}, driven backwards {@code 2e + 1}. All search works on keys, so that turns have a price.
 */
final class RoadGraph {
  /** Marks a key that the van may not drive, and a turn it may not take. */
  static final int CLOSED = -1;

  /**
   * What the search adds when an open road is left for a private or destination-only one, in
   * milliseconds: three hours, never part of a time that is told.
   */
  static final int ENTRY_WEIGHT_MS = 10_800_000;

  /** Values of {@link #entry}. */
  static final byte OPEN = 0;

  static final byte DESTINATION = 1;
  static final byte PRIVATE = 2;

  /** No bearing: the stretch has no length. */
  static final short NO_BEARING = -1;

  final int nodes;
  final int edges;

  /** Node left, by key. */
  final int[] tail;

  /** Milliseconds, by key; {@link #CLOSED} where not drivable. */
  final int[] edgeMs;

  /** Direction when leaving the tail, 0..359 degrees, by key. */
  final short[] bearing;

  /** Centimetres, by edge. */
  final int[] lengthCm;

  /** Index into {@link RoadNetwork#ROAD_CLASSES}, by edge. */
  final byte[] roadClass;

  /** Who may use it, by edge: open, destination or private. */
  final byte[] entry;

  /**
   * By edge: the edge itself, or the one it is a twin of. The importing library doubles an edge to
   * express a turn ban over a way; twins are one road on the ground.
   */
  final int[] original;

  /** 1 where the edge is a gate, by edge. */
  final byte[] gate;

  /** 1 where doors may open onto it, by edge: not a motorway, in a tunnel or on a ferry. */
  final byte[] doors;

  /** 1 where three or more drivable stretches meet, by node. */
  final byte[] junction;

  /** Forbidden turns, {@code key in << 32 | key out}, sorted. */
  final long[] forbidden;

  /** Keys leaving a node: {@code outKeys[outFirst[node] .. outFirst[node + 1])}, drivable only. */
  final int[] outFirst;

  final int[] outKeys;

  private final int nearMs;
  private final int crossingMs;
  private final int sharpMs;
  private final int uTurnMs;
  private final boolean crossingIsLeft;

  RoadGraph(
      VanCard van,
      int[] tail,
      int[] edgeMs,
      short[] bearing,
      int[] lengthCm,
      byte[] roadClass,
      byte[] entry,
      byte[] gate,
      byte[] doors,
      int[] original,
      byte[] junction,
      long[] forbidden) {
    this.nodes = junction.length;
    this.edges = lengthCm.length;
    this.tail = tail;
    this.edgeMs = edgeMs;
    this.bearing = bearing;
    this.lengthCm = lengthCm;
    this.roadClass = roadClass;
    this.entry = entry;
    this.gate = gate;
    this.doors = doors;
    this.original = original;
    this.junction = junction;
    this.forbidden = forbidden;
    this.outFirst = new int[nodes + 1];
    this.outKeys = fillOut();
    this.nearMs = 1000 * van.turns().nearSide();
    this.crossingMs = 1000 * van.turns().crossing();
    this.sharpMs = 1000 * van.turns().sharp();
    this.uTurnMs = 1000 * van.turns().uTurn();
    this.crossingIsLeft = van.drivingSide() == DrivingSide.RIGHT;
  }

  private int[] fillOut() {
    for (int key = 0; key < tail.length; key++) {
      if (edgeMs[key] != CLOSED) {
        outFirst[tail[key] + 1]++;
      }
    }
    for (int node = 0; node < nodes; node++) {
      outFirst[node + 1] += outFirst[node];
    }
    int[] next = outFirst.clone();
    int[] keys = new int[outFirst[nodes]];
    for (int key = 0; key < tail.length; key++) {
      if (edgeMs[key] != CLOSED) {
        keys[next[tail[key]]++] = key;
      }
    }
    return keys;
  }

  int head(int key) {
    return tail[key ^ 1];
  }

  boolean drivable(int key) {
    return edgeMs[key] != CLOSED;
  }

  boolean hasDoors(int edge) {
    return doors[edge] != 0;
  }

  boolean restricted(int key) {
    return entry[key >> 1] != OPEN;
  }

  EntryKind entryKind(int edge) {
    return switch (entry[edge]) {
      case DESTINATION -> EntryKind.DESTINATION;
      case PRIVATE -> EntryKind.PRIVATE;
      default -> EntryKind.OPEN;
    };
  }

  /** Milliseconds of the turn from one key into another that leaves its head; or CLOSED. */
  int turnMs(int inKey, int outKey) {
    if (original[inKey >> 1] == original[outKey >> 1] && (inKey & 1) != (outKey & 1)) {
      return uTurnMs;
    }
    if (forbidden.length > 0
        && java.util.Arrays.binarySearch(forbidden, turn(inKey, outKey)) >= 0) {
      return CLOSED;
    }
    if (junction[tail[outKey]] == 0) {
      return 0;
    }
    short back = bearing[inKey ^ 1];
    short on = bearing[outKey];
    if (back == NO_BEARING || on == NO_BEARING) {
      return 0;
    }
    int change = Math.floorMod(on - back, 360) - 180;
    int size = Math.abs(change);
    if (size < TurnSeconds.TURN_FROM_DEGREES) {
      return 0;
    }
    if (size > TurnSeconds.SHARP_FROM_DEGREES) {
      return sharpMs;
    }
    return change < 0 == crossingIsLeft ? crossingMs : nearMs;
  }

  /** What the search adds to the turn's own milliseconds. */
  int entryWeight(int inKey, int outKey) {
    return !restricted(inKey) && restricted(outKey) ? ENTRY_WEIGHT_MS : 0;
  }

  /** Milliseconds plus entry weight of a turn, or CLOSED. */
  int turnWeight(int inKey, int outKey) {
    int ms = turnMs(inKey, outKey);
    return ms == CLOSED ? CLOSED : ms + entryWeight(inKey, outKey);
  }

  /** How a turn is written in {@link #forbidden}. */
  static long turn(int inKey, int outKey) {
    return (long) inKey << 32 | outKey;
  }
}
