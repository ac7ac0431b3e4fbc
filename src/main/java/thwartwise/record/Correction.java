package thwartwise.record;

/**
 * That a record takes the place of an older one which was wrong. The older one stays where it is.
 *
 * @param number of the older record in the chain of the boat
 * @param record name of its file, without the ending
 * @param hash of its content
 * @param because why, in the words of whoever corrects it
 */
public record Correction(int number, String record, String hash, String because) {}
