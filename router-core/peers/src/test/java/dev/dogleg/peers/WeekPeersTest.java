package dev.dogleg.peers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.ortools.Loader;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.week.CustomaryWeeks;
import dev.dogleg.plan.week.WeekPlanner;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The peers read a small week as we do, and find nothing better than what is proven best. */
class WeekPeersTest {
  private static WeekRequest week;
  private static WeekPlan plan;

  static Stream<WeekPeer> peers() {
    return Stream.of(new RoutingPeer(), new RuinPeer());
  }

  @BeforeAll
  static void planTheWeek() {
    Loader.loadNativeLibraries();
    week = CustomaryWeeks.week(3, new CustomaryWeeks.Shape(14, 1, 1.15, false, 1_000_000_000L));
    plan = WeekPlanner.plan(week);
    assertEquals(Proof.Kind.PROVEN_BEST, plan.proof().kind());
  }

  @ParameterizedTest
  @MethodSource("peers")
  void aPeersWeekIsSoundPricedAlikeAndNoBetter(WeekPeer peer) {
    List<List<Integer>> orders = peer.search(week, 1, 1);
    JudgedWeek judged = JudgedWeek.of(week, orders);
    assertEquals(List.of(), judged.breaches());
    PeerLegs legs = new PeerLegs(week);
    long told = orders.stream().filter(order -> !order.isEmpty()).mapToLong(legs::costOf).sum();
    assertEquals(told, judged.costSixtieths(), "the objective given to the peer");
    assertTrue(judged.leftOut() >= plan.leftOutCounted());
    assertTrue(
        judged.leftOut() > plan.leftOutCounted() || judged.costSixtieths() >= plan.costSixtieths());
  }
}
