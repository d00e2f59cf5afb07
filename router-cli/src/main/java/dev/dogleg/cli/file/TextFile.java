package dev.dogleg.cli.file;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A text file read whole.
 *
 * @param name as faults call it
 * @param text its text without a byte order mark
 */
public record TextFile(String name, String text) {

  /** Most bytes of a table or card: 20 MB. */
  public static final int MOST_BYTES = 20_000_000;

  /**
   * Reads a file.
   *
   * @param path where it lies
   * @param name as faults shall call it
   * @param faults takes what is wrong: {@code missing-file}, {@code is-directory}, {@code
   *     empty-file}, {@code file-too-big}, {@code unreadable-file}, {@code wrong-encoding} (all
   *     stop the run), {@code windows-1252} (a note)
   * @return the text, or empty where a fault stops the run
   */
  public static Optional<TextFile> read(Path path, String name, Faults faults) {
    try {
      if (Files.isDirectory(path)) {
        return stop(faults, name, "is-directory", "is a folder, a file was expected", "");
      }
      if (!Files.exists(path)) {
        return stop(
            faults, name, "missing-file", "there is no such file", "looked at " + path.normalize());
      }
      if (!Files.isRegularFile(path)) {
        return stop(faults, name, "unreadable-file", "is not an ordinary file", "");
      }
      long bytes = Files.size(path);
      if (bytes > MOST_BYTES) {
        return stop(
            faults,
            name,
            "file-too-big",
            "is %,d bytes long, at most %,d are read".formatted(bytes, MOST_BYTES),
            "is it the right file? Split it by year if it is");
      }
      byte[] content;
      try (InputStream in = Files.newInputStream(path)) {
        content = in.readNBytes(MOST_BYTES + 1);
      }
      if (content.length > MOST_BYTES) {
        return stop(faults, name, "file-too-big", "grew while it was read", "try again");
      }
      return Decoding.text(content, name, faults).map(text -> new TextFile(name, text));
    } catch (IOException | SecurityException e) {
      return stop(faults, name, "unreadable-file", "cannot be read: " + e, "");
    }
  }

  private static Optional<TextFile> stop(
      Faults faults, String name, String code, String expected, String hint) {
    faults.add(new Fault(code, Severity.STOP, Where.file(name), "", expected, hint));
    return Optional.empty();
  }
}
