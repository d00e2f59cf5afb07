package dev.dogleg;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;

/** Prints one line for each reason for which tests were skipped, with their number. */
public final class SkippedTests implements TestExecutionListener {
  private final Map<String, Integer> byReason = new LinkedHashMap<>();

  @Override
  public void executionSkipped(TestIdentifier test, String reason) {
    note(reason);
  }

  @Override
  public void executionFinished(TestIdentifier test, TestExecutionResult result) {
    if (result.getStatus() == TestExecutionResult.Status.ABORTED) {
      note(result.getThrowable().map(Throwable::getMessage).orElse("no reason given"));
    }
  }

  @Override
  public void testPlanExecutionFinished(TestPlan plan) {
    byReason.forEach((reason, count) -> System.out.printf("Skipped %d: %s%n", count, reason));
  }

  private void note(String reason) {
    String line =
        String.valueOf(reason).replaceFirst("^(Assumption failed: )?(skipped: )?", "").strip();
    byReason.merge(line, 1, Integer::sum);
  }
}
