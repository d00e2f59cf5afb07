/**
 * The commands.
 *
 * <p><b>What it is.</b> One class a command: read, collect all faults, stop if one is fatal, one
 * call into the core, audit, export, exit code. {@link dev.dogleg.cli.command.Main} starts the
 * process, {@link dev.dogleg.cli.command.CommandTree} holds the commands together.
 *
 * <p><b>Needs.</b> {@code prepare}, {@code export}, {@code console}; picocli. <b>Promises.</b> Exit
 * codes as {@link dev.dogleg.cli.console.ExitCode} names them; nothing is written before the audit
 * has passed the plan; the only layer that is given a clock. <b>Costs.</b> Those of what it calls.
 *
 * <p><b>Where it comes from.</b> The contract stands in {@code README.md} and {@code
 * docs/FORMATS.md}.
 */
package dev.dogleg.cli.command;
