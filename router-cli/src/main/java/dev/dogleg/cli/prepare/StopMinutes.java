package dev.dogleg.cli.prepare;

import dev.dogleg.groom.GroomEstimator;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.ServiceTime;
import dev.dogleg.groom.StopEstimate;
import dev.dogleg.groom.StopQuestions;
import dev.dogleg.itinerary.ServiceSpread;
import dev.dogleg.model.Book;
import dev.dogleg.model.Groomer;
import dev.dogleg.model.Pet;
import java.time.LocalDate;
import java.util.Map;

/** Minutes of a stop, from the groom tables and the book. */
final class StopMinutes {
  private final StopQuestions questions;
  private final GroomEstimator estimator;
  private final Map<String, Pet> pets;
  private final int planPermille;

  StopMinutes(GroomTables tables, Book book) {
    this.questions = new StopQuestions(tables, book.business());
    this.estimator = new GroomEstimator(tables);
    this.pets = book.petsById();
    this.planPermille = book.business().planPercent() * 10;
  }

  StopEstimate of(Groomer groomer, DayStop stop, LocalDate date) {
    return estimator.stop(questions.of(groomer, stop.client(), stop.bookings(), pets, date));
  }

  /** {@return how much a stop's service varies} */
  static ServiceSpread spread(StopEstimate estimate) {
    ServiceTime time = estimate.time();
    return new ServiceSpread(time.fixedSeconds(), time.medianSeconds(), time.logSpread());
  }

  /** {@return seconds to plan a stop with: the card's quantile of its minutes} */
  int plannedSeconds(StopEstimate estimate) {
    return estimate.plannedSeconds(planPermille);
  }
}
