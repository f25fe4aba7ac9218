package leafturn.reports.calendar;

import java.time.Instant;
import java.time.LocalDate;

/**
 * Something that falls on a whole day, in no time zone.
 *
 * @param uid names it for good, whatever else of it changes: a UUID
 * @param sequence never falls, and rises when its day changes
 * @param madeAt when it came to stand as it does
 * @param day the day
 * @param summary what it is, in one line
 * @param description more about it; may have several lines
 */
record DayEvent(
    String uid, long sequence, Instant madeAt, LocalDate day, String summary, String description) {}
