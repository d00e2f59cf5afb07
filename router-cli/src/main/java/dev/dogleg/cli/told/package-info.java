/**
 * What owners were told: the log {@code told.csv} of a book, and handing texts over so that a crash
 * neither tells twice nor forgets.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.cli.told.ToldLog} reads and lengthens the log; {@link
 * dev.dogleg.cli.told.ToldBook} answers what was told last, who wants no texts, what was answered;
 * {@link dev.dogleg.cli.told.HandOver} puts the files of a run into place in steps, each of which
 * may be the last.
 *
 * <p><b>Needs.</b> {@code export} (files for their owner only, cells), {@code model}, {@code
 * fault}. <b>Promises.</b> The log only grows; a row is on the disk before what it speaks of is in
 * anybody's hands; a line that a crash tore is passed over and said. <b>Costs.</b> The log is read
 * whole, at most 20 MB.
 *
 * <p><b>Where it comes from.</b> Writing ahead what is about to be done is common practice of
 * databases; moving a file into place is one step on POSIX file systems ({@code rename}, IEEE Std
 * 1003.1).
 */
package dev.dogleg.cli.told;
