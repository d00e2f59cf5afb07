package dev.dogleg.groom;

/**
 * One cell of the table of groom times.
 *
 * @param minutes median of the groom, minutes
 * @param spreadNew standard deviation of the logarithm for a pet not known yet
 * @param spreadKnown the same for a known pet
 * @param provenance where the row comes from
 */
record TimeCell(int minutes, double spreadNew, double spreadKnown, String provenance) {}
