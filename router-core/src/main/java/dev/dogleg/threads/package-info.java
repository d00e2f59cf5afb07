/**
 * Work that two threads share.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.threads.FromBothEnds} works out a list whose members do
 * not depend on each other, so that somebody who waits for an answer waits half as long where a
 * second processor is free.
 *
 * <p><b>Needs.</b> Members that any thread may work out. <b>Promises.</b> The same list, and the
 * same exception, as one thread alone gives; when it returns no thread is left at work.
 * <b>Costs.</b> One thread a list; none where there is one processor.
 *
 * <p><b>Where it comes from.</b> {@code java.util.concurrent.FutureTask}, which runs once whoever
 * comes first.
 */
package dev.dogleg.threads;
