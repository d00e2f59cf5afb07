package dev.dogleg.groom.learn;

/**
 * How much of an effect is in an observation.
 *
 * @param effect number of the effect
 * @param size how much of it, not 0
 */
record Load(int effect, double size) {}
