package thwartwise.files.boat;

import static thwartwise.files.boat.SchemaPart.anyOf;
import static thwartwise.files.boat.SchemaPart.day;
import static thwartwise.files.boat.SchemaPart.ends;
import static thwartwise.files.boat.SchemaPart.flag;
import static thwartwise.files.boat.SchemaPart.list;
import static thwartwise.files.boat.SchemaPart.number;
import static thwartwise.files.boat.SchemaPart.oneOf;
import static thwartwise.files.boat.SchemaPart.reference;
import static thwartwise.files.boat.SchemaPart.text;
import static thwartwise.files.boat.SchemaPart.whole;

import java.util.Arrays;
import java.util.function.Function;
import thwartwise.boat.BoatFact;
import thwartwise.boat.MeasurementKind;
import thwartwise.boat.MeasuringWay;
import thwartwise.boat.PointAnswer.PointCondition;
import thwartwise.boat.PointAnswer.PointGravity;
import thwartwise.boat.Water;
import thwartwise.json.Format;
import thwartwise.json.JsonText;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.OutfitProperties;
import thwartwise.measured.PartProperties;
import tools.jackson.databind.node.ObjectNode;

/**
 * The boat file as a JSON Schema, for editors and other programs. Single values come from the table
 * {@link BoatProperties} with type, range, unit and meaning. A schema cannot express every rule,
 * such as the order of stations or references to names, so the reader has the last word.
 */
public final class BoatSchema {
  private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";
  static final String X = "Forward of the aft end of the hull, in metres.";
  private static final String Y = "From the middle line, to port positive, in metres.";
  static final String Z = "Up from the lowest point of the bottom, in metres.";

  private BoatSchema() {}

  public static ObjectNode tree() {
    ObjectNode schema =
        JsonText.object()
            .put("$schema", DRAFT)
            .put("title", Format.BOAT.text())
            .put(
                "description",
                "A boat as it was measured: metres, kilograms, litres, degrees; x runs forward"
                    + " from the aft end, y to port, z up from the lowest point of the bottom.");
    schema.setAll(boat());
    schema.set("$defs", definitions());
    return schema;
  }

  private static ObjectNode boat() {
    SchemaPart boat =
        new SchemaPart()
            .required("format", JsonText.object().put("const", Format.BOAT.text()))
            .required("name", text("The name of the boat."))
            .required("water", choice(Water.values(), Water::word, "Which water it floats in."))
            .required("hull", hull())
            .optional("waters", waters())
            .optional("openings", list(opening(), 0))
            .optional("chambers", list(chamber(), 0))
            .optional("places", list(place(), 0))
            .optional("kit", list(kit(), 0))
            .optional("cleats", list(named(point()).object(), 0))
            .optional(OutfitCodec.ROWLOCKS, list(rowlocks(), 0))
            .optional(OutfitCodec.LEAKS, list(leak(), 0))
            .optional("aboard", list(person(), 0))
            .optional("propulsion", propulsion())
            .optional(ElectricsCodec.KEY, ElectricsSchema.electrics())
            .optional(Heights.KEY, oneOf(Heights.words(), "Which way heights are measured."))
            .optional("measuredBy", text("Who held the tape."))
            .optional(AssumptionCodec.KEY, list(assumption(), 0))
            .optional("kept", list(kept(), 0))
            .optional(ObservedTrialCodec.KEY, observedTrial())
            .optional(ProofCodec.KEY, list(ProofSchema.proof(), 0))
            .optional(MeasuringMethodCodec.KEY, list(measuringMethod(), 0))
            .optional(PointAnswerCodec.KEY, list(pointAnswer(), 0));
    BoatProperties.OF_BOAT.forEach(each -> boat.optional(each.property()));
    return boat.object();
  }

  private static ObjectNode definitions() {
    ObjectNode definitions = JsonText.object();
    definitions.set("point", point().object());
    definitions.set("test", test());
    return definitions;
  }

  private static SchemaPart point() {
    return new SchemaPart()
        .required(PartProperties.X)
        .required(PartProperties.Y)
        .required(PartProperties.Z);
  }

  static SchemaPart named(SchemaPart part) {
    return part.required("name", text("What it is called."));
  }

  private static ObjectNode hull() {
    return new SchemaPart()
        .required(BoatProperties.HULL_MASS)
        .optional(BoatProperties.OF_HULL)
        .optional("centre", reference("point"))
        .required("stations", list(station(), 3))
        .optional("decked", list(decked(), 0))
        .optional("skeg", skeg())
        .anyRequired(keys("material"), keys("density", "thickness"))
        .object();
  }

  private static ObjectNode station() {
    return named(new SchemaPart())
        .required("points", list(reference("point"), 2))
        .optional("starboard", list(reference("point"), 2))
        .object();
  }

  private static ObjectNode decked() {
    return new SchemaPart()
        .required("x", ends(BoatQuantity.ALONG, "From and to, where the rail is decked over."))
        .object();
  }

  private static ObjectNode skeg() {
    ObjectNode lower =
        new SchemaPart().required(PartProperties.X).required(PartProperties.Z).object();
    return new SchemaPart()
        .required("edge", list(lower, 2))
        .required(PartProperties.SKEG_THICKNESS)
        .object();
  }

  private static ObjectNode waters() {
    return new SchemaPart()
        .optional(BoatProperties.OF_WATERS)
        .optional("force", whole(BoatQuantity.FORCE, "Instead of wind: the Beaufort force."))
        .object();
  }

  private static ObjectNode opening() {
    return named(point())
        .optional(PartProperties.OF_OPENING)
        .anyRequired(keys("width"), keys("diameter"))
        .object();
  }

  private static ObjectNode chamber() {
    ObjectNode box =
        new SchemaPart()
            .optional("x", ends(BoatQuantity.ALONG, X))
            .optional("y", ends(BoatQuantity.ATHWART, Y))
            .optional("z", ends(BoatQuantity.HEIGHT, Z))
            .anyRequired(keys("x"), keys("y"), keys("z"))
            .object();
    return named(filling(new SchemaPart()))
        .required("box", box)
        .required(PartProperties.FILLING)
        .optional(PartProperties.MIRRORED)
        .optional(PartProperties.LIMBER_HOLE)
        .optional("twin", filling(new SchemaPart()).optional(PartProperties.FILLING).object())
        .ifThenElse("filling", "foam", keys("kind"), "seal")
        .object();
  }

  private static SchemaPart filling(SchemaPart part) {
    return part.optional(PartProperties.SEAL)
        .optional("test", reference("test"))
        .optional("repaired", day("When it was last repaired, cut or fitted with something."))
        .optional(PartProperties.CHAMBER_LITRES)
        .optional(PartProperties.FOAM_KIND)
        .optional(PartProperties.FOAM_FASTENED);
  }

  private static ObjectNode test() {
    return new SchemaPart()
        .required("date", day("When it was tested."))
        .required("how", text("What was done."))
        .required("minutes", number(BoatQuantity.MINUTES, "How long it lasted."))
        .required("litresIn", number(BoatQuantity.LEAKED_LITRES, "The water that got in."))
        .required("by", text("Who tested it."))
        .optional(
            "head", number(BoatQuantity.TEST_HEAD, "Water above the lowest point of the chamber."))
        .object();
  }

  private static ObjectNode place() {
    return named(new SchemaPart())
        .required("x", anyOf(number(BoatQuantity.ALONG, X), ends(BoatQuantity.ALONG, X)))
        .optional("y", anyOf(number(BoatQuantity.ATHWART, Y), ends(BoatQuantity.ATHWART, Y)))
        .required(PartProperties.Z)
        .required(PartProperties.PLACE_PEOPLE)
        .optional(PartProperties.OF_PLACE)
        .anyRequired(keys("y"), keys("halfWidth"))
        .object();
  }

  private static ObjectNode kit() {
    return named(new SchemaPart())
        .required(BoatProperties.KIT_MASS)
        .optional(BoatProperties.OF_KIT)
        .required("at", reference("point"))
        .object();
  }

  static ObjectNode person() {
    return named(new SchemaPart())
        .required(BoatProperties.PERSON_MASS)
        .required(BoatProperties.PERSON_PLACE)
        .optional("x", number(BoatQuantity.ALONG, X))
        .optional("y", number(BoatQuantity.ATHWART, Y))
        .object();
  }

  private static ObjectNode propulsion() {
    return new SchemaPart()
        .required(PartProperties.DRIVE)
        .optional(PartProperties.KILOWATTS)
        .ifThenElse("kind", "outboard", keys("kilowatts"))
        .object();
  }

  private static ObjectNode assumption() {
    return anyOf(
        text("What nobody measured."),
        new SchemaPart()
            .required("is", text("Which assumption, as the program writes it."))
            .open());
  }

  private static ObjectNode kept() {
    return new SchemaPart()
        .required("about", text("The name the page gives the doubt."))
        .required("reason", text("Why the measurement is right."))
        .optional("measured", text("What was measured then."))
        .object();
  }

  private static ObjectNode rowlocks() {
    return new SchemaPart().required("x", number(BoatQuantity.ALONG, X)).object();
  }

  private static ObjectNode measuringMethod() {
    return new SchemaPart()
        .required(
            "what", choice(MeasurementKind.values(), MeasurementKind::word, "What was measured."))
        .optional("name", text("The one thing it is said of; left out, all of that kind."))
        .required("how", choice(MeasuringWay.values(), MeasuringWay::word, "How it was taken."))
        .object();
  }

  private static ObjectNode leak() {
    return new SchemaPart()
        .required("seam", text("Where it came in."))
        .required(OutfitProperties.LEAK_LITRES)
        .required(OutfitProperties.LEAK_TIME)
        .object();
  }

  private static ObjectNode observedTrial() {
    return new SchemaPart()
        .required("date", day("When it was seen."))
        .required("by", text("Who saw it."))
        .required("people", whole(BoatQuantity.PEOPLE, "How many sat in it."))
        .required("mass", number(BoatQuantity.SEEN_MASS, "All of them together, dressed."))
        .required("minutes", number(BoatQuantity.SEEN_MINUTES, "How long, full of water."))
        .required("level", flag("Whether it floated level all the time."))
        .required("headsClear", flag("Whether every head stayed clear."))
        .optional("seats", list(text("The place of each."), 0))
        .optional("boat", text("A mark of the boat as it was then."))
        .object();
  }

  private static ObjectNode pointAnswer() {
    String look = "Written by \"look\".";
    return new SchemaPart()
        .required("point", text(look))
        .required("system", text(look))
        .optional("thing", text(look))
        .required("must", text(look))
        .required("found", choice(PointCondition.values(), PointCondition::word, "What was found."))
        .required("grave", choice(PointGravity.values(), PointGravity::word, "How grave it is."))
        .optional(
            "sets", choice(BoatFact.values(), BoatFact::word, "What then counts of the thing."))
        .optional("againAfterDays", whole(BoatQuantity.AGAIN_AFTER_DAYS, look))
        .optional("note", text(look))
        .required("by", text("Who looked."))
        .required("date", day("When."))
        .optional("mark", text(look))
        .object();
  }

  private static <T> ObjectNode choice(T[] values, Function<T, String> word, String meaning) {
    return oneOf(Arrays.stream(values).map(word).toList(), meaning);
  }

  static String[] keys(String... keys) {
    return keys;
  }
}
