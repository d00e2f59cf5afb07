package dev.dogleg.cli.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.Proof;
import org.junit.jupiter.api.Test;

/** The printed day. */
class DayTextTest {
  private static final Proof BEST = new Proof(Proof.Kind.PROVEN_BEST, 2, 7200, 10);

  @Test
  void aDayReadsAtAGlance() {
    assertEquals(
        """
        Tuesday 2 March 2027, Robin Ashdown                          2 doors, home 10:55

            at     van: Bluebell                            drive     km  groom  spare
         08:00     leave home                                                        5
         08:10  1  Ada Fenwick: Mop                            11    4.2     50      8
                   14 Quay Street, Old Harbour
                   groom starts 08:15
         09:05     break, 30 min, at Ada Fenwick's door                             20
         09:45  2  Joss Tarn: Pip, Squeak                      10    3.0     60     21
                   The Long Barn at the Far End of Upper
                   Withering Lane, North Moor
                   told 09:30-10:00
         10:55     home                                        10    5.1

         Driving 31 min over 12.3 km, grooming 1 h 50 min, waiting 5 min.
         In minutes. Spare: how late the van may come before a later promise breaks.
         No plan can beat this.

         No room for:
           - Nell Ottery: Fern - not even alone: it cannot be done by the time asked
             for, 12 minutes short
           - Wil Pask: Bo - fits alone, but not in one day with Ada Fenwick and Joss
             Tarn together; its dates run on to 2027-03-05
        """,
        DayText.of(SampleDay.of(BEST)));
  }

  @Test
  void noLineIsLongerThanATerminal() {
    DayText.of(SampleDay.of(BEST))
        .lines()
        .forEach(line -> assertTrue(line.length() <= 80, line.length() + ": " + line));
  }

  @Test
  void aDayThatIsNotProvenSaysByHowMuch() {
    // 7200 - 3500 = 3700 sixtieths = 61.7 s of driving, so at most 2 minutes.
    assertEquals(
        "could be better by at most 2 minutes of driving",
        ProofText.of(SampleDay.of(new Proof(Proof.Kind.WORK_LIMIT, 2, 3500, 10)).plan()));
    assertEquals(
        "not proven: a better plan might leave out up to 1 visit fewer; stopped by the clock",
        ProofText.of(SampleDay.of(new Proof(Proof.Kind.CLOCK_LIMIT, 1, 0, 10)).plan()));
  }
}
