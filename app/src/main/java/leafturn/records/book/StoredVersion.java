package leafturn.records.book;

import java.time.Instant;

/**
 * A version of a sheet as it stands in its row: neither read as its kind nor checked.
 *
 * @param kind name of its kind
 * @param id UUID in lower case
 * @param version 1 for the first
 * @param withdrawn true when it did not count in this version
 * @param writtenAt when it was written
 * @param writtenBy who wrote it
 * @param document its content as a JSON document
 */
public record StoredVersion(
    String kind,
    String id,
    int version,
    boolean withdrawn,
    Instant writtenAt,
    String writtenBy,
    String document) {}
