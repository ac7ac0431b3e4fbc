package thwartwise.record;

/**
 * One of the pages that lie next to a record, as the record holds it.
 *
 * @param ending of its file's name, after the name of the record
 * @param hash SHA-256 of its content
 */
public record PaperHash(String ending, String hash) {}
