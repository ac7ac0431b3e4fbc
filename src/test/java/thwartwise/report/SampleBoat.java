package thwartwise.report;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.boat.ConfirmedMeasurement;
import thwartwise.files.boat.BoatFile;
import thwartwise.inspection.Report;
import thwartwise.record.InspectionRecord;
import thwartwise.record.SampleRecords;

/** The boat of the golden pages. */
final class SampleBoat {
  private SampleBoat() {}

  static Boat boat() {
    return BoatFile.parse(resource("files/soup-ladle.json"), "soup.json");
  }

  /** The same with a doubt that was kept, told as {@link #KEPT}. */
  static Boat withKept() {
    return boat()
        .withConfirmedMeasurements(
            List.of(new ConfirmedMeasurement("station:middle", "hit a stone, bent inward")));
  }

  static final String KEPT =
      """
      * Looks wrong, but was kept as measured: station "middle". Reason given: hit a
        stone, bent inward.
      """;

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
