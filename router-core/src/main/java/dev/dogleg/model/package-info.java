/**
 * The trade's nouns.
 *
 * <p><b>What it is.</b> Clients, pets, places, bookings, groomers, vans, days, the business:
 * immutable records that check themselves, and the closed word lists of the trade. Groomer and van
 * are two things.
 *
 * <p><b>Needs.</b> {@code fault}, {@code time}. <b>Promises.</b> What was built is consistent;
 * nobody re-checks later. <b>Costs.</b> Nothing but memory.
 *
 * <p><b>Where it comes from.</b> The trade's own words; each stands in {@code docs/GLOSSARY.md}.
 */
package dev.dogleg.model;
