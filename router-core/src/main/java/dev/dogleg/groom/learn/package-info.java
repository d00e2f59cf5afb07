/**
 * Learning: a groomer's own minutes and drive times out of the visit log.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.groom.learn.VisitLearner} turns {@link
 * dev.dogleg.groom.learn.LoggedVisit}s into {@link dev.dogleg.groom.Learned} values, by partial
 * pooling: what a pet's few visits say is drawn towards what its breed, coat and service say, that
 * towards the groomer's pace, and that towards the tables. {@link dev.dogleg.groom.learn.HeldBack}
 * says how far estimates were off before and after, on visits that were not learned from.
 *
 * <p><b>Needs.</b> The book, its tables without anything learned, visits that are sound each in
 * itself. <b>Promises.</b> No visits: nothing learned, every estimate is the tables'. Few visits
 * change little. A visit unlike everything else (a typing error) is left out and named; one that is
 * rather odd counts less. Cut-short visits say only that it would have taken longer: they are not
 * used. The same visits give the same values, bit for bit. <b>Costs.</b> Some passes over the log:
 * under a second for ten thousand visits.
 *
 * <p><b>Where it comes from.</b> Shrinkage towards a common mean: W. James and C. Stein, 1961; B.
 * Efron and C. Morris, <i>Data analysis using Stein's estimator and its generalizations</i>,
 * Journal of the American Statistical Association 70, 1975. Random effects and their equations: C.
 * R. Henderson, <i>Best linear unbiased estimation and prediction under a selection model</i>,
 * Biometrics 31, 1975. Their variances: A. P. Dempster, N. M. Laird and D. B. Rubin, <i>Maximum
 * likelihood from incomplete data via the EM algorithm</i>, Journal of the Royal Statistical
 * Society B 39, 1977. Lognormal durations and pooling of sparse ones: surgery (D. P. Strum, J. H.
 * May and L. G. Vargas, Anesthesiology 92, 2000; F. Dexter and J. Ledolter, Anesthesiology 103,
 * 2005). Bounded influence: P. J. Huber, <i>Robust estimation of a location parameter</i>, Annals
 * of Mathematical Statistics 35, 1964. All from memory.
 */
package dev.dogleg.groom.learn;
