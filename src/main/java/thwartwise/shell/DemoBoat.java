package thwartwise.shell;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;

/** The invented boat that comes with the program. */
final class DemoBoat {
  private static final String RESOURCE = "/thwartwise/demo-boat.json";

  private static final String WRITTEN_TEST_DATE = "2026-10-03";

  private DemoBoat() {}

  /** Its leak tests were made some weeks ago, whenever that is: a demo must not grow stale. */
  static Boat asOf(LocalDate today) {
    String tested = today.minusWeeks(6).toString();
    return BoatFile.parse(json().replace(WRITTEN_TEST_DATE, tested), "the demo boat");
  }

  private static String json() {
    try (InputStream in = DemoBoat.class.getResourceAsStream(RESOURCE)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
