package dev.dogleg.address;

/**
 * One place that a reading of the typed words leads to.
 *
 * @param basis map object that names street, postcode and town
 * @param number number to show
 * @param at packed place
 * @param grade how well it is known
 * @param fit how it stands to the locality typed
 * @param estimateMetres how far the door may be
 * @param computed whether the place was computed rather than read off the map object
 * @param spelledAsTyped whether the street was read as typed
 * @param reason in words
 */
record Candidate(
    Hit basis,
    String number,
    long at,
    Grade grade,
    Locality.Fit fit,
    int estimateMetres,
    boolean computed,
    boolean spelledAsTyped,
    String reason) {}
