package dev.dogleg.groom.learn;

/**
 * How far estimates were off on visits that were not learned from.
 *
 * @param visits how many
 * @param errorBeforeMinutes mean absolute error of the tables' median with the card's pace
 * @param errorAfterMinutes the same of the learned median
 * @param insideBefore how many lay between the tables' tenth and ninetieth percentile; 80 of 100
 *     should
 * @param insideAfter the same with the learned values
 */
public record HeldBackScore(
    int visits,
    double errorBeforeMinutes,
    double errorAfterMinutes,
    int insideBefore,
    int insideAfter) {}
