package dev.dogleg.extract;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Objects;

/**
 * A map extract on disk. Roads and addresses of one run share it, so that its bytes are summed
 * once.
 *
 * <p>Any number of threads may use it.
 */
public final class Extract {
  private final Path path;
  private String checksum;

  /**
   * An extract; nothing is read yet.
   *
   * @param path the file
   */
  public Extract(Path path) {
    this.path = Objects.requireNonNull(path, "path");
  }

  /** {@return the file} */
  public Path path() {
    return path;
  }

  /**
   * SHA-256 of all bytes, in hexadecimal; worked out when first asked for.
   *
   * @return 64 digits
   * @throws IOException where the file cannot be read
   */
  public synchronized String checksum() throws IOException {
    if (checksum == null) {
      checksum = sum();
    }
    return checksum;
  }

  private String sum() throws IOException {
    try (InputStream in = Files.newInputStream(path)) {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      byte[] chunk = new byte[1 << 16];
      for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
        digest.update(chunk, 0, read);
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
