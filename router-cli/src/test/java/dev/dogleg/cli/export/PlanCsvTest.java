package dev.dogleg.cli.export;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.itinerary.Proof;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

/** plan.csv to the letter. */
class PlanCsvTest {
  private static final Proof BEST = new Proof(Proof.Kind.PROVEN_BEST, 2, 7200, 10);

  @Test
  void everyEventIsARow() {
    String expected =
        """
        date,groomer,van,stop,kind,booking,client,pets,address,lat,lon,arrive,start,leave,drive_minutes,drive_km,wait_minutes,groom_minutes,spare_minutes,note
        2027-03-02,robin,van-1,,leave,,,,1 Yard Lane,-30.500000,-20.250000,08:00:00,08:00:00,08:00:00,,,,,5.00,"plan format 1; seed 7; no plan can beat this"
        2027-03-02,robin,van-1,1,visit,a1,Ada Fenwick,Mop,"14 Quay Street, Old Harbour",-30.510000,-20.260000,08:10:30,08:15:00,09:05:00,10.50,4.215,4.50,50.00,8.33,
        2027-03-02,robin,van-1,,break,a1,,,"14 Quay Street, Old Harbour",-30.510000,-20.260000,09:05:00,09:05:00,09:35:00,0.00,0.000,0.00,,20.57,
        2027-03-02,robin,van-1,2,visit,"b1;b2",Joss Tarn,"Pip;Squeak","The Long Barn at the Far End of Upper Withering Lane, North Moor",-30.520000,-20.270000,09:45:00,09:45:00,10:45:00,10.00,3.000,0.00,60.00,21.67,told 09:30-10:00
        2027-03-02,robin,van-1,,home,,,,1 Yard Lane,-30.500000,-20.250000,10:55:00,10:55:00,10:55:00,10.00,5.055,0.00,,333.33,
        """;
    assertEquals(expected.replace("\n", "\r\n"), PlanCsv.text(PlanRows.of(SampleDay.of(BEST))));
  }

  @Test
  void onTheDayClocksGoForwardTheWallClockIsWritten() {
    // 28 March 2027 in Berlin: 02:00 becomes 03:00, so 8 h after midnight the clock shows 09:00.
    PlannedDay day =
        SampleDay.of(BEST, ZoneId.of("Europe/Berlin"), LocalDate.of(2027, 3, 28), "Ada");
    assertEquals("09:00:00", PlanRows.of(day).get(0).leave());
  }

  @Test
  void aNameThatLooksLikeAFormulaIsGuarded() {
    PlannedDay day =
        SampleDay.of(BEST, ZoneId.of("UTC"), LocalDate.of(2027, 3, 2), "=HYPERLINK(\"x\")");
    assertEquals(true, PlanCsv.text(PlanRows.of(day)).contains(",\"'=HYPERLINK(\"\"x\"\")\",Mop,"));
  }
}
