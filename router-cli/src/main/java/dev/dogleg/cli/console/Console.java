package dev.dogleg.cli.console;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/**
 * Where a command speaks: results to standard output, faults and progress to standard error.
 *
 * <p>Made once a run, used by the thread that runs the command.
 */
public final class Console {
  private final PrintWriter out;
  private final PrintWriter err;
  private final boolean terminal;
  private final Charset charset;

  /**
   * A console that writes to given writers.
   *
   * @param out results
   * @param err faults and progress
   * @param terminal whether a person watches standard error on a terminal
   * @param charset what the reader understands
   */
  public Console(PrintWriter out, PrintWriter err, boolean terminal, Charset charset) {
    this.out = Objects.requireNonNull(out, "out");
    this.err = Objects.requireNonNull(err, "err");
    this.charset = Objects.requireNonNull(charset, "charset");
    this.terminal = terminal;
  }

  /**
   * The process's own console. A terminal is written in its own character set, a file or a pipe in
   * UTF-8.
   *
   * @param terminal whether a person watches on a terminal: the starting script knows, Java from 22
   *     on answers it otherwise than before
   * @return the console
   */
  public static Console system(boolean terminal) {
    String named = terminal ? System.getProperty("native.encoding", "UTF-8") : "UTF-8";
    Charset charset = Charset.isSupported(named) ? Charset.forName(named) : StandardCharsets.UTF_8;
    return new Console(
        writer(new FileOutputStream(FileDescriptor.out), charset),
        writer(new FileOutputStream(FileDescriptor.err), charset),
        terminal,
        charset);
  }

  private static PrintWriter writer(OutputStream stream, Charset charset) {
    return new PrintWriter(stream, false, charset);
  }

  /**
   * Writes text to standard output.
   *
   * @param text one or more lines; a line end is added
   */
  public void say(String text) {
    out.println(PlainText.fold(text, charset));
    out.flush();
  }

  /**
   * Writes text to standard error.
   *
   * @param text one or more lines; a line end is added
   */
  public void warn(String text) {
    out.flush();
    err.println(PlainText.fold(text, charset));
    err.flush();
  }

  /**
   * Announces a piece of work that may take a while.
   *
   * @param task what is done, in a few words
   * @return shows how far it is; close it when done
   */
  public Progress progress(String task) {
    return terminal ? new BarProgress(task) : new LineProgress(this, task);
  }

  /** {@return whether a person watches on a terminal} */
  public boolean terminal() {
    return terminal;
  }

  /** {@return results, for a command library that writes its own help} */
  public PrintWriter out() {
    return out;
  }

  /** {@return faults and progress, for a command library that writes its own messages} */
  public PrintWriter err() {
    return err;
  }
}
