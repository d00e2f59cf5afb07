package dev.dogleg.arrival;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DaySpread;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.ServiceSpread;
import dev.dogleg.itinerary.Visit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ContinuousSampler;
import org.apache.commons.rng.sampling.distribution.LogNormalSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** Lives through a planned day once with drawn grooms and drives: the check of what is reckoned. */
final class SampledDay {
  private final DayRequest request;
  private final List<PlannedStop> stops;
  private final DaySpread day;
  private final ContinuousSampler normal;
  private final ContinuousSampler leg;
  private final Map<String, ContinuousSampler> grooms = new HashMap<>();
  private final Map<String, ServiceSpread> services;
  private final Map<String, Integer> notBefore = new HashMap<>();
  private final List<String> doors = new ArrayList<>();

  SampledDay(
      DayRequest request,
      List<PlannedStop> stops,
      Map<String, ServiceSpread> services,
      DaySpread day,
      UniformRandomProvider random) {
    this.request = request;
    this.stops = stops;
    this.services = services;
    this.day = day;
    this.normal = ZigguratSampler.NormalizedGaussian.of(random);
    this.leg = LogNormalSampler.of(normal::sample, 0, day.legLogSpread());
    for (PlannedStop stop : stops) {
      if (stop.kind() == PlannedStop.Kind.VISIT) {
        doors.add(stop.visitId());
        ServiceSpread spread = services.get(stop.visitId());
        double shared = Math.pow(day.paceLogSpread(), 2);
        double whole = Math.pow(spread.logSpread(), 2);
        double own = Math.sqrt(Math.max(whole - shared, whole / 4));
        grooms.put(
            stop.visitId(),
            LogNormalSampler.of(normal::sample, Math.log(spread.medianSeconds()), own));
      }
    }
    for (Visit visit : request.visits()) {
      notBefore.put(visit.id(), visit.arriveWithin().get(0).fromSeconds());
    }
  }

  /** No service at a door starts before a second. */
  void told(String visitId, int seconds) {
    notBefore.put(visitId, seconds);
  }

  List<String> doors() {
    return doors;
  }

  /**
   * One day.
   *
   * @param arrivals filled with the arrival at each door, in the order of the day
   * @return seconds waited at doors
   */
  double draw(double[] arrivals) {
    double common = normal.sample();
    double now = stops.get(0).leaveSeconds();
    int at = stops.get(0).place();
    int door = 0;
    double waited = 0;
    boolean known = false;
    for (PlannedStop stop : stops) {
      if (stop.place() != at) {
        int plain = request.travel().driveSeconds(at, stop.place(), (int) Math.round(now));
        now += plain * leg.sample() * Math.exp(day.trafficLogSpread() * common);
        at = stop.place();
        known = false;
      }
      switch (stop.kind()) {
        case BREAK -> {
          boolean before = door < doors.size() && stop.visitId().equals(doors.get(door));
          if (before) {
            arrivals[door] = now;
            known = true;
          }
          now =
              Math.max(now, request.shift().breakRule().orElseThrow().startWithin().fromSeconds());
          now += request.shift().breakRule().orElseThrow().lengthSeconds();
        }
        case VISIT -> {
          if (!known) {
            arrivals[door] = now;
          }
          known = false;
          waited += Math.max(0, notBefore.get(stop.visitId()) - now);
          now = Math.max(now, notBefore.get(stop.visitId()));
          now += services.get(stop.visitId()).fixedSeconds();
          now += grooms.get(stop.visitId()).sample() * Math.exp(day.paceLogSpread() * common);
          door++;
        }
        default -> {
          // Home is left and reached without more.
        }
      }
    }
    return waited;
  }
}
