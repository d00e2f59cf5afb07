package dev.dogleg.cli.prepare;

import dev.dogleg.address.Grade;
import dev.dogleg.address.LookUp;
import dev.dogleg.cli.export.InexactAddress;
import dev.dogleg.cli.export.InexactText;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Book;
import dev.dogleg.model.Client;
import dev.dogleg.model.Groomer;
import dev.dogleg.model.Place;
import java.util.ArrayList;
import java.util.List;

/** Goes through all addresses of a book, also of clients without an open booking. */
public final class AddressReview {
  private final LookUps lookUps;
  private final List<InexactAddress> inexact = new ArrayList<>();
  private int asked;

  private AddressReview(LookUps lookUps) {
    this.lookUps = lookUps;
  }

  /**
   * Lists the addresses that the map does not know to the door; pins and corrected addresses are
   * not looked up.
   *
   * @param book the book
   * @param lookUps looks them up
   * @param rows where they stand
   * @return lines for a person, worst first; empty where all are exact
   */
  public static List<String> of(Book book, LookUps lookUps, RowFinder rows) {
    AddressReview review = new AddressReview(lookUps);
    for (Groomer groomer : book.business().groomers()) {
      review.see(
          groomer.name() + ", home",
          groomer.home(),
          DoorSource.home(rows.home(groomer.id())).address());
    }
    for (Client client : book.clients()) {
      review.see(
          client.name(), client.place(), DoorSource.client(rows.client(client.id())).address());
    }
    return InexactText.of(review.inexact, review.asked);
  }

  private void see(String who, Place place, Where where) {
    if (place.pin().isEmpty()) {
      asked++;
      LookUp answer = lookUps.of(place.address());
      if (answer.grade() != Grade.EXACT) {
        inexact.add(new InexactAddress(who, place.address(), where, answer));
      }
    }
  }
}
