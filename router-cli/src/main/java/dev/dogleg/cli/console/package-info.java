/**
 * What a run says, shows and ends with.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.cli.console.Console} writes results to standard output,
 * faults and progress to standard error; {@link dev.dogleg.cli.console.Progress} is a bar on a
 * terminal and plain lines elsewhere; {@link dev.dogleg.cli.console.ExitCode} names the seven ends
 * of a run.
 *
 * <p><b>Needs.</b> The progress bar library. <b>Promises.</b> Nothing here reads input or decides
 * anything. <b>Costs.</b> A bar redraws five times a second.
 *
 * <p><b>Where it comes from.</b> Results and messages on two streams are common practice of command
 * lines.
 */
package dev.dogleg.cli.console;
