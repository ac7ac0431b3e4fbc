package thwartwise.report;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import thwartwise.boat.Boat;
import thwartwise.files.BoatFile;
import thwartwise.inspection.Report;
import thwartwise.record.InspectionRecord;
import thwartwise.record.SampleRecords;

/** The boat of the golden pages. */
final class SampleBoat {
  private SampleBoat() {}

  static Boat boat() {
    return BoatFile.parse(resource("files/soup-ladle.json"), "soup.json");
  }

  static InspectionRecord record(Report report) {
    return SampleRecords.of(boat(), report);
  }

  static String resource(String name) {
    try (InputStream in = SampleBoat.class.getResourceAsStream("/thwartwise/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(name, e);
    }
  }
}
