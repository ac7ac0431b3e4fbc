package thwartwise.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import thwartwise.json.Location;

/** A page saved where the user wants it. It may only replace an older page of ours. */
public final class PageFile {
  private static final String OWN = "<title>";

  private PageFile() {}

  /**
   * Writes the page.
   *
   * @param page a whole HTML file; what comes before its title is the same in every page of ours
   */
  public static void write(Path target, String page) {
    Path whole = target.toAbsolutePath();
    Location spot = Location.whole(target.toString());
    if (isAmongRecords(whole)) {
      throw spot.fault("records are kept in this folder. Name a file in another one.");
    }
    if (Files.exists(whole, LinkOption.NOFOLLOW_LINKS) && !isOurs(whole, page)) {
      throw spot.fault("is there already and is no page of this program. Name another file.");
    }
    AtomicFile.write(whole, page);
  }

  /**
   * Whether the file is a page of a record. Such a page begins like any other, so its folder
   * decides.
   */
  private static boolean isAmongRecords(Path file) {
    Path folder = file.getParent();
    return Files.exists(folder.resolve(ChainFile.NAME))
        || Files.exists(folder.resolve(BoatsList.NAME))
        || Listing.of(folder, "[0-9]*" + StoredInspection.ENDING).stream()
            .map(record -> StoredInspection.bare(record.getFileName().toString()))
            .anyMatch(record -> file.getFileName().toString().startsWith(record));
  }

  private static boolean isOurs(Path file, String page) {
    byte[] start = page.substring(0, page.indexOf(OWN)).getBytes(StandardCharsets.UTF_8);
    if (!Files.isRegularFile(file)) {
      return false;
    }
    try (var in = Files.newInputStream(file)) {
      return Arrays.equals(start, in.readNBytes(start.length));
    } catch (IOException e) {
      return false;
    }
  }
}
