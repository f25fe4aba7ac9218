/** Calendars as iCalendar text (RFC 5545) of our own making. */
@NullMarked
package leafturn.reports.calendar;

import org.jspecify.annotations.NullMarked;
