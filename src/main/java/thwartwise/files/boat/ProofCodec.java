package thwartwise.files.boat;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.AfloatProof;
import thwartwise.boat.AfloatProof.HeelMeasurement;
import thwartwise.boat.AfloatProof.MovedWeight;
import thwartwise.boat.AfloatProof.RailHeights;
import thwartwise.boat.AfloatProof.TimedRoll;
import thwartwise.boat.AfloatProof.WeightToSide;
import thwartwise.boat.KeptProof;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.ProofOutcome;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.RecordCodec;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Proofs afloat: the readings, the result, and the mark of the boat at that time. */
final class ProofCodec {
  static final String KEY = "proofs";
  static final String[] KEYS = {
    "date", "by", "withKit", "empty", "people", "seated", "moved", "roll", "outcome", "boat"
  };
  static final String[] RAILS = {"bow", "stern", "port", "starboard"};
  static final String[] MOVED = {"mass", "x", "z", "toPort", "toStarboard"};
  static final String[] TO_SIDE = {"out", "port", "starboard", "pendulum", "swing", "level"};
  static final String[] ROLL = {"swings", "seconds"};
  private static final String PROVE = "Let \"prove\" write it.";

  private ProofCodec() {}

  static KeptProof read(ObjectReader proof, List<Place> places) {
    return new KeptProof(
        readings(proof, places),
        RecordCodec.read(proof.freeObject("outcome", PROVE), ProofOutcome.class).orElseThrow(),
        proof.text("boat", PROVE),
        false);
  }

  private static AfloatProof readings(ObjectReader proof, List<Place> places) {
    List<Person> people =
        proof.optionalItems("people", "person", PersonCodec.KEYS).stream()
            .map(person -> PersonCodec.read(person, places))
            .toList();
    return new AfloatProof(
        SealTestCodec.date(proof),
        proof.text("by", PROVE),
        proof.value("withKit", PROVE).bool(),
        rails(proof, "empty"),
        people,
        rails(proof, "seated"),
        proof.optionalObject("moved", MOVED).map(ProofCodec::moved),
        proof
            .optionalObject("roll", ROLL)
            .map(
                roll ->
                    new TimedRoll(
                        roll.whole("swings", BoatQuantity.SWINGS, PROVE),
                        roll.number("seconds", BoatQuantity.ROLL_SECONDS, PROVE))));
  }

  private static Optional<RailHeights> rails(ObjectReader proof, String key) {
    return proof
        .optionalObject(key, RAILS)
        .map(
            rails ->
                new RailHeights(
                    rail(rails, "bow"),
                    rail(rails, "stern"),
                    rail(rails, "port"),
                    rail(rails, "starboard")));
  }

  private static double rail(ObjectReader rails, String key) {
    return rails.number(key, BoatQuantity.HEIGHT, PROVE);
  }

  private static MovedWeight moved(ObjectReader moved) {
    return new MovedWeight(
        moved.required(BoatProperties.KIT_MASS),
        moved.number("x", BoatQuantity.ALONG, PROVE),
        moved.number("z", BoatQuantity.HEIGHT, PROVE),
        toSide(moved.object("toPort", PROVE, TO_SIDE)),
        toSide(moved.object("toStarboard", PROVE, TO_SIDE)));
  }

  private static WeightToSide toSide(ObjectReader side) {
    return new WeightToSide(side.number("out", BoatQuantity.ATHWART, PROVE), heel(side));
  }

  private static HeelMeasurement heel(ObjectReader side) {
    if (side.has("level")) {
      return new HeelMeasurement.ByLevel(
          BoatQuantity.HEEL.si(side.number("level", BoatQuantity.HEEL, PROVE)));
    }
    if (side.has("pendulum")) {
      return new HeelMeasurement.ByPendulum(
          side.number("pendulum", BoatQuantity.PENDULUM, PROVE),
          side.number("swing", BoatQuantity.ATHWART, PROVE));
    }
    return new HeelMeasurement.ByRails(rail(side, "port"), rail(side, "starboard"));
  }

  static ObjectNode write(KeptProof kept) {
    AfloatProof proof = kept.readings();
    ObjectNode node =
        JsonText.object()
            .put("date", proof.date().toString())
            .put("by", proof.by())
            .put("withKit", proof.withKit());
    proof.empty().ifPresent(rails -> node.set("empty", RecordCodec.write(rails)));
    if (!proof.people().isEmpty()) {
      ArrayNode people = node.putArray("people");
      proof.people().forEach(person -> people.add(PersonCodec.write(person)));
    }
    proof.seated().ifPresent(rails -> node.set("seated", RecordCodec.write(rails)));
    proof.moved().ifPresent(moved -> node.set("moved", write(moved)));
    proof.roll().ifPresent(roll -> node.set("roll", RecordCodec.write(roll)));
    node.set("outcome", RecordCodec.write(kept.outcome()));
    return node.put("boat", kept.mark());
  }

  private static ObjectNode write(MovedWeight moved) {
    ObjectNode node =
        JsonText.object()
            .put("mass", moved.mass())
            .put("x", moved.along())
            .put("z", moved.height());
    node.set("toPort", write(moved.toPort()));
    node.set("toStarboard", write(moved.toStarboard()));
    return node;
  }

  private static ObjectNode write(WeightToSide side) {
    ObjectNode node = JsonText.object().put("out", side.out());
    if (side.heel() instanceof HeelMeasurement.ByRails rails) {
      return node.put("port", rails.port()).put("starboard", rails.starboard());
    }
    if (side.heel() instanceof HeelMeasurement.ByPendulum pendulum) {
      return node.put("pendulum", pendulum.length()).put("swing", pendulum.swing());
    }
    HeelMeasurement.ByLevel level = (HeelMeasurement.ByLevel) side.heel();
    return node.put("level", BoatQuantity.HEEL.inFile(level.angle()));
  }
}
