package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** House numbers in every form people type and maps bear. */
class NumberFormsTest {
  @TempDir static Path folder;
  private static AddressIndex index;

  @BeforeAll
  static void open() throws Exception {
    SmallMap map = new SmallMap();
    map.street("Mill Lane", 0, 4000, 0);
    String[] numbers = {
      "12a", "13 1/2", "14-18", "20;22", "24/3", "26bis", "28a-c", "30", "A9", "km. 5"
    };
    for (int i = 0; i < numbers.length; i++) {
      map.house(100 * i, 15, numbers[i], "Mill Lane");
    }
    map.street("94th Road", 0, 1000, 3000);
    map.house(0, 3015, "101-23", "94th Road");
    map.house(100, 3015, "101-25A", "94th Road");
    map.house(200, 3015, "12-14", "94th Road");
    index = map.open(folder);
  }

  @AfterAll
  static void close() {
    index.close();
  }

  @ParameterizedTest
  @CsvSource({
    "12a Mill Lane, 12a, EXACT",
    "12 A Mill Lane, 12a, EXACT",
    "12-a Mill Lane, 12a, EXACT",
    "12/A Mill Lane, 12a, EXACT",
    "Mill Lane 12A, 12a, EXACT",
    "12 Mill Lane, 12, INTERPOLATED",
    "12b Mill Lane, 12b, INTERPOLATED",
    "13 1/2 Mill Lane, 13 1/2, EXACT",
    "13½ Mill Lane, 13 1/2, EXACT",
    "14-18 Mill Lane, 14-18, EXACT",
    "14–18 Mill Lane, 14-18, EXACT",
    "14 - 18 Mill Lane, 14-18, EXACT",
    "16 Mill Lane, 14-18, EXACT",
    "22 Mill Lane, 20;22, EXACT",
    "Mill Lane 24/3, 24/3, EXACT",
    "Mill Lane 24, 24/3, EXACT",
    "26 bis Mill Lane, 26bis, EXACT",
    "28b Mill Lane, 28a-c, EXACT",
    "30/4 Mill Lane, 30, EXACT",
    "4/30 Mill Lane, 30, EXACT",
    "30-32 Mill Lane, 30, INTERPOLATED",
    "No. 30 Mill Lane, 30, EXACT",
    "#30 Mill Lane, 30, EXACT",
    "A9 Mill Lane, A9, EXACT",
    "Mill Lane km 5, km. 5, EXACT",
    "101-23 94th Road, 101-23, EXACT",
    "101–23 94 Rd, 101-23, EXACT",
    "10123 94th Road, 101-23, EXACT",
    "101 23 94th Road, 101-23, EXACT",
    "101-25a Ninety-Fourth Road, 101-25A, EXACT"
  })
  void isFound(String typed, String number, Grade grade) {
    LookUp answer = index.find(typed);
    assertEquals(grade, answer.grade(), answer.toString());
    assertEquals(number, answer.matches().get(0).number());
  }

  @Test
  void aCompoundNumberIsNoRange() {
    // On a street of block numbers 12-14 is one house; nothing is known of a house 12 or 13.
    assertEquals(Grade.EXACT, index.find("12-14 94th Road").grade());
    assertEquals(Grade.STREET, index.find("12 94th Road").grade());
  }

  @Test
  void numbersParse() {
    assertEquals(101, HouseNumber.of("101-23").block());
    assertEquals(23, HouseNumber.of("101-23").number());
    assertEquals(-1, HouseNumber.of("14-18").block());
    assertEquals(14, HouseNumber.of("14-18").number());
    assertEquals(7, HouseNumber.of("12-07").number());
    assertEquals("13+1/2", HouseNumber.canonical("13 1/2"));
    assertEquals(-1, HouseNumber.of("A9").number());
  }
}
