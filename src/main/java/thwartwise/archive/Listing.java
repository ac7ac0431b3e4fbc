package thwartwise.archive;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import thwartwise.json.IoErrorText;
import thwartwise.json.Location;

/** The entries of a folder, by name; none where there is no folder. */
final class Listing {
  private Listing() {}

  /**
   * The entries with such names.
   *
   * @param names as in *.json
   */
  static List<Path> of(Path folder, String names) {
    List<Path> found = new ArrayList<>();
    if (!Files.isDirectory(folder)) {
      return found;
    }
    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, names)) {
      all.forEach(found::add);
    } catch (IOException e) {
      throw Location.whole(folder.toString())
          .fault(e, "cannot be read: %s. Check the folder.", IoErrorText.of(e));
    }
    Collections.sort(found);
    return found;
  }
}
