package dev.dogleg.groom.learn;

import dev.dogleg.groom.GroomEstimator;
import dev.dogleg.groom.GroomQuestion;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.StopQuestions;
import dev.dogleg.groom.TableTime;
import dev.dogleg.model.Book;
import dev.dogleg.model.BookedPet;
import dev.dogleg.model.Groomer;
import dev.dogleg.model.Pet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A groomed visit with the question of each groom as it stood on its day, and what the tables say.
 *
 * @param visit the visit
 * @param grooms one question a pet
 * @param tables what the tables say of each
 * @param furtherSeconds between the grooms: fixed seconds for each pet after the first
 */
record AskedVisit(
    LoggedVisit visit, List<GroomQuestion> grooms, List<TableTime> tables, int furtherSeconds) {
  AskedVisit {
    grooms = List.copyOf(grooms);
    tables = List.copyOf(tables);
  }

  /** {@return the tables' minutes from the first start to the last end} */
  double tableMinutes() {
    return groomMinutes() + furtherSeconds / 60.0;
  }

  /** {@return the tables' minutes of the grooms alone} */
  double groomMinutes() {
    return tables.stream().mapToDouble(TableTime::minutes).sum();
  }

  /**
   * Asks for every visit that is done.
   *
   * @param visits any order and outcome; a cut-short visit counts as a groom before the next one
   * @param plain tables without anything learned
   * @param book groomers and pets, holding those of the visits
   * @return done visits, by date, then by row
   */
  static List<AskedVisit> all(List<LoggedVisit> visits, GroomTables plain, Book book) {
    StopQuestions questions = new StopQuestions(plain, book.business());
    GroomEstimator estimator = new GroomEstimator(plain);
    Map<String, Pet> pets = book.petsById();
    Map<String, Groomer> groomers =
        book.business().groomers().stream()
            .collect(Collectors.toMap(Groomer::id, groomer -> groomer));
    Map<String, LocalDate> last = new HashMap<>();
    List<AskedVisit> asked = new ArrayList<>();
    for (LoggedVisit visit : inOrder(visits)) {
      if (visit.groomSeconds() == 0) {
        continue;
      }
      List<GroomQuestion> grooms = new ArrayList<>();
      for (BookedPet booked : visit.pets()) {
        Pet pet = pets.get(booked.petId());
        Optional<LocalDate> before =
            Optional.ofNullable(last.put(pet.id(), visit.date())).or(pet::lastGroomed);
        grooms.add(
            questions.byLook(
                groomers.get(visit.groomerId()),
                booked,
                pet,
                visit.date(),
                before.filter(day -> day.isBefore(visit.date()))));
      }
      if (visit.outcome() == VisitOutcome.DONE) {
        asked.add(
            new AskedVisit(
                visit,
                grooms,
                grooms.stream().map(estimator::table).toList(),
                (grooms.size() - 1) * book.business().extraPetSeconds()));
      }
    }
    return asked;
  }

  static List<LoggedVisit> inOrder(List<LoggedVisit> visits) {
    return visits.stream()
        .sorted(Comparator.comparing(LoggedVisit::date).thenComparing(LoggedVisit::where))
        .toList();
  }
}
