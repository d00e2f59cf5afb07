package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Ctrl-C while a plan is being made: the run is asked to stop and is given time to write what it
 * has.
 *
 * <p>While it is open, the end of the process waits until it is closed, at most three minutes.
 */
final class Interruption implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofMinutes(3);

  private final CountDownLatch done = new CountDownLatch(1);
  private final Thread hook = new Thread(this::holdUp, "dogleg-interruption");
  private final Console console;
  private volatile boolean asked;

  Interruption(Console console) {
    this.console = console;
    Runtime.getRuntime().addShutdownHook(hook);
  }

  private void holdUp() {
    asked = true;
    console.warn("Stopping: the best plan so far is checked and written ...");
    try {
      if (!done.await(PATIENCE.toSeconds(), TimeUnit.SECONDS)) {
        return; // the process ends whatever the run is doing; no file is half-written
      }
    } catch (InterruptedException gone) {
      Thread.currentThread().interrupt();
    }
  }

  /** {@return whether somebody asked to stop} */
  boolean asked() {
    return asked;
  }

  @Override
  public void close() {
    done.countDown();
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException ending) {
      // The process is ending already: the hook has just been let go.
    }
  }
}
