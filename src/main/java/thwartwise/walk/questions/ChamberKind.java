package thwartwise.walk.questions;

import java.util.List;
import java.util.Locale;
import thwartwise.boat.Chamber;
import thwartwise.geometry.Span;
import thwartwise.measure.ChoiceReader;

/** The place of a chamber in the boat, which decides which of its limits are asked. */
public enum ChamberKind {
  BOW("bow", "bow locker", Sketches.BOW_CHAMBER),
  STERN("stern", "stern locker", Sketches.STERN_CHAMBER),
  THWART("thwart", "thwart box", Sketches.THWART_CHAMBER),
  SIDE("side", "side seat", Sketches.SIDE_CHAMBER),
  BLOCK("block", "block", Sketches.BOX);

  private final String word;
  private final String usualName;
  private final List<String> sketch;

  ChamberKind(String word, String usualName, List<String> sketch) {
    this.word = word;
    this.usualName = usualName;
    this.sketch = sketch;
  }

  public String word() {
    return word;
  }

  /** The usual name of such a chamber. */
  String usualName() {
    return usualName;
  }

  List<String> sketch() {
    return sketch;
  }

  /** The title of a row with its limits. */
  String title() {
    return usualName.substring(0, 1).toUpperCase(Locale.ROOT) + usualName.substring(1);
  }

  /** The limits that are asked, in this order. */
  List<String> order() {
    return switch (this) {
      case BOW, STERN -> List.of("name", "bulkhead", "down to", "top");
      case THWART -> List.of("name", "aft face", "fore face", "down to", "top");
      case SIDE ->
          List.of("name", "side", "aft end", "fore end", "face from middle", "down to", "top");
      case BLOCK -> List.of("name", "aft", "fore", "starboard", "port", "down to", "up to", "twin");
    };
  }

  static ChoiceReader<ChamberKind> choices() {
    return ChoiceReader.of(BOW, BOW.word, "bow locker", "fore locker", "foredeck", "fore")
        .or(STERN, STERN.word, "stern locker", "aft locker", "aft", "stern seat")
        .or(THWART, THWART.word, "thwart box", "box under a thwart")
        .or(SIDE, SIDE.word, "side seat", "side tank", "side bench", "bench")
        .or(BLOCK, BLOCK.word, "other", "box", "something else");
  }

  /** The kind of a chamber in a boat file; a block if all of its limits are needed. */
  public static ChamberKind of(Chamber chamber, Outline outline) {
    Span x = chamber.box().x();
    Span y = chamber.box().y();
    if (isToTheSide(y, outline) || isToTheSide(y.mirrored(), outline)) {
      return SIDE;
    }
    if (!y.equals(Span.ALL) || chamber.mirrored()) {
      return BLOCK;
    }
    boolean toTheAftEnd = x.from() <= outline.aft();
    boolean toTheForeEnd = x.to() >= outline.fore();
    if (toTheAftEnd && toTheForeEnd) {
      return BLOCK;
    }
    return toTheForeEnd ? BOW : toTheAftEnd ? STERN : THWART;
  }

  /** A chamber between a face on this side and the hull. */
  private static boolean isToTheSide(Span y, Outline outline) {
    return y.from() >= 0 && y.to() >= outline.halfBeam();
  }
}
