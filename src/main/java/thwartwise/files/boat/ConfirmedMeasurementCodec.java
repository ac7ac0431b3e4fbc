package thwartwise.files.boat;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import thwartwise.boat.ConfirmedMeasurement;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measure.PrintableText;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;
import thwartwise.plausibility.PlausibilityTopic;
import tools.jackson.databind.node.ObjectNode;

/** A measurement that looks wrong and was kept with a reason. */
final class ConfirmedMeasurementCodec {
  static final String[] KEYS = {"about", "reason", "measured"};
  private static final String ABOUT = "Copy it from the page that says what looks wrong.";
  private static final String REASON = "Write why the measurement is right.";

  private static final String MEASURED =
      "Leave it out, and the reason stands for whatever is measured.";

  private ConfirmedMeasurementCodec() {}

  static ConfirmedMeasurement read(ObjectReader kept) {
    String about = kept.text("about", ABOUT);
    if (PlausibilityId.parse(about).isEmpty()) {
      throw kept.spot()
          .fault(
              "\"about\" is %s, wanted one of %s. %s", PrintableText.quoted(about), known(), ABOUT);
    }
    Optional<String> measured =
        kept.has("measured") ? Optional.of(kept.text("measured", MEASURED)) : Optional.empty();
    return new ConfirmedMeasurement(about, kept.text("reason", REASON), measured);
  }

  private static String known() {
    return Arrays.stream(PlausibilityTopic.values())
        .map(topic -> topic.isNamed() ? topic.key() + ":NAME" : topic.key())
        .collect(Collectors.joining(", "));
  }

  static ObjectNode write(ConfirmedMeasurement kept) {
    ObjectNode node = JsonText.object().put("about", kept.about()).put("reason", kept.reason());
    kept.measured().ifPresent(measured -> node.put("measured", measured));
    return node;
  }
}
