/**
 * From a book to requests: the last thing that happens before planning.
 *
 * <p><b>What it is.</b> Bookings become stops of a day, addresses become doors (pin, corrections
 * file, look-up), doors are put on roads and reported on, groom tables give minutes, and a matrix
 * of travel times joins them into one {@link dev.dogleg.itinerary.DayRequest} a groomer and day.
 *
 * <p><b>Needs.</b> {@code model}, {@code roads}, {@code address}, {@code groom}, {@code travel},
 * {@code itinerary}; a map file and a cache folder. <b>Promises.</b> What cannot be placed is set
 * aside with its fault and the rest goes on; a client with a told time is never set aside silently:
 * that fault stops the run. No straight line ever stands for a road. <b>Costs.</b> The first run on
 * a map imports it; later ones load it.
 *
 * <p><b>Where it comes from.</b> Ours.
 */
package dev.dogleg.cli.prepare;
