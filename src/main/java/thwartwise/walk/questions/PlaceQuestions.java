package thwartwise.walk.questions;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Pattern;
import thwartwise.boat.NamedSide;
import thwartwise.boat.Place;
import thwartwise.boat.Place.Posture;
import thwartwise.geometry.Span;
import thwartwise.measure.ChoiceReader;
import thwartwise.measured.PartProperties;
import thwartwise.walk.engine.OrderedLengths;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.QuestionTopic;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Warning;
import thwartwise.walk.engine.WordQuestions;

/** Questions for the places where people sit, kneel or stand; at least one. */
public final class PlaceQuestions {
  /** The error allowed for a tape across two rails. */
  private static final double LEEWAY = 0.01;

  /** A seat lower than this above the floor is no seat, m (judgement). */
  private static final double SEAT = 0.10;

  /** Names of places where people stand or kneel. */
  private static final String[] ORDER = {"name", "across", "forward", "height", "reach", "people"};

  private static final Pattern FOOTING =
      Pattern.compile("stand|kneel|knelt|deck|platform", Pattern.CASE_INSENSITIVE);

  private final Replay replay;
  private final QuantityQuestions quantities;
  private final Outline outline;
  private final SeatHeightWarnings heights;

  public PlaceQuestions(
      Replay replay, QuantityQuestions quantities, Outline outline, SeatHeightWarnings heights) {
    this.replay = replay;
    this.quantities = quantities;
    this.outline = outline;
    this.heights = heights;
  }

  public List<Place> places(Consumer<List<Place>> known) {
    return new RepeatedQuestion(replay, "place", "place", "")
        .inRows("Place", ORDER)
        .atLeastOne(this::place, known);
  }

  private Place place(String key, List<Place> before) {
    String name = name(key, before);
    String subject = "Place " + WordQuestions.quoted(name);
    return switch (lies(key, subject, name)) {
      case ACROSS -> across(key, subject, name);
      case PORT -> along(key, subject, name, 1);
      case STARBOARD -> along(key, subject, name, -1);
      case AREA -> area(key, subject, name);
    };
  }

  /** The position of a place seen from above. */
  private enum Lies {
    ACROSS,
    PORT,
    STARBOARD,
    AREA
  }

  private Lies lies(String key, String subject, String name) {
    return replay.ask(
        WordQuestions.choice(key + ".lies", subject + ", lies", LIES)
            .how(
                "across: a thwart from side to side. port, starboard: a bench along that side.",
                "area: a bow seat, a deck or a floor that people sit all over.")
            .show(Sketches.PLACES)
            .why("Two on a bench along one side can lay a boat over; on a thwart they do not.")
            .within(lies -> otherSide(name, lies)));
  }

  private static final ChoiceReader<Lies> LIES =
      ChoiceReader.of(Lies.ACROSS, "across", "thwart")
          .or(Lies.PORT, "port", "left")
          .or(Lies.STARBOARD, "starboard", "right")
          .or(Lies.AREA, "area");

  /** Doubts a name that speaks of a side if the place lies elsewhere. */
  private static Optional<Warning> otherSide(String name, Lies lies) {
    return NamedSide.of(name)
        .filter(side -> !isOn(side, lies))
        .map(
            side ->
                new Warning(
                    "%s is named for a side; people on a seat %s are counted %s."
                        .formatted(
                            WordQuestions.quoted(name),
                            lies == Lies.ACROSS || lies == Lies.AREA
                                ? "across the boat"
                                : "to " + lies.name().toLowerCase(Locale.ROOT),
                            lies == Lies.ACROSS || lies == Lies.AREA
                                ? "about the middle line"
                                : "on that side"),
                    side == NamedSide.EITHER ? Optional.empty() : Optional.of(side.word()),
                    true));
  }

  private static boolean isOn(NamedSide side, Lies lies) {
    return switch (side) {
      case PORT -> lies == Lies.PORT;
      case STARBOARD -> lies == Lies.STARBOARD;
      case EITHER -> lies == Lies.PORT || lies == Lies.STARBOARD;
    };
  }

  private Place across(String key, String subject, String name) {
    double x = along(key, subject);
    double z = up(key, subject, name, new Span(x, x), true);
    Posture posture = posture(key, subject, name, z);
    double out = out(key, subject, outline.railAt(x));
    return new Place(
        name, new Span(x, x), new Span(0.0 - out, out), z, people(key, subject), posture);
  }

  private Place area(String key, String subject, String name) {
    Span along = stretch(key, subject);
    double z = up(key, subject, name, along, true);
    Posture posture = posture(key, subject, name, z);
    double rail = Math.max(outline.railAt(along.from()), outline.railAt(along.to()));
    double out = out(key, subject, rail);
    return new Place(name, along, new Span(0.0 - out, out), z, people(key, subject), posture);
  }

  /** A place along one side: port (1) or starboard (−1). */
  private Place along(String key, String subject, String name, double side) {
    Span along = stretch(key, subject);
    double z = up(key, subject, name, along, false);
    Posture posture = posture(key, subject, name, z);
    Span out = fromTheMiddle(key, subject, along);
    Span across = side > 0 ? out : out.mirrored();
    return new Place(name, along, across, z, people(key, subject), posture);
  }

  private Span stretch(String key, String subject) {
    double from =
        end(key + ".x.from", subject + ", aftmost person", "aftmost", x -> Optional.empty());
    return new Span(
        from,
        end(
            key + ".x.to",
            subject + ", foremost person",
            "foremost",
            x ->
                x < from
                    ? OrderedLengths.backward(subject, from, x, quantities)
                    : Optional.empty()));
  }

  private double end(
      String key, String subject, String which, Function<Double, Optional<String>> slip) {
    return replay.ask(
        quantities
            .length(key, subject)
            .how("Tape from the aft end of the hull to the middle of whoever sits " + which + ".")
            .show(Sketches.PLACES)
            .why("People who all sit at one end of it trim the boat.")
            .unlessAmbiguous(quantities.feetOrInches(outline.aft(), outline.fore()))
            .within(quantities.length(outline.aft(), outline.fore(), "length of the hull"))
            .unless(slip));
  }

  private Span fromTheMiddle(String key, String subject, Span along) {
    double rail = Math.min(outline.railAt(along.from()), outline.railAt(along.to()));
    double in =
        replay.ask(
            quantities
                .length(key + ".y.in", subject + ", how far in")
                .how("From the middle line to the middle of whoever sits as far in as it allows.")
                .show(Sketches.PLACES)
                .why("When all lean to the other side, those here can come no farther.")
                .within(quantities.length(0, outline.halfBeam(), "half-breadth of the hull")));
    double out =
        replay.ask(
            quantities
                .length(key + ".y.out", subject + ", how far out")
                .how("From the middle line to the middle of whoever sits as far out as it allows.")
                .show(Sketches.PLACES)
                .why("People lean back on a side seat, and there they heel the boat most.")
                .within(quantities.length(0, outline.halfBeam(), "half-breadth of the hull"))
                .unless(
                    y ->
                        y < in
                            ? OrderedLengths.backward(subject, in, y, quantities)
                            : Optional.empty())
                .unless(y -> outside(subject, rail, y)));
    return new Span(in, out);
  }

  /** The posture, asked only where people may do other things than sit. */
  private Posture posture(String key, String subject, String name, double z) {
    if (z - heights.floor() >= SEAT && !FOOTING.matcher(name).find()) {
      return Posture.SITTING;
    }
    return replay.ask(
        WordQuestions.choice(PartProperties.POSTURE, new QuestionTopic(key, subject), POSTURES)
            .remark(
                posture ->
                    posture == Posture.SITTING
                        ? Optional.empty()
                        : Optional.of("its height is that of what is under them")));
  }

  private static final ChoiceReader<Posture> POSTURES =
      ChoiceReader.of(Posture.SITTING, Posture.SITTING.word(), "sit")
          .or(Posture.KNEELING, Posture.KNEELING.word(), "kneel")
          .or(Posture.STANDING, Posture.STANDING.word(), "stand");

  private String name(String key, List<Place> before) {
    QuestionDefinition<String> name =
        WordQuestions.name(
                key + ".name", "Place to sit, name", before.stream().map(Place::name).toList())
            .how(
                "Such as midships thwart, stern seat. A thwart may come on one line, with ;",
                "between: name; across; forward of the aft end; height; reach; people.")
            .why("People are put at places, and the advice calls them by name.");
    return replay.ask(name.row("Place " + (before.size() + 1), List.of(ORDER)));
  }

  private double along(String key, String subject) {
    return replay.ask(
        quantities
            .length(key + ".x", subject + ", forward of the aft end")
            .how("Tape from the aft end to the middle of the seat.")
            .why("People forward or aft trim the boat.")
            .unlessAmbiguous(quantities.feetOrInches(outline.aft(), outline.fore()))
            .within(quantities.length(outline.aft(), outline.fore(), "length of the hull")));
  }

  private double up(String key, String subject, String name, Span along, boolean middle) {
    return replay.ask(
        quantities
            .length(key + ".z", subject + ", height of the seat")
            .how(
                "From the baseline straight up to the top of the seat; kneeling or standing: to",
                "what people kneel or stand on.")
            .show(Sketches.SEAT)
            .why("High seats make a boat tender.")
            .within(
                quantities.length(heights.floor(), 1.5, "heights between the floor and any seat"))
            .within(
                z ->
                    FOOTING.matcher(name).find()
                        ? Optional.empty()
                        : heights.at(along, middle, z)));
  }

  private double out(String key, String subject, double rail) {
    return replay.ask(
        quantities
            .length(key + ".halfWidth", subject + ", " + PartProperties.HALF_WIDTH.subject())
            .worded(PartProperties.HALF_WIDTH)
            .show(Sketches.SEAT)
            .within(quantities.length(0, outline.halfBeam(), "half-breadth of the hull"))
            .unless(y -> outside(subject, rail, y)));
  }

  private Optional<String> outside(String subject, double rail, double y) {
    return y <= rail + LEEWAY
        ? Optional.empty()
        : Optional.of(
            "%s: %s out is outside the boat; the rail there is %s out. %s"
                .formatted(
                    subject,
                    quantities.show(y),
                    quantities.show(rail),
                    "Measure to the middle of the person, or go back and mend the place."));
  }

  private int people(String key, String subject) {
    return replay.ask(
        WordQuestions.whole(
                key + ".people", subject + ", " + PartProperties.PLACE_PEOPLE.subject(), 1, 8)
            .worded(PartProperties.PLACE_PEOPLE)
            .how(
                "As many as sit there at once; "
                    + quantities.either("0.45 m", "1 ft 6 in")
                    + " of seat for each."));
  }
}
