package dev.dogleg.cli.tell;

import dev.dogleg.model.HowToTell;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.apache.commons.text.StringEscapeUtils;

/**
 * A page with one link per text, one per call, and what to say through the neighbour.
 *
 * <p>Everything that comes from the book is escaped, and the page forbids itself scripts, styles
 * from elsewhere and any request.
 */
public final class TextsPage {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

  private TextsPage() {}

  /**
   * The page.
   *
   * @param all who is to hear something
   * @return HTML
   */
  public static String text(List<ToTell> all) {
    StringBuilder page =
        new StringBuilder(
            """
            <!DOCTYPE html>
            <html lang="en">
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'">
            <meta name="viewport" content="width=device-width">
            <title>To tell</title>
            <h1>To tell</h1>
            <p>Look at this while parked, never while driving. Texts and calls go out from 8:00 to 21:00.</p>
            """);
    part(page, all, HowToTell.TEXT, "Texts");
    part(page, all, HowToTell.CALL, "Calls");
    part(page, all, HowToTell.NEIGHBOUR, "Through the neighbour");
    return page.append("</html>\n").toString();
  }

  private static void part(StringBuilder page, List<ToTell> all, HowToTell how, String title) {
    List<ToTell> some = all.stream().filter(one -> one.how() == how).toList();
    if (some.isEmpty()) {
      return;
    }
    page.append("<h2>").append(title).append("</h2>\n<ol>\n");
    for (ToTell one : some) {
      page.append("<li>from ")
          .append(TIME.format(one.sendAt()))
          .append(": ")
          .append(who(one))
          .append("<br>")
          .append(escaped(one.message()))
          .append("</li>\n");
    }
    page.append("</ol>\n");
  }

  private static String who(ToTell one) {
    String name = escaped(one.door().client().name());
    String remark = one.remark().isEmpty() ? "" : " (" + escaped(one.remark()) + ")";
    if (one.door().client().phone().isEmpty() || one.how() == HowToTell.NEIGHBOUR) {
      return name + remark;
    }
    String phone = one.door().client().phone().get();
    String link =
        one.how() == HowToTell.TEXT ? SmsLink.text(phone, one.message()) : SmsLink.call(phone);
    return "<a href=\"" + escaped(link) + "\">" + name + "</a>" + remark;
  }

  private static String escaped(String text) {
    return StringEscapeUtils.escapeHtml4(text);
  }
}
