package dev.dogleg.address;

/**
 * What the words beside street and number say.
 *
 * @param locality postcodes and towns
 * @param streetLonger whether a word beside the street's words makes it another street
 * @param beside whether the text describes a place beside an address
 * @param abroad whether a country was typed that the map does not show
 * @param besideStreet whether a word that means nothing stands beside the street's words
 * @param unexplained how many words mean nothing here
 */
record Rest(
    Locality locality,
    boolean streetLonger,
    boolean beside,
    boolean abroad,
    boolean besideStreet,
    int unexplained) {

  boolean contradicts() {
    return streetLonger || beside || abroad;
  }
}
