/**
 * Minutes for one groom and for one stop: a distribution, not a number.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.groom.GroomTables} hold the trade's tables (minutes by
 * service, size and coat; what adds minutes; breeds, services and the words people use for them).
 * {@link dev.dogleg.groom.GroomEstimator} answers a {@link dev.dogleg.groom.GroomQuestion} with a
 * {@link dev.dogleg.groom.GroomEstimate}, and the pets of one door with a {@link
 * dev.dogleg.groom.StopEstimate}; every number of an answer has a {@link
 * dev.dogleg.groom.BasisLine} that says where it comes from.
 *
 * <p><b>Needs.</b> Rows of tables ({@link dev.dogleg.groom.TableRow}); {@link
 * dev.dogleg.groom.StarterTables} brings the ones of the folder {@code seeds}. A business lays its
 * own rows over them. <b>Promises.</b> An unknown breed, size or coat is never refused: a usual
 * value is taken, the spread grows by what else it could be, and the answer says that it is a
 * guess. Nothing is random here; the same question has the same answer. Tables are immutable and
 * may be read by any number of threads. <b>Costs.</b> A few microseconds a question; reading the
 * starter tables once takes tens of milliseconds.
 *
 * <p><b>Where it comes from.</b> Minutes: see the provenance of each row. Lognormal durations: by
 * analogy with surgery (Strum and others, Anesthesiology 98, 2003; May, Strum and Vargas, Decision
 * Sciences 31, 2000); no distribution of grooming times was found published. Sum of several grooms:
 * moments matched, L. F. Fenton, <i>The sum of log-normal probability distributions in scatter
 * transmission systems</i>, IRE Transactions on Communications Systems 8, 1960.
 */
package dev.dogleg.groom;
