package thwartwise.archive;

import java.nio.file.Files;
import java.nio.file.Path;
import thwartwise.json.InputFile;
import thwartwise.record.Chain.ChainList;

/** The list of a boat's records, {@code chain.list}, next to them. */
record ChainFile(Path path) {
  static final String NAME = "chain.list";

  boolean exists() {
    return Files.exists(path);
  }

  ChainList list() {
    return text().list();
  }

  ChainText text() {
    return exists()
        ? new ChainText(
            true,
            InputFile.bytes(path, "a list of records", InputFile.RECORD_BYTES),
            path.toString())
        : ChainText.none(path.toString());
  }
}
