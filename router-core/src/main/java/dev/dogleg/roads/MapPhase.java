package dev.dogleg.roads;

/** The steps of opening a map file, in the order in which they come; a warm cache skips some. */
public enum MapPhase {
  /** The file is looked at and its checksum taken. */
  CHECKING("checking the map file"),
  /** Another process reads the same map for the same van; this one waits for it. */
  WAITING("waiting for another run that reads the same map"),
  /** A packed file is unpacked. */
  UNPACKING("unpacking the map file"),
  /** Roads are read from the file. */
  READING("reading roads"),
  /** Roads that hang together are found. */
  JOINING("finding which roads hang together"),
  /** Shortcuts are added, so that later questions are answered fast. */
  CONTRACTING("preparing fast answers"),
  /** The result is written to the cache folder. */
  WRITING("writing the road cache"),
  /** The result is loaded from the cache folder. */
  LOADING("loading the road cache");

  private final String words;

  MapPhase(String words) {
    this.words = words;
  }

  /** {@return the step in plain words, lower case, for a progress line} */
  public String words() {
    return words;
  }
}
