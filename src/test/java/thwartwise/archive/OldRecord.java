package thwartwise.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** Records as earlier versions of the program wrote them. */
final class OldRecord {
  private OldRecord() {}

  static String json() throws IOException {
    return text("record-before-chains.json");
  }

  /** One that had a place in a chain and did not vouch for its pages. */
  static String beforePapers() throws IOException {
    return text("record-before-papers.json");
  }

  private static String text(String name) throws IOException {
    try (var in = OldRecord.class.getResourceAsStream("/thwartwise/files/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
