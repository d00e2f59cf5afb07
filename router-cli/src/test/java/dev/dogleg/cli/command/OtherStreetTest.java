package dev.dogleg.cli.command;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A house that stands behind another street than its own: the van is put on its own street where
 * that is near, else the fault says which door is meant and where the van was put.
 */
class OtherStreetTest {
  @TempDir Path folder;

  /** Mill Lane from west to east, Oak Road 400 m north of it, a link between their east ends. */
  private String check(int northMetres) throws IOException {
    String map =
        "<osm version=\"0.6\">"
            + node(1, 0, 0, "")
            + node(2, 800, 0, "")
            + node(3, 0, 400, "")
            + node(4, 800, 400, "")
            + node(5, 100, -20, house("1"))
            + node(6, 300, northMetres, house("5"))
            + way(10, "Mill Lane", 1, 2)
            + way(11, "Oak Road", 3, 4)
            + way(12, "Link Street", 2, 4)
            + "</osm>";
    Files.writeString(folder.resolve("town.osm"), map);
    Files.writeString(
        folder.resolve("business.yaml"),
        """
        name: Test Grooming
        country: US
        time_zone: Etc/UTC
        weight_unit: kg
        map: town.osm
        vans:
          - name: Bluebell
        groomers:
          - name: Marlo
            home: 1 Mill Lane
            hours: {mon: "8:00-17:00"}
        """);
    Files.writeString(
        folder.resolve("bookings.csv"),
        """
        client,pet,address,breed,weight,coat,minutes,date
        Ansel Oak,Moss,5 mill ln,poodle,6,curly,60,2027-03-01
        """);
    TestRun run = TestRun.of("check", folder.toString());
    return String.join(" ", run.out().lines().map(String::strip).toList());
  }

  private static String node(int id, int eastMetres, int northMetres, String tags) {
    return "<node id=\"%d\" lat=\"%.6f\" lon=\"%.6f\">%s</node>"
        .formatted(id, northMetres * 9e-6, eastMetres * 9e-6, tags);
  }

  private static String house(String number) {
    return tag("addr:housenumber", number) + tag("addr:street", "Mill Lane");
  }

  private static String way(int id, String name, int from, int to) {
    return "<way id=\"%d\"><nd ref=\"%d\"/><nd ref=\"%d\"/>%s%s</way>"
        .formatted(id, from, to, tag("highway", "residential"), tag("name", name));
  }

  private static String tag(String key, String value) {
    return "<tag k=\"" + key + "\" v=\"" + value + "\"/>";
  }

  @Test
  void theFaultSaysWhichDoorIsMeant() throws IOException {
    // 390 m from its own street, 10 m from Oak Road.
    String out = check(390);
    assertTrue(
        out.contains(
            "bookings.csv:2:address: \"5 mill ln\" means the door Mill Lane 5, but the nearest"
                + " road is Oak Road, 10 m away: the van was put there"),
        out);
    assertTrue(out.contains("[other-street]"), out);
  }

  @Test
  void itsOwnStreetWinsWhereBothAreNear() throws IOException {
    assertFalse(check(30).contains("other-street"));
  }
}
