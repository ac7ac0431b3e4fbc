package thwartwise.walk.questions;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thwartwise.boat.Opening;
import thwartwise.measure.ChoiceReader;

/** The kind of an opening as a person sees it, which decides what is asked of it. */
public enum OpeningKind {
  NOTCH("notch", Sketches.NOTCH, "motor notch", "cut-out", "transom cut-out"),
  OAR_NOTCH("oar notch", Sketches.OAR_NOTCH, "side notch", "rowlock notch"),
  DRAIN("drain", Sketches.DRAIN, "bung", "plug", "drain hole"),
  DECK_HATCH(
      "deck hatch",
      Sketches.DECK_HATCH,
      "hatch in the deck",
      "pocket",
      "screw-in pocket",
      "deck plate"),
  FACE_HATCH("face hatch", Sketches.FACE_HATCH, "hatch in a face", "locker door"),
  CABLE_HOLE("cable hole", Sketches.CABLE_HOLE, "hole", "wire", "cable", "hole for a cable"),
  OTHER("other", Sketches.EDGE, "case", "centreboard case", "well", "something else");

  /** Within this distance of the hull's own figure a tape shows no difference, m. */
  private static final double TAPE = 0.001;

  private final String word;
  private final List<String> sketch;
  private final String[] spellings;

  OpeningKind(String word, List<String> sketch, String... spellings) {
    this.word = word;
    this.sketch = sketch;
    this.spellings = spellings;
  }

  public String word() {
    return word;
  }

  List<String> sketch() {
    return sketch;
  }

  /** Whether it is measured by its diameter and the height of its middle. */
  boolean isRound() {
    return this == DRAIN || this == CABLE_HOLE;
  }

  /**
   * Whether it is cut down from the edge of the boat: nothing closes it, and it leads into the
   * boat.
   */
  boolean isNotch() {
    return this == NOTCH || this == OAR_NOTCH;
  }

  boolean isHatch() {
    return this == DECK_HATCH || this == FACE_HATCH;
  }

  /** The title of a row with its measurements. */
  String title() {
    return this == OTHER
        ? "Opening"
        : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }

  /** The measurements that are asked, in this order, after the question where it leads. */
  List<String> order() {
    return switch (this) {
      case NOTCH -> List.of("name", "to port", "up", "length");
      case OAR_NOTCH -> List.of("name", "forward", "side", "up", "length");
      case DRAIN, CABLE_HOLE -> List.of("name", "forward", "to port", "up", "diameter", "shut by");
      case DECK_HATCH, FACE_HATCH ->
          List.of("name", "forward", "to port", "up", "width", "shut by");
      case OTHER -> List.of("name", "forward", "to port", "up", "length", "shut by", "across");
    };
  }

  static ChoiceReader<OpeningKind> choices() {
    ChoiceReader<OpeningKind> choices = ChoiceReader.of(NOTCH, NOTCH.word, NOTCH.spellings);
    for (OpeningKind kind : Arrays.asList(values()).subList(1, values().length)) {
      choices = choices.or(kind, kind.word, kind.spellings);
    }
    return choices;
  }

  /** The kind of an opening in a boat file; "other" if all measurements are needed. */
  public static OpeningKind of(Opening opening, Outline outline) {
    boolean open = opening.closedBy().isEmpty() && opening.into().isEmpty();
    double x = opening.middle().x();
    if (opening.diameter().equals(Optional.of(opening.width()))) {
      return opening.into().isPresent() ? CABLE_HOLE : DRAIN;
    }
    if (opening.diameter().isPresent() || !open) {
      return OTHER;
    }
    if (opening.athwart()) {
      boolean atTheEnd = Math.abs(x - outline.aftEndAt(opening.middle().z())) <= TAPE;
      return atTheEnd ? NOTCH : OTHER;
    }
    boolean atTheRail = Math.abs(Math.abs(opening.middle().y()) - outline.railAt(x)) <= TAPE;
    return atTheRail ? OAR_NOTCH : OTHER;
  }
}
