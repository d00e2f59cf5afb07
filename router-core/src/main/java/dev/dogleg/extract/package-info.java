/**
 * The map file as it lies on disk, before anybody reads it.
 *
 * <p><b>What it is.</b> An {@link dev.dogleg.extract.Extract}: a path and the checksum by which
 * caches of {@code roads} and {@code address} know it.
 *
 * <p><b>Needs.</b> A file. <b>Promises.</b> The checksum is worked out once, however many ask.
 * <b>Costs.</b> One pass over the bytes.
 *
 * <p><b>Where it comes from.</b> SHA-256, FIPS 180-4.
 */
package dev.dogleg.extract;
