package thwartwise.walk.questions;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.boat.SteeringSeat;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Warning;
import thwartwise.walk.engine.WordQuestions;

/**
 * Questions for the place from which the motor is steered and the oars are rowed, asked only where
 * there is a choice. Enter takes the nearest.
 */
record WorkingPlaces(Replay replay, QuantityQuestions quantities, List<Place> places) {
  private static final int ROOM_FOR_A_NAME = 18;

  Kit asked(String key, String subject, Kit item) {
    boolean motor = item.isMotor() && !item.needsVenting();
    List<Place> fit = motor ? places : places.stream().filter(p -> !p.isToOneSide()).toList();
    if (fit.size() < 2 || !(motor || item.isOars())) {
      return item;
    }
    QuestionDefinition<String> entry =
        motor ? steered(key, subject, item) : rowed(key, subject, fit);
    return replay
        .ask(entry.optional(nearest(item, fit, motor)))
        .map(item::withWorkedFrom)
        .orElse(item);
  }

  private QuestionDefinition<String> steered(String key, String subject, Kit motor) {
    return named(key, subject + ", steered from", places)
        .how("The place where whoever steers sits; a beginning of its name is enough.")
        .why("The page says who reaches the motor, and what to do when that place is empty.")
        .within(place -> tooFar(motor, place));
  }

  private static QuestionDefinition<String> rowed(String key, String subject, List<Place> fit) {
    return named(key, subject + ", rowed from", fit)
        .how("The place across where the rower sits; a beginning of its name will do.")
        .why("The page says whether the rowlocks suit that place, and who rows home.");
  }

  private static QuestionDefinition<String> named(String key, String subject, List<Place> fit) {
    return WordQuestions.oneOf(
        key + ".workedFrom", subject, fit.stream().map(Place::name).toList());
  }

  /** The meaning of Enter. A place from which nobody reaches the motor is never assumed. */
  private static String nearest(Kit item, List<Place> fit, boolean motor) {
    Place nearest =
        fit.stream()
            .min(Comparator.comparingDouble(p -> SteeringSeat.to(item, p).distance()))
            .orElseThrow();
    return motor && !SteeringSeat.to(item, nearest).isInReach()
        ? "not said"
        : shortened(nearest.name()) + ", nearest";
  }

  private static String shortened(String name) {
    return name.codePointCount(0, name.length()) <= ROOM_FOR_A_NAME
        ? name
        : name.substring(0, name.offsetByCodePoints(0, ROOM_FOR_A_NAME - 1)) + "…";
  }

  private Optional<Warning> tooFar(Kit motor, String name) {
    return places.stream()
        .filter(place -> place.name().equals(name))
        .map(place -> SteeringSeat.to(motor, place))
        .filter(seat -> !seat.isInReach())
        .findFirst()
        .map(seat -> outOfReach(motor, seat.distance()));
  }

  private Warning outOfReach(Kit motor, double distance) {
    Optional<String> near =
        SteeringSeat.nearest(motor, places)
            .filter(SteeringSeat::isInReach)
            .map(seat -> seat.place().name());
    return new Warning(
        "The motor is %s from there: more than an arm and a tiller (%s), so only with an extension.%s"
            .formatted(
                quantities.show(distance),
                quantities.show(SteeringSeat.REACH),
                near.map(place -> " Did you mean the " + place + "?").orElse("")),
        near,
        true);
  }
}
