package thwartwise.shell;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import thwartwise.boat.Boat;
import thwartwise.files.BoatFile;

/** The invented boat that comes with the program. */
final class DemoBoat {
  private static final String RESOURCE = "/thwartwise/demo-boat.json";

  private DemoBoat() {}

  static Boat read() {
    return BoatFile.parse(json(), "the demo boat");
  }

  private static String json() {
    try (InputStream in = DemoBoat.class.getResourceAsStream(RESOURCE)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
