package dev.dogleg.threads;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.IntFunction;

/**
 * Works out the members of a list with two threads: the caller from the first on, the other from
 * the last back, until they meet.
 */
public final class FromBothEnds {
  private FromBothEnds() {}

  /**
   * Works the list out. A member that fails ends the call with its exception, the first one in the
   * list where several do, as if one thread had worked.
   *
   * @param <T> kind of member
   * @param size number of members
   * @param member gives a member by its number from 0; does not depend on the others
   * @return the members in order
   */
  public static <T> List<T> of(int size, IntFunction<T> member) {
    List<FutureTask<T>> tasks = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      int number = i;
      tasks.add(new FutureTask<>(() -> member.apply(number)));
    }
    if (size > 1 && Runtime.getRuntime().availableProcessors() > 1) {
      Thread other = new Thread(() -> backwards(tasks), "planned-days");
      other.setDaemon(true);
      other.start();
    }
    // A task that the other thread has taken is passed over here, and waited for below.
    tasks.forEach(FutureTask::run);
    tasks.forEach(FromBothEnds::await);
    List<T> members = new ArrayList<>();
    tasks.forEach(task -> members.add(result(task)));
    return List.copyOf(members);
  }

  private static <T> void backwards(List<FutureTask<T>> tasks) {
    for (int i = tasks.size() - 1; i >= 0; i--) {
      tasks.get(i).run();
    }
  }

  /** Waits through interruptions, which whoever called will see: nothing may run on behind it. */
  private static void await(FutureTask<?> task) {
    boolean interrupted = false;
    while (!task.isDone()) {
      try {
        task.get();
      } catch (InterruptedException later) {
        interrupted = true;
      } catch (ExecutionException told) {
        break;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private static <T> T result(FutureTask<T> done) {
    try {
      return done.get();
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof RuntimeException own) {
        throw own;
      }
      throw new IllegalStateException(failed.getCause());
    } catch (InterruptedException never) {
      throw new IllegalStateException("a task that is done does not wait", never);
    }
  }
}
