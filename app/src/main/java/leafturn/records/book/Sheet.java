package leafturn.records.book;

import java.time.Instant;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;

/**
 * Something the book keeps, in one of its versions.
 *
 * @param id UUID in lower case
 * @param kind what it is
 * @param version 1 for the first, one more for each change
 * @param withdrawn true when it no longer counts; it stays in the book all the same
 * @param writtenAt when this version was written
 * @param writtenBy who wrote it
 * @param content what it says
 */
public record Sheet<C extends Content>(
    String id,
    Kind<C> kind,
    int version,
    boolean withdrawn,
    Instant writtenAt,
    String writtenBy,
    C content) {}
