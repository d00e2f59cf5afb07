/**
 * Calendar files for owners who want them.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.cli.ics.OwnerCalendar} writes the told visits of one
 * owner as one file; {@link dev.dogleg.cli.ics.CalendarEntry} is such a visit.
 *
 * <p><b>Needs.</b> The calendar library, which is loaded only where a file is asked for.
 * <b>Promises.</b> An owner's file holds that owner's visits and nothing of anybody else; same
 * input, same bytes; the same visit keeps its identifier. <b>Costs.</b> Loading the library takes
 * some tenths of a second.
 *
 * <p><b>Where it comes from.</b> iCalendar, RFC 5545.
 */
package dev.dogleg.cli.ics;
