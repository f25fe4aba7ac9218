package leafturn.records.archive;

/**
 * A file in an archive.
 *
 * @param name its path in the archive
 * @param derived true when it repeats what other members hold, for other programs to read
 * @param count number of sheets, days, people or entries in it
 * @param bytes its size, bytes
 * @param sha256 SHA-256 of its bytes in hexadecimal
 */
public record ArchiveMember(String name, boolean derived, long count, long bytes, String sha256) {}
