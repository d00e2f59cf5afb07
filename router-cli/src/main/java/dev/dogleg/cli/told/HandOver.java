package dev.dogleg.cli.told;

import dev.dogleg.cli.export.OwnerFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Hands the files of one run over, in four steps of which each may be the last.
 *
 * <ol>
 *   <li>{@link #stage}: the files are written beside their place. Cut short after it: nothing was
 *       told; the next run prepares anew.
 *   <li>{@link #prepare}: the log says what is about to be told, in one piece. Cut short within it:
 *       the run is void. After it: the next run takes step three and four for it.
 *   <li>{@link #move}: the files are moved into place. This is the handing over, one step for each
 *       file: what is still beside its place was not handed over, what is not was.
 *   <li>{@link #mark}: the log says so.
 * </ol>
 *
 * <p>A file of an earlier run that lies in the place is kept under another name: whether it was
 * sent is not known.
 */
public final class HandOver {
  private final Path book;
  private final Path file;
  private final int run;
  private ToldLog log;

  /**
   * Hands over one run.
   *
   * @param book the book folder; the log lies in it
   * @param log its log
   * @param file where the texts shall lie; the page lies beside it under the same name
   * @param run number of the run
   */
  public HandOver(Path book, ToldLog log, Path file, int run) {
    this.book = Objects.requireNonNull(book, "book").toAbsolutePath().normalize();
    this.log = Objects.requireNonNull(log, "log");
    this.file = Objects.requireNonNull(file, "file").toAbsolutePath().normalize();
    this.run = run;
  }

  /**
   * The page beside a file of texts.
   *
   * @param file for example {@code texts.csv}
   * @return for example {@code texts.html}
   */
  public static Path page(Path file) {
    return named(file, "", ".html");
  }

  /**
   * First step: writes the files beside their place.
   *
   * @param texts the file of texts
   * @param page the page
   * @throws IOException where they cannot be written
   */
  public void stage(String texts, String page) throws IOException {
    Files.createDirectories(folder());
    OwnerFile.create(beside(file), texts);
    OwnerFile.create(beside(page(file)), page);
    OwnerFile.flushFolder(folder());
  }

  /**
   * Second step: the log says what is about to be told.
   *
   * @param client whose visits, in the order of {@code told}
   * @param told what is about to be told, at least one
   * @param now when
   * @throws IOException where the log cannot be written
   */
  public void prepare(List<String> client, List<ToldRow.Told> told, OffsetDateTime now)
      throws IOException {
    String place = file.startsWith(book) ? book.relativize(file).toString() : file.toString();
    List<ToldRow> rows = new ArrayList<>();
    for (int i = 0; i < told.size(); i++) {
      rows.add(
          new ToldRow(
              now,
              ToldEvent.PREPARED,
              run,
              told.size(),
              client.get(i),
              Optional.of(told.get(i)),
              place.replace('\\', '/')));
    }
    log = log.append(rows);
  }

  /**
   * Third step: moves into place what lies beside it.
   *
   * @return files that were moved, none where this was done before
   * @throws IOException where one cannot be moved
   */
  public List<Path> move() throws IOException {
    List<Path> moved = new ArrayList<>();
    for (Path place : List.of(page(file), file)) {
      if (Files.exists(beside(place))) {
        if (Files.exists(place)) {
          OwnerFile.moveInto(place, named(place, "-before-run-" + run, extension(place)));
        }
        OwnerFile.moveInto(beside(place), place);
        moved.add(place);
      }
    }
    if (!moved.isEmpty()) {
      OwnerFile.flushFolder(folder());
    }
    return List.copyOf(moved);
  }

  /**
   * Fourth step: the log says that the run was handed over.
   *
   * @param now when
   * @return the log
   * @throws IOException where it cannot be written
   */
  public ToldLog mark(OffsetDateTime now) throws IOException {
    log =
        log.append(
            List.of(new ToldRow(now, ToldEvent.HANDED_OVER, run, 0, "", Optional.empty(), "")));
    return log;
  }

  /**
   * Finishes runs that were cut short after the second step.
   *
   * @param book the book folder
   * @param log its log
   * @param now when
   * @return what was finished, and the log after it
   * @throws IOException where it cannot be done
   */
  public static Finished finish(Path book, ToldLog log, OffsetDateTime now) throws IOException {
    ToldLog longer = log;
    List<Path> moved = new ArrayList<>();
    List<ToldRow> open = ToldBook.of(log.rows()).open();
    for (int run : new TreeSet<>(open.stream().map(ToldRow::run).toList())) {
      ToldRow row = open.stream().filter(one -> one.run() == run).findFirst().orElseThrow();
      HandOver rest = new HandOver(book, longer, book.resolve(row.file()), run);
      moved.addAll(rest.move());
      longer = rest.mark(now);
    }
    return new Finished(longer, open, moved);
  }

  /**
   * What was finished of earlier runs.
   *
   * @param log the log after it
   * @param rows what those runs had prepared
   * @param moved files that are in place only now
   */
  public record Finished(ToldLog log, List<ToldRow> rows, List<Path> moved) {
    /** Copies the lists. */
    public Finished {
      Objects.requireNonNull(log, "log");
      rows = List.copyOf(rows);
      moved = List.copyOf(moved);
    }
  }

  private Path folder() {
    return Objects.requireNonNull(file.getParent(), "a file lies in a folder");
  }

  private Path beside(Path place) {
    return folder().resolve("." + place.getFileName() + ".run-" + run + ".part");
  }

  private static String extension(Path place) {
    String name = place.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(dot) : "";
  }

  private static Path named(Path place, String more, String extension) {
    String name = place.getFileName().toString();
    String stem = name.substring(0, name.length() - extension(place).length());
    return place.resolveSibling(stem + more + extension);
  }
}
