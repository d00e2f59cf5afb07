package dev.dogleg.audit;

/**
 * Seconds at which a place may be left: every one from {@code fromSeconds} to {@code toSeconds}.
 *
 * @param fromSeconds first second
 * @param toSeconds last second, not before the first
 */
record Span(int fromSeconds, int toSeconds) {}
