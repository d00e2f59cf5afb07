package dev.dogleg.plan.zone;

import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.model.Strength;
import dev.dogleg.oracle.RandomWeeks;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;

/** Small weeks by seed with zones drawn over their bookings; a booking may lie in several. */
final class RandomZones {
  private RandomZones() {}

  static ZoneWeek of(long seed, int bookings, int days, int zones) {
    WeekRequest week = RandomWeeks.week(seed, bookings, days, true);
    SplittableRandom random = new SplittableRandom(seed * 77 + zones);
    List<DayOfWeek> worked =
        week.days().stream().map(day -> day.shift().day().date().getDayOfWeek()).toList();
    String groomer = week.days().get(0).shift().groomerId();
    List<ZoneDays> drawn = new ArrayList<>();
    for (int zone = 0; zone < zones; zone++) {
      Set<DayOfWeek> now = EnumSet.noneOf(DayOfWeek.class);
      int number = 1 + random.nextInt(Math.max(1, days - 1));
      while (now.size() < number) {
        now.add(worked.get(random.nextInt(days)));
      }
      boolean stays = random.nextInt(6) == 0;
      drawn.add(
          new ZoneDays(
              "zone " + zone,
              random.nextInt(8) == 0 ? Optional.of("somebody else") : groomer(random, groomer),
              random.nextInt(3) == 0 ? Strength.MUST : Strength.rather(random.nextInt(3)),
              now,
              stays ? now : Set.copyOf(worked)));
    }
    Map<String, List<Integer>> around = new TreeMap<>();
    for (WeekBooking booking : week.bookings()) {
      List<Integer> some = new ArrayList<>();
      for (int zone = 0; zone < zones; zone++) {
        if (random.nextInt(zones) == 0) {
          some.add(zone);
        }
      }
      around.put(booking.id(), some);
    }
    return new ZoneWeek(week, drawn, around);
  }

  private static Optional<String> groomer(SplittableRandom random, String groomer) {
    return random.nextBoolean() ? Optional.of(groomer) : Optional.empty();
  }
}
