package dev.dogleg.threads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The list that one thread alone gives, each member worked out once. */
class FromBothEndsTest {
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 7, 100})
  void membersStandInOrderAndAreWorkedOutOnce(int size) {
    AtomicIntegerArray calls = new AtomicIntegerArray(size);
    List<Integer> squares =
        FromBothEnds.of(
            size,
            number -> {
              calls.incrementAndGet(number);
              return number * number;
            });
    assertEquals(IntStream.range(0, size).mapToObj(n -> n * n).toList(), squares);
    for (int number = 0; number < size; number++) {
      assertEquals(1, calls.get(number), "member " + number);
    }
  }

  /** Which thread fails first is chance; which failure is told is not. */
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 20})
  void theFirstFailureInTheListIsToldAndNobodyWorksOn(int size) {
    for (int round = 0; round < 50; round++) {
      AtomicInteger atWork = new AtomicInteger();
      IllegalArgumentException failure =
          assertThrows(
              IllegalArgumentException.class,
              () ->
                  FromBothEnds.of(
                      size,
                      number -> {
                        atWork.incrementAndGet();
                        try {
                          if (number > 0) {
                            throw new IllegalArgumentException("member " + number);
                          }
                          return number;
                        } finally {
                          atWork.decrementAndGet();
                        }
                      }));
      assertEquals("member 1", failure.getMessage());
      assertEquals(0, atWork.get());
    }
  }

  @Test
  void aCallerThatWasInterruptedGetsItsListAndStaysInterrupted() {
    Thread.currentThread().interrupt();
    try {
      assertEquals(List.of(0, 1, 2), FromBothEnds.of(3, number -> number));
      assertEquals(true, Thread.currentThread().isInterrupted());
    } finally {
      Thread.interrupted();
    }
  }
}
