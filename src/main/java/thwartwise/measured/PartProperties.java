package thwartwise.measured;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Opening;
import thwartwise.boat.Place;
import thwartwise.boat.Place.Posture;
import thwartwise.boat.Propulsion;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements.Skeg;

/**
 * The part of the table for points, openings, chambers, places, the drive, and the skeg. Boxes,
 * stations and leak tests are more than single values and have codecs of their own.
 */
public final class PartProperties {
  private PartProperties() {}

  public static final Property<Vector3, Double> X =
      Property.known(
          "x",
          ValueType.number(BoatQuantity.ALONG),
          point -> point.x() + 0.0,
          "Measure x forward from the aft end of the hull, in metres.");

  public static final Property<Vector3, Double> Y =
      Property.known(
          "y",
          ValueType.number(BoatQuantity.ATHWART),
          point -> point.y() + 0.0,
          "Measure y from the middle line, to port positive, in metres.");

  public static final Property<Vector3, Double> Z =
      Property.known(
          "z",
          ValueType.number(BoatQuantity.HEIGHT),
          point -> point.z() + 0.0,
          "Measure z up from the lowest point of the bottom, in metres.");

  /** The three distances of every point in the file; a mirrored zero is written without a sign. */
  public static final List<Property<Vector3, ?>> OF_POINT = List.of(X, Y, Z);

  public static final Property<Opening, Double> OPENING_WIDTH =
      Property.<Opening, Double>of(
              "width",
              ValueType.number(BoatQuantity.OPENING_WIDTH),
              opening ->
                  Optional.of(opening.width())
                      .filter(w -> !opening.diameter().equals(Optional.of(w))),
              "Measure the length of its lowest edge in metres.")
          .whenOmitted("the diameter")
          .withQuestion(
              "length of that edge",
              List.of("Tape along the lowest edge."),
              List.of("A wide opening floods at the end that dips."))
          .withChangeLabel("width");

  public static final Property<Opening, Double> OPENING_DIAMETER =
      Property.of(
              "diameter",
              ValueType.number(BoatQuantity.DIAMETER),
              Opening::diameter,
              "Measure across the hole in metres, or leave it out and give the width.")
          .whenOmitted("not round")
          .withQuestion(
              "diameter",
              List.of("Clear across the hole."),
              List.of("It decides how fast water runs in."))
          .withChangeLabel("diameter");

  public static final Property<Opening, Boolean> OPENING_ATHWART =
      Property.<Opening, Boolean>known(
              "along",
              ValueType.oneOf(
                  athwart -> athwart ? "athwart" : "fore-and-aft", new Boolean[] {true, false}),
              Opening::athwart,
              "Write which way its lowest edge runs, or leave it out.")
          .whenOmitted("athwart at either end and near the middle line")
          .withQuestion(
              "its edge runs",
              List.of("across: as in a transom. along: as in the side of a boat."),
              List.of("It decides which end of the edge dips when the boat heels."))
          .withChangeLabel("which way its edge runs");

  public static final Property<Opening, String> OPENING_CLOSED_BY =
      Property.of(
              "closedBy",
              ValueType.text(),
              Opening::closedBy,
              "Write what shuts it under way, as in bung, or leave it out.")
          .whenOmitted("it stands open")
          .withQuestion(
              "closed under way by",
              List.of("What shuts it whenever the boat is afloat; or no."),
              List.of("Only what is always in place keeps water out. In doubt: no."))
          .withChangeLabel("closed by");

  public static final Property<Opening, String> OPENING_INTO =
      Property.of(
              "into",
              ValueType.text(),
              Opening::into,
              "Name the chamber it leads into, or leave it out.")
          .whenOmitted("the boat")
          .withChangeLabel("leads into");

  public static final List<Property<Opening, ?>> OF_OPENING =
      List.of(OPENING_WIDTH, OPENING_DIAMETER, OPENING_ATHWART, OPENING_CLOSED_BY, OPENING_INTO);

  public static final Property<Filling, Filling.Kind> FILLING =
      Property.known(
              "filling",
              ValueType.oneOf(Filling.Kind::word, Filling.Kind.values()),
              Filling::kind,
              "Write what fills the chamber.")
          .withQuestion(
              "filled with",
              List.of("air: an empty space, or one with gear in it. foam: a block that fills it."),
              List.of("Air must be sealed and proven; foam must be closed-cell and fastened."));

  public static final Property<Filling.Air, Seal> SEAL =
      Property.known(
              "seal",
              ValueType.oneOf(Seal::word, Seal.values()),
              Filling.Air::seal,
              "Write proven only when a leak test was made, claimed when somebody says so, else open.")
          .withQuestion(
              "its seal is",
              List.of(
                  "proven: a leak test was done and you can say when, how, how long and by whom.",
                  "claimed: somebody says it is tight. open: it has a hole, or no lid that seals."),
              List.of(
                  "An untested chamber counts for nothing. A space that holds a battery or a",
                  "charger never counts: it is vented, not sealed."));

  public static final Property<Filling.Foam, Boolean> FOAM_KIND =
      Property.known(
              "kind",
              ValueType.oneOf(
                  closed -> closed ? "closed-cell" : "open-cell", new Boolean[] {true, false}),
              Filling.Foam::closedCell,
              "Press a wet corner: foam that drinks water is open-cell. If you do not know, write"
                  + " open-cell.")
          .withQuestion(
              "is the foam closed-cell?",
              List.of("Press a wet offcut: closed-cell foam stays dry inside. Not known: no."),
              List.of("Open-cell foam fills with water and counts for nothing."));

  public static final Property<Filling.Foam, Boolean> FOAM_FASTENED =
      Property.known(
              "fastened",
              ValueType.flag(),
              Filling.Foam::fastened,
              "Write whether the foam cannot float out.")
          .whenOmitted("loose")
          .withQuestion(
              "is the foam fastened in?",
              List.of(
                  "Pull up with both hands: it must not come out when the boat is full of water."),
              List.of("A loose block floats away and counts for nothing."));

  public static final Property<Chamber, Double> CHAMBER_LITRES =
      Property.of(
              "litres",
              ValueType.number(BoatQuantity.CHAMBER_LITRES),
              Chamber::measuredVolume,
              "Fill it with a jug, count the litres, and write the sum.")
          .whenOmitted("as large as its box")
          .withQuestion(
              "it holds",
              List.of(
                  "Count litre jugs of water, or bags of packing beads, until it is full; of",
                  "twins each by itself."),
              List.of("The smaller of drawn and measured litres counts. Left out: drawn only."));

  public static final Property<Chamber, Boolean> MIRRORED =
      Property.<Chamber, Boolean>of(
              "mirrored",
              ValueType.flag(),
              (Chamber chamber) -> Optional.of(chamber.mirrored()).filter(is -> is),
              "Write whether it stands on both sides.")
          .whenOmitted("it stands once")
          .withQuestion(
              "has it a twin?",
              List.of("yes: the same again on the other side, as in a mirror on the middle line."),
              List.of(
                  "Each has its own seal, test and litres; it is lost separately in the checks."));

  public static final Property<Chamber, Boolean> LIMBER_HOLE =
      Property.<Chamber, Boolean>of(
              "limberHole",
              ValueType.flag(),
              (Chamber chamber) -> Optional.of(chamber.limberHole()).filter(is -> is),
              "Write whether water in the bilge can run past under it.")
          .whenOmitted("it dams the bilge")
          .withChangeLabel("limber hole");

  /** The filling of a chamber and its tightness. */
  static final List<Property<?, ?>> OF_FILLING = List.of(FILLING, SEAL, FOAM_KIND, FOAM_FASTENED);

  public static final List<Property<Chamber, ?>> OF_CHAMBER =
      List.of(CHAMBER_LITRES, MIRRORED, LIMBER_HOLE);

  public static final Property<Place, Double> HALF_WIDTH =
      Property.<Place, Double>of(
              "halfWidth",
              ValueType.number(BoatQuantity.HALF_WIDTH),
              (Place place) ->
                  Optional.of(place.across().to()).filter(out -> place.isAboutTheMiddle()),
              "Measure from the middle line to the middle of somebody sitting as far out as they"
                  + " can.")
          .whenOmitted("the ends of \"y\"")
          .withQuestion(
              "reach to one side",
              List.of(
                  "From the middle line to the middle of a person who sits as far out as the",
                  "place allows."),
              List.of("Hard against one side is where a frightened crew ends up."))
          .withChangeLabel("how far out people sit");

  public static final Property<Place, Integer> PLACE_PEOPLE =
      Property.known(
              "people",
              ValueType.whole(BoatQuantity.PEOPLE),
              Place::people,
              "Write how many people fit there.")
          .withQuestion(
              "how many people",
              List.of("As many as sit there at once, 0.45 m of seat for each."),
              List.of("Nobody is counted where nobody can sit."))
          .withChangeLabel("people");

  public static final Property<Place, Posture> POSTURE =
      Property.<Place, Posture>of(
              "posture",
              ValueType.oneOf(Posture::word, Posture.values()),
              (Place place) -> Optional.of(place.posture()).filter(p -> p != Posture.SITTING),
              "Write how people are there, or leave it out: sitting.")
          .whenOmitted("sitting")
          .withQuestion(
              "posture",
              List.of("What they do there most of the time under way."),
              List.of("People who kneel or stand are higher up than those who sit."))
          .withChangeLabel("posture")
          .withLabel("people ");

  public static final List<Property<Place, ?>> OF_PLACE =
      List.of(HALF_WIDTH, PLACE_PEOPLE, POSTURE);

  public static final Property<Propulsion, Propulsion.Kind> DRIVE =
      Property.of(
              "kind",
              ValueType.oneOf(Propulsion.Kind::word, Propulsion.Kind.values()),
              Propulsion::kind,
              "Write manual for oars or paddles, outboard for a motor, sail or tow for those.")
          .withQuestion(
              "How it is driven",
              List.of(
                  "manual: oars, paddles or a pole, and no motor is ever clamped on.",
                  "outboard: any motor on the transom, petrol or electric.",
                  "sail, or tow (towing, or towed faster than a walk): nothing is recommended."),
              List.of("The published capacity formulas differ for the first two."))
          .withChangeLabel("how it is driven");

  public static final Property<Propulsion, Double> KILOWATTS =
      Property.of(
              "kilowatts",
              ValueType.number(BoatQuantity.KILOWATTS),
              Propulsion::watts,
              "Read the power on the motor and write kilowatts.")
          .whenOmitted("not an outboard")
          .withQuestion(
              "Power of the motor",
              List.of(
                  "Read it off the motor's plate. If the plate gives pounds of thrust only:",
                  "a 12 V motor draws about one ampere a pound, so take 12 W for each pound."),
              List.of("Published formulas ask for it. The motor's mass is asked later, as kit."))
          .withChangeLabel("the motor's power");

  public static final List<Property<Propulsion, ?>> OF_PROPULSION = List.of(DRIVE, KILOWATTS);

  public static final Property<Skeg, Double> SKEG_THICKNESS =
      Property.known(
          "thickness",
          ValueType.number(BoatQuantity.SKEG_THICKNESS),
          Skeg::thickness,
          "Measure across its lower edge with callipers and write metres.");

  public static final List<Property<Skeg, ?>> OF_SKEG = List.of(SKEG_THICKNESS);
}
