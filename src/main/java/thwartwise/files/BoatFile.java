package thwartwise.files;

import java.nio.file.Path;
import thwartwise.boat.Boat;

/** The boat file, {@code thwartwise/boat/1}. */
public final class BoatFile {
  private BoatFile() {}

  public static Boat read(Path file) {
    throw new UnsupportedOperationException("not built yet: " + file);
  }

  public static Boat parse(String json, String where) {
    throw new UnsupportedOperationException("not built yet: " + json + where);
  }

  public static String write(Boat boat) {
    throw new UnsupportedOperationException("not built yet: " + boat);
  }
}
