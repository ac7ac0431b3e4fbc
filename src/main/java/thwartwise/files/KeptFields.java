package thwartwise.files;

import java.util.Arrays;
import java.util.stream.Collectors;
import thwartwise.boat.Kept;
import thwartwise.plausibility.DoubtId;
import thwartwise.plausibility.Topic;
import thwartwise.record.Printable;
import tools.jackson.databind.node.ObjectNode;

/** A measurement that looks wrong and was kept with a reason. */
final class KeptFields {
  static final String[] KEYS = {"about", "reason"};
  private static final String ABOUT = "Copy it from the page that says what looks wrong.";
  private static final String REASON = "Write why the measurement is right.";

  private KeptFields() {}

  static Kept read(Fields kept) {
    String about = kept.text("about", ABOUT);
    if (DoubtId.parse(about).isEmpty()) {
      throw kept.spot()
          .fault("\"about\" is %s, wanted one of %s. %s", Printable.quoted(about), known(), ABOUT);
    }
    return new Kept(about, kept.text("reason", REASON));
  }

  private static String known() {
    return Arrays.stream(Topic.values())
        .map(topic -> topic.isNamed() ? topic.key() + ":NAME" : topic.key())
        .collect(Collectors.joining(", "));
  }

  static ObjectNode write(Kept kept) {
    return JsonText.object().put("about", kept.about()).put("reason", kept.reason());
  }
}
