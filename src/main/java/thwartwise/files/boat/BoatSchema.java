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
import thwartwise.boat.PointCondition;
import thwartwise.boat.PointGravity;
import thwartwise.boat.Water;
import thwartwise.json.Format;
import thwartwise.json.JsonText;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.ElectricalProperties;
import thwartwise.measured.OutfitProperties;
import thwartwise.measured.PartProperties;
import tools.jackson.databind.node.ObjectNode;

/**
 * The boat file as a JSON Schema, for editors and other programs. Single values come from the table
 * {@link BoatProperties} with their type, range, unit and meaning. A schema cannot say all that is
 * asked of a boat: stations in order, names that are there. The reader has the last word.
 */
public final class BoatSchema {
  private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";
  private static final String X = "Forward of the aft end of the hull, in metres.";
  private static final String Y = "From the middle line, to port positive, in metres.";
  private static final String Z = "Up from the lowest point of the bottom, in metres.";

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
            .must("format", JsonText.object().put("const", Format.BOAT.text()))
            .must("name", text("The name of the boat."))
            .must("water", choice(Water.values(), Water::word, "Which water it floats in."))
            .must("hull", hull())
            .may("waters", waters())
            .may("openings", list(opening(), 0))
            .may("chambers", list(chamber(), 0))
            .may("places", list(place(), 0))
            .may("kit", list(kit(), 0))
            .may("cleats", list(named(point()).object(), 0))
            .may(OutfitFields.ROWLOCKS, list(rowlocks(), 0))
            .may(OutfitFields.LEAKS, list(leak(), 0))
            .may("aboard", list(person(), 0))
            .may("propulsion", propulsion())
            .may(ElectricsCodec.KEY, electrics())
            .may(Heights.KEY, oneOf(Heights.words(), "Which way heights are measured."))
            .may("measuredBy", text("Who held the tape."))
            .may(AssumptionCodec.KEY, list(assumption(), 0))
            .may("kept", list(kept(), 0))
            .may(ObservedTrialCodec.KEY, trialSeen())
            .may(PointAnswerCodec.KEY, list(pointAnswer(), 0));
    BoatProperties.OF_BOAT.forEach(each -> boat.may(each.property()));
    return boat.object();
  }

  private static ObjectNode definitions() {
    ObjectNode definitions = JsonText.object();
    definitions.set("point", point().object());
    definitions.set("test", test());
    return definitions;
  }

  private static SchemaPart point() {
    return new SchemaPart().must(PartProperties.X).must(PartProperties.Y).must(PartProperties.Z);
  }

  private static SchemaPart named(SchemaPart part) {
    return part.must("name", text("What it is called."));
  }

  private static ObjectNode hull() {
    return new SchemaPart()
        .must(BoatProperties.HULL_MASS)
        .may(BoatProperties.OF_HULL)
        .may("centre", reference("point"))
        .must("stations", list(station(), 3))
        .may("decked", list(decked(), 0))
        .may("skeg", skeg())
        .either(keys("material"), keys("density", "thickness"))
        .object();
  }

  private static ObjectNode station() {
    return named(new SchemaPart())
        .must("points", list(reference("point"), 2))
        .may("starboard", list(reference("point"), 2))
        .object();
  }

  private static ObjectNode decked() {
    return new SchemaPart()
        .must("x", ends(BoatQuantity.ALONG, "From and to, where the rail is decked over."))
        .object();
  }

  private static ObjectNode skeg() {
    ObjectNode lower = new SchemaPart().must(PartProperties.X).must(PartProperties.Z).object();
    return new SchemaPart()
        .must("edge", list(lower, 2))
        .must(PartProperties.SKEG_THICKNESS)
        .object();
  }

  private static ObjectNode waters() {
    return new SchemaPart()
        .may(BoatProperties.OF_WATERS)
        .may("force", whole(BoatQuantity.FORCE, "Instead of wind: the Beaufort force."))
        .object();
  }

  private static ObjectNode opening() {
    return named(point())
        .may(PartProperties.OF_OPENING)
        .either(keys("width"), keys("diameter"))
        .object();
  }

  private static ObjectNode chamber() {
    ObjectNode box =
        new SchemaPart()
            .may("x", ends(BoatQuantity.ALONG, X))
            .may("y", ends(BoatQuantity.ATHWART, Y))
            .may("z", ends(BoatQuantity.HEIGHT, Z))
            .either(keys("x"), keys("y"), keys("z"))
            .object();
    return named(filling(new SchemaPart()))
        .must("box", box)
        .must(PartProperties.FILLING)
        .may(PartProperties.MIRRORED)
        .may(PartProperties.LIMBER_HOLE)
        .may("twin", filling(new SchemaPart()).may(PartProperties.FILLING).object())
        .when("filling", "foam", keys("kind"), "seal")
        .object();
  }

  private static SchemaPart filling(SchemaPart part) {
    return part.may(PartProperties.SEAL)
        .may("test", reference("test"))
        .may(PartProperties.CHAMBER_LITRES)
        .may(PartProperties.FOAM_KIND)
        .may(PartProperties.FOAM_FASTENED);
  }

  private static ObjectNode test() {
    return new SchemaPart()
        .must("date", day("When it was tested."))
        .must("how", text("What was done."))
        .must("minutes", number(BoatQuantity.MINUTES, "How long it lasted."))
        .must("litresIn", number(BoatQuantity.LEAKED_LITRES, "The water that got in."))
        .must("by", text("Who tested it."))
        .object();
  }

  private static ObjectNode place() {
    return named(new SchemaPart())
        .must("x", anyOf(number(BoatQuantity.ALONG, X), ends(BoatQuantity.ALONG, X)))
        .may("y", anyOf(number(BoatQuantity.ATHWART, Y), ends(BoatQuantity.ATHWART, Y)))
        .must(PartProperties.Z)
        .must(PartProperties.PLACE_PEOPLE)
        .may(PartProperties.OF_PLACE)
        .either(keys("y"), keys("halfWidth"))
        .object();
  }

  private static ObjectNode kit() {
    return named(new SchemaPart())
        .must(BoatProperties.KIT_MASS)
        .may(BoatProperties.OF_KIT)
        .must("at", reference("point"))
        .may("fastened", flag("Whether it stays where it is."))
        .may("in", text("The chamber it is stowed in."))
        .may("workedFrom", text("The place a motor or oars are worked from."))
        .object();
  }

  private static ObjectNode person() {
    return named(new SchemaPart())
        .must(BoatProperties.PERSON_MASS)
        .must("place", text("Which of the places the person sits at."))
        .may("x", number(BoatQuantity.ALONG, X))
        .may("y", number(BoatQuantity.ATHWART, Y))
        .object();
  }

  private static ObjectNode propulsion() {
    return new SchemaPart()
        .must(PartProperties.DRIVE)
        .may(PartProperties.KILOWATTS)
        .when("kind", "outboard", keys("kilowatts"))
        .object();
  }

  private static ObjectNode assumption() {
    return anyOf(
        text("What nobody measured."),
        new SchemaPart().must("is", text("Which assumption, as the program writes it.")).open());
  }

  private static ObjectNode kept() {
    return new SchemaPart()
        .must("about", text("The name the page gives the doubt."))
        .must("reason", text("Why the measurement is right."))
        .may("measured", text("What was measured then."))
        .object();
  }

  private static ObjectNode rowlocks() {
    return new SchemaPart().must("x", number(BoatQuantity.ALONG, X)).object();
  }

  private static ObjectNode leak() {
    return new SchemaPart()
        .must("seam", text("Where it came in."))
        .must(OutfitProperties.LEAK_LITRES)
        .must(OutfitProperties.LEAK_TIME)
        .object();
  }

  private static ObjectNode trialSeen() {
    return new SchemaPart()
        .must("date", day("When it was seen."))
        .must("by", text("Who saw it."))
        .must("people", whole(BoatQuantity.PEOPLE, "How many sat in it."))
        .must("mass", number(BoatQuantity.SEEN_MASS, "All of them together, dressed."))
        .must("minutes", number(BoatQuantity.SEEN_MINUTES, "How long, full of water."))
        .must("level", flag("Whether it floated level all the time."))
        .must("headsClear", flag("Whether every head stayed clear."))
        .may("seats", list(text("The place of each."), 0))
        .may("boat", text("A mark of the boat as it was then."))
        .object();
  }

  private static ObjectNode pointAnswer() {
    String look = "Written by \"look\".";
    return new SchemaPart()
        .must("point", text(look))
        .must("system", text(look))
        .may("thing", text(look))
        .must("must", text(look))
        .must("found", choice(PointCondition.values(), PointCondition::word, "What was found."))
        .must("grave", choice(PointGravity.values(), PointGravity::word, "How grave it is."))
        .may("sets", choice(BoatFact.values(), BoatFact::word, "What then counts of the thing."))
        .may("againAfterDays", whole(BoatQuantity.AGAIN_AFTER_DAYS, look))
        .may("note", text(look))
        .must("by", text("Who looked."))
        .must("date", day("When."))
        .may("mark", text(look))
        .object();
  }

  private static ObjectNode electrics() {
    return new SchemaPart()
        .may("battery", battery())
        .may("motor", inKit().may(ElectricalProperties.OF_MOTOR).object())
        .may("runs", list(run(), 0))
        .may(
            "panel",
            inKit().must(ElectricalProperties.WATTS).may(ElectricalProperties.OF_PANEL).object())
        .may(ElectricalProperties.LATITUDE)
        .may("mainSwitch", text("What cuts off everything at once."))
        .may("circuits", list(circuit(), 0))
        .object();
  }

  private static SchemaPart inKit() {
    return new SchemaPart().may("kit", text("The name it has among the kit."));
  }

  private static ObjectNode battery() {
    return new SchemaPart()
        .must("kit", text("The name it has among the kit."))
        .must(ElectricalProperties.VOLTS)
        .must(ElectricalProperties.CHARGE)
        .may(ElectricalProperties.OF_BATTERY)
        .may(BatteryDate.KEY, day("The day it was first used."))
        .object();
  }

  private static ObjectNode run() {
    return new SchemaPart()
        .must("setting", text("What the motor's handle stood at."))
        .must(ElectricalProperties.DISTANCE)
        .must(ElectricalProperties.TIME_THERE)
        .must(ElectricalProperties.TIME_BACK)
        .may(ElectricalProperties.OF_RUN)
        .object();
  }

  private static ObjectNode circuit() {
    return named(new SchemaPart())
        .must(ElectricalProperties.USE)
        .must(ElectricalProperties.CURRENT)
        .must(ElectricalProperties.LENGTH)
        .may(ElectricalProperties.OF_CIRCUIT)
        .may("awg", whole(BoatQuantity.GAUGE, "Instead of mm2: the gauge printed on the wire."))
        .may("switch", text("What switches it off."))
        .object();
  }

  private static <T> ObjectNode choice(T[] values, Function<T, String> word, String meaning) {
    return oneOf(Arrays.stream(values).map(word).toList(), meaning);
  }

  private static String[] keys(String... keys) {
    return keys;
  }
}
