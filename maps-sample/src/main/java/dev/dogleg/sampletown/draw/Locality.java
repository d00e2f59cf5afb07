package dev.dogleg.sampletown.draw;

/**
 * What an address says besides street and number.
 *
 * @param suburb district of the town, empty outside
 * @param city town or village
 * @param postcode invented
 */
public record Locality(String suburb, String city, String postcode) {}
