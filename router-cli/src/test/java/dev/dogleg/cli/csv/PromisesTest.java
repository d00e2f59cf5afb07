package dev.dogleg.cli.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.model.Booking;
import dev.dogleg.model.Moves;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What owners were told binds the book, as if it stood in the column told. */
class PromisesTest {
  private static final String HEADER =
      "format,written,event,run,of,client,booking,date,from,to,occasion,how,send_at,file,end\n";

  @TempDir Path dir;

  private static String told(String client, String booking, String date, String span, String what) {
    return "1,2027-03-01T17:00:00-05:00,prepared,1,1,%s,%s,%s,%s,%s,text,2027-03-01T18:00:00-05:00,plan/texts.csv,.\n"
        .formatted(client, booking, date, span, what);
  }

  private ReadBook read(String bookings, String log) {
    return Folder.in(dir)
        .with("bookings.csv", "client,pet,address,breed,date,told,moves\n" + bookings)
        .with("told.csv", HEADER + log)
        .read();
  }

  private Booking only(String booking, String log) {
    ReadBook read = read(booking, log);
    assertEquals(List.of(), Folder.loud(read));
    return read.book().orElseThrow().bookings().get(0);
  }

  private static String span(Booking booking) {
    return booking.told().map(told -> told.arriveWithin().toString()).orElse("none");
  }

  @Test
  void whatWasToldBindsTheBooking() {
    Booking booking =
        only(
            "Okafor,Biscuit,12 Mill Lane,Beagle,2027-03-02,,ask\n",
            told("okafor", "okafor.biscuit@2027-03-02", "2027-03-02", "10:00,11:00", "evening"));
    assertEquals("10:00-11:00", span(booking));
    assertEquals(Moves.NEVER, booking.terms().moves(), "a told time never moves");
  }

  @Test
  void aBookingOfSeveralDaysKeepsTheDayThatWasTold() {
    Booking booking =
        only(
            "Okafor,Biscuit,12 Mill Lane,Beagle,2027-03-01..2027-03-04,,\n",
            told(
                "okafor",
                "okafor.biscuit@2027-03-01..2027-03-04",
                "2027-03-03",
                "10:00,11:00",
                "evening"));
    assertEquals("10:00-11:00", span(booking));
    assertEquals("2027-03-03", booking.dates().orElseThrow().toString());
    assertEquals("okafor.biscuit@2027-03-01..2027-03-04", booking.id(), "the id stays");
  }

  @Test
  void theNarrowerOfCellAndLogBinds() {
    String log =
        told("okafor", "okafor.biscuit@2027-03-02", "2027-03-02", "10:00,11:00", "evening");
    String row = "Okafor,Biscuit,12 Mill Lane,Beagle,2027-03-02,%s,\n";
    assertEquals("10:00-11:00", span(only(row.formatted("9:00-12:00"), log)));
    assertEquals("10:15-10:45", span(only(row.formatted("10:15-10:45"), log)));
  }

  @Test
  void whereTheyContradictEachOtherTheCellBindsAndItIsSaid() {
    ReadBook read =
        read(
            "Okafor,Biscuit,12 Mill Lane,Beagle,2027-03-02,13:00-14:00,\n",
            told("okafor", "okafor.biscuit@2027-03-02", "2027-03-02", "10:00,11:00", "evening"));
    assertEquals(List.of("LOOK bookings.csv:2:told told-otherwise"), Folder.loud(read));
    assertEquals("13:00-14:00", span(read.book().orElseThrow().bookings().get(0)));
  }

  @Test
  void thatTheVanIsLateWasToldAfterTheCellWasWritten() {
    assertEquals(
        "11:05-11:25",
        span(
            only(
                "Okafor,Biscuit,12 Mill Lane,Beagle,2027-03-02,10:00-11:00,\n",
                told("okafor", "okafor.biscuit@2027-03-02", "2027-03-02", "11:05,11:25", "late"))));
  }

  @Test
  void anAskBindsNobodyAndAnotherDayIsAnotherDay() {
    assertEquals(
        "none",
        span(
            only(
                "Okafor,Biscuit,12 Mill Lane,Beagle,2027-03-02,,\n",
                told("okafor", "okafor.biscuit@2027-03-02", "2027-03-02", "10:00,11:00", "ask"))));
    assertEquals(
        "none",
        span(
            only(
                "Okafor,Biscuit,12 Mill Lane,Beagle,2027-03-03,,\n",
                told(
                    "okafor",
                    "okafor.biscuit@2027-03-02",
                    "2027-03-02",
                    "10:00,11:00",
                    "evening"))));
  }

  @Test
  void aRowOfSomebodyWhoWasToldIsNeverSetAsideSilently() {
    ReadBook read =
        read(
            """
            Okafor,Biscuit,12 Mill Lane,Beagle,2027-03-02,,sometimes
            Lindqvist,Pepper,3 Station Road,Beagle,2027-03-02,,sometimes
            """,
            told("okafor", "okafor.biscuit@2027-03-02", "2027-03-02", "10:00,11:00", "evening"));
    assertEquals(
        List.of(
            "STOP bookings.csv:2:moves unknown-moves", "ASIDE bookings.csv:3:moves unknown-moves"),
        Folder.loud(read));
  }
}
