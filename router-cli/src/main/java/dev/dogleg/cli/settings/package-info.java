/**
 * The business card.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.cli.settings.CardReader} reads {@code business.yaml} into
 * a {@link dev.dogleg.cli.settings.Card}: the {@link dev.dogleg.model.Business}, how its tables are
 * written, and a list of what is in force and where it comes from.
 *
 * <p><b>Needs.</b> {@code fault}, {@code model}, {@code itinerary} (prices); snakeyaml-engine's
 * node tree, so that every fault has its line. <b>Promises.</b> All faults of a card at once; a
 * fault in a card stops the run; defaults are listed, never silent. <b>Costs.</b> A card is a few
 * dozen lines; one beyond 200,000 characters is refused.
 *
 * <p><b>Where it comes from.</b> YAML 1.2 (core schema) without its type guessing: {@code no},
 * {@code 01234} and {@code +1555} stay text until the key says what they are.
 */
package dev.dogleg.cli.settings;
