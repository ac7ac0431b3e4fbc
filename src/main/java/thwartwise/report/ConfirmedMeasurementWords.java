package thwartwise.report;

import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.boat.ConfirmedMeasurement;
import thwartwise.plausibility.PlausibilityId;

/** What looks wrong and was kept with a reason, one sentence each. */
final class ConfirmedMeasurementWords {
  private ConfirmedMeasurementWords() {}

  static List<String> of(Boat boat) {
    return boat.confirmedMeasurements().stream().map(ConfirmedMeasurementWords::of).toList();
  }

  private static String of(ConfirmedMeasurement kept) {
    String what =
        PlausibilityId.parse(kept.about()).map(PlausibilityWords::of).orElse(kept.about());
    return "Looks wrong and was kept as measured: " + what + ". Reason given: " + kept.reason();
  }
}
