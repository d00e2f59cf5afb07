package dev.dogleg.groom.learn;

import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.Learned;
import dev.dogleg.groom.LearnedRow;
import dev.dogleg.model.Book;
import dev.dogleg.model.BookedPet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Learns a groomer's own minutes and drive times from the visit log; see the package's page.
 *
 * <p>Immutable; may be used again and again.
 */
public final class VisitLearner {
  private final GroomTables tables;
  private final Book book;
  private final LearnSettings settings;

  /**
   * A learner for a book.
   *
   * @param tables tables in force; what was learned before is not looked at
   * @param book card and pets
   * @param settings how much the log is trusted
   */
  public VisitLearner(GroomTables tables, Book book, LearnSettings settings) {
    this.tables = tables.with(Learned.NONE);
    this.book = Objects.requireNonNull(book, "book");
    this.settings = Objects.requireNonNull(settings, "settings");
  }

  /**
   * Learns.
   *
   * @param visits the log; any order; groomers and pets are those of the book
   * @param until last day that counts; later visits are passed over
   * @return what they teach
   */
  public Lesson learn(List<LoggedVisit> visits, LocalDate until) {
    List<LoggedVisit> past =
        AskedVisit.inOrder(visits.stream().filter(v -> !v.date().isAfter(until)).toList());
    List<AskedVisit> asked = AskedVisit.all(past, tables, book);
    List<LearnedRow> rows = new ArrayList<>();
    List<OddVisit> odd = List.of();
    if (!asked.isEmpty()) {
      GroomLesson lesson = new GroomLesson(GroomPool.of(asked, book, until, settings));
      rows.addAll(lesson.rows());
      odd = lesson.odd();
    }
    DriveLesson drives = DriveLesson.of(past, until, settings);
    rows.addAll(drives.rows());
    List<LoggedVisit> left = odd.stream().map(OddVisit::visit).toList();
    long pets =
        asked.stream()
            .map(AskedVisit::visit)
            .filter(visit -> !left.contains(visit))
            .flatMap(visit -> visit.pets().stream())
            .map(BookedPet::petId)
            .distinct()
            .count();
    return new Lesson(Learned.of(rows), asked.size() - odd.size(), (int) pets, odd, drives.score());
  }

  GroomTables tables() {
    return tables;
  }

  Book book() {
    return book;
  }
}
