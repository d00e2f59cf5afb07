package dev.dogleg.groom.learn;

/**
 * A visit left out because it is unlike everything else.
 *
 * @param visit the visit
 * @param leastMinutes of a hundred such visits one or two take less, by what the others say
 * @param mostMinutes of a hundred such visits one or two take more
 */
public record OddVisit(LoggedVisit visit, int leastMinutes, int mostMinutes) {}
