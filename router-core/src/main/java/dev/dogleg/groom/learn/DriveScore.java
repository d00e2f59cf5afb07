package dev.dogleg.groom.learn;

/**
 * How well planned drives fit those of the log, on the drives learned from.
 *
 * @param drives how many
 * @param errorBeforeMinutes mean absolute error of the planned minutes
 * @param errorAfterMinutes the same with the learned factors
 */
public record DriveScore(int drives, double errorBeforeMinutes, double errorAfterMinutes) {}
