package thwartwise.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** A record as the program wrote it before there were chains. */
final class OldRecord {
  private OldRecord() {}

  static String json() throws IOException {
    try (var in =
        OldRecord.class.getResourceAsStream("/thwartwise/files/record-before-chains.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
