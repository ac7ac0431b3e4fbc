package thwartwise.record;

import java.nio.charset.StandardCharsets;

/**
 * One of the pages that lie next to a record.
 *
 * @param ending of its file's name, after the number of the record
 * @param content as it is written
 */
public record Paper(String ending, byte[] content) {

  public static Paper text(String ending, String content) {
    return new Paper(ending, content.getBytes(StandardCharsets.UTF_8));
  }
}
