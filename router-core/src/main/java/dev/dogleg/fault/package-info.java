/**
 * Faults in what a person gave us: collected, never reported one at a time.
 *
 * <p><b>What it is.</b> A {@link dev.dogleg.fault.Fault} says where something stands (file, row,
 * column), what was seen there, what was expected and what to do. A {@link dev.dogleg.fault.Faults}
 * collects them for a whole run.
 *
 * <p><b>Needs.</b> Nothing. <b>Promises.</b> Faults keep the order in which they were found;
 * nothing here throws for bad input of a user. <b>Costs.</b> One small object a fault.
 *
 * <p><b>Where it comes from.</b> The fault report of a row-oriented reader is common practice;
 * three severities follow from the exit codes of the command line.
 */
package dev.dogleg.fault;
