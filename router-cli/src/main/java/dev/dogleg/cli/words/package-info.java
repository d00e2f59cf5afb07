/**
 * The small grammars of single cells: times, dates, minutes, money, weights, phones, points.
 *
 * <p><b>What it is.</b> Each class reads one kind of cell and answers with a {@link
 * dev.dogleg.cli.words.Reading}: a value, remarks, or both. {@link
 * dev.dogleg.cli.words.WhenGrammar} is the largest; all grammars stand in {@code docs/FORMATS.md}.
 *
 * <p><b>Needs.</b> {@code fault}, {@code model}; libphonenumber for phones. <b>Promises.</b> No
 * text makes anything here throw; what a spreadsheet did to a cell is recognised and said; whatever
 * was guessed is remarked on. <b>Costs.</b> One pass over the cell.
 *
 * <p><b>Where it comes from.</b> ISO 8601 dates and times, ISO 4217 exponents, E.164 phone numbers,
 * RFC 5870 points; the words of {@code when} are common practice, no source.
 */
package dev.dogleg.cli.words;
