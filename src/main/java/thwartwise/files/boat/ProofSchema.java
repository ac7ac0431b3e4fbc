package thwartwise.files.boat;

import static thwartwise.files.boat.SchemaPart.day;
import static thwartwise.files.boat.SchemaPart.flag;
import static thwartwise.files.boat.SchemaPart.list;
import static thwartwise.files.boat.SchemaPart.number;
import static thwartwise.files.boat.SchemaPart.text;
import static thwartwise.files.boat.SchemaPart.whole;

import thwartwise.measured.BoatProperties;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ObjectNode;

/** The schema of a proof afloat; {@link ProofCodec} reads and writes it. */
final class ProofSchema {
  private ProofSchema() {}

  static ObjectNode proof() {
    return new SchemaPart()
        .required("date", day("When it was read."))
        .required("by", text("Who read it."))
        .required("withKit", flag("Whether all kit was aboard; otherwise all was ashore."))
        .optional("empty", rails("With nobody aboard."))
        .optional("people", list(BoatSchema.person(), 0))
        .optional("seated", rails("With these people aboard."))
        .optional("moved", movedWeight())
        .optional(
            "roll",
            new SchemaPart()
                .required("swings", whole(BoatQuantity.SWINGS, "Whole ones."))
                .required("seconds", number(BoatQuantity.ROLL_SECONDS, "For all of them."))
                .object())
        .required("outcome", new SchemaPart().open().put("description", "Written by \"prove\"."))
        .required("boat", text("A mark of the boat as it was measured then."))
        .object();
  }

  private static ObjectNode rails(String when) {
    SchemaPart rails = new SchemaPart();
    for (String point : ProofCodec.RAILS) {
      rails.required(point, number(BoatQuantity.HEIGHT, "The rail above the water. " + when));
    }
    return rails.object();
  }

  private static ObjectNode movedWeight() {
    return new SchemaPart()
        .required(BoatProperties.KIT_MASS)
        .required("x", number(BoatQuantity.ALONG, BoatSchema.X))
        .required("z", number(BoatQuantity.HEIGHT, BoatSchema.Z))
        .required("toPort", toSide())
        .required("toStarboard", toSide())
        .object();
  }

  private static ObjectNode toSide() {
    return new SchemaPart()
        .required("out", number(BoatQuantity.ATHWART, "Its middle from the middle line."))
        .optional("port", number(BoatQuantity.HEIGHT, "The rail above the water amidships."))
        .optional("starboard", number(BoatQuantity.HEIGHT, "The rail above the water amidships."))
        .optional("pendulum", number(BoatQuantity.PENDULUM, "The length of a plumb line."))
        .optional("swing", number(BoatQuantity.ATHWART, "Of its end, to the side of the weight."))
        .optional("level", number(BoatQuantity.HEEL, "What a level shows, to that side."))
        .anyRequired(
            BoatSchema.keys("port", "starboard"),
            BoatSchema.keys("pendulum", "swing"),
            BoatSchema.keys("level"))
        .object();
  }
}
