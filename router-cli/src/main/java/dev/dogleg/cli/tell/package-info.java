/**
 * What to say to whom: from visits with a span to texts, calls and silence.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.cli.tell.Telling} decides who hears what; {@link
 * dev.dogleg.cli.tell.Phrases} holds the templates and words of each language; {@link
 * dev.dogleg.cli.tell.TextSize} counts segments; {@link dev.dogleg.cli.tell.TextsCsv} and {@link
 * dev.dogleg.cli.tell.TextsPage} write what is handed over. The format stands in {@code
 * docs/formats-texts.md}.
 *
 * <p><b>Needs.</b> {@code told} (what was told before), {@code model}, {@code fault}; the template
 * library. <b>Promises.</b> The clock is an argument; no text outside 8:00 to 21:00; nothing but
 * names, date, span, business and groomer can stand in a message; whose time did not change gets no
 * second text. <b>Costs.</b> Linear in the visits.
 *
 * <p><b>Where it comes from.</b> 3GPP TS 23.038 (alphabet, segments), RFC 5724 (links), 47 CFR
 * 64.1200 (hours, words that end texts).
 */
package dev.dogleg.cli.tell;
