package thwartwise.files.boat;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import thwartwise.boat.Filling.SealTest;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measure.PrintableText;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ObjectNode;

/**
 * The leak test of a chamber. An incomplete test proves nothing, so every key but the head of water
 * is required.
 */
final class SealTestCodec {
  static final String[] KEYS = {"date", "how", "minutes", "litresIn", "by", "head"};
  private static final String DATE = "Write year, month and day, as in 2026-05-02.";
  private static final String HOW = "Write what was done, as in water poured in.";
  private static final String MINUTES = "Write how long the test lasted, in minutes.";
  private static final String LITRES =
      "Empty the chamber after the test, measure the water with a jug, and write litres.";
  private static final String HEAD =
      "Write how high the water stood above the lowest point of the chamber, in metres.";
  private static final String BY = "Write who made the test.";

  private SealTestCodec() {}

  static SealTest read(ObjectReader test) {
    return new SealTest(
        date(test),
        test.text("how", HOW),
        test.number("minutes", BoatQuantity.MINUTES, MINUTES),
        test.number("litresIn", BoatQuantity.LEAKED_LITRES, LITRES),
        test.text("by", BY),
        test.has("head")
            ? Optional.of(test.number("head", BoatQuantity.TEST_HEAD, HEAD))
            : Optional.empty());
  }

  static LocalDate date(ObjectReader test) {
    return day(test, "date");
  }

  /** The day in a key. */
  static LocalDate day(ObjectReader fields, String key) {
    String typed = fields.text(key, DATE);
    try {
      return LocalDate.parse(typed);
    } catch (DateTimeException e) {
      throw fields
          .spot()
          .fault(
              "\""
                  + key
                  + "\" is "
                  + PrintableText.quoted(typed)
                  + ", which is not a day. "
                  + DATE);
    }
  }

  static ObjectNode write(SealTest test) {
    ObjectNode node =
        JsonText.object()
            .put("date", test.date().toString())
            .put("how", test.how())
            .put("minutes", test.minutes())
            .put("litresIn", test.litresIn())
            .put("by", test.by());
    test.head().ifPresent(head -> node.put("head", head));
    return node;
  }
}
