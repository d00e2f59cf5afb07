package dev.dogleg.cli.export;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** Files that only their owner can read, flushed to the disk, moved into place in one step. */
public final class OwnerFile {
  private static final boolean POSIX =
      FileSystems.getDefault().supportedFileAttributeViews().contains("posix");

  private OwnerFile() {}

  /** {@return attributes of a new file that only its owner can read, where the disk knows them} */
  public static FileAttribute<?>[] ownerOnly() {
    return POSIX
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
        }
        : new FileAttribute<?>[0];
  }

  /**
   * Writes a file anew.
   *
   * @param file where; one that lies there is replaced
   * @param text what shall stand in it
   * @throws IOException where it cannot be written
   */
  public static void create(Path file, String text) throws IOException {
    Files.deleteIfExists(file);
    Files.createFile(file, ownerOnly());
    fill(file, text);
  }

  /**
   * Fills an empty file and flushes it.
   *
   * @param file the file
   * @param text what shall stand in it
   * @throws IOException where it cannot be written
   */
  static void fill(Path file, String text) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      flush(channel, StandardCharsets.UTF_8.encode(text));
    }
  }

  /**
   * Writes bytes and does not come back before they are on the disk.
   *
   * @param channel open for writing, at the place to write
   * @param bytes what to write
   * @throws IOException where they cannot be written
   */
  public static void flush(FileChannel channel, ByteBuffer bytes) throws IOException {
    while (bytes.hasRemaining()) {
      channel.write(bytes);
    }
    channel.force(true);
  }

  /**
   * Moves a file into place, in one step where the disk can.
   *
   * @param from the file
   * @param to its place in the same folder; a file that lies there is replaced
   * @throws IOException where it cannot be moved
   */
  public static void moveInto(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException noAtomicMove) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /**
   * Flushes what was moved within a folder, where the system can open folders.
   *
   * @param folder the folder
   */
  public static void flushFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException noFolders) {
      // Some systems do not open folders; there a move is as safe as the system makes it.
    }
  }
}
