package thwartwise.files.boat;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.Assumption;
import thwartwise.boat.Assumption.TrialFault;
import thwartwise.boat.Boat;
import thwartwise.boat.ObservedTrial;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ObjectNode;

/**
 * An observed trial in knee-deep water, and the mark of the boat at that time: a trial of another
 * hull, kit or chamber does not count.
 */
final class ObservedTrialCodec {
  static final String KEY = "trialSeen";
  static final String[] KEYS = {
    "date", "by", "people", "mass", "minutes", "level", "headsClear", "seats", "boat"
  };
  private static final String BY = "Write who saw it.";
  private static final String PEOPLE = "Write how many people sat in it.";
  private static final String MASS = "Weigh all of them together, dressed, and write kg.";
  private static final String MINUTES = "Write how many minutes they sat in it full of water.";
  private static final String LEVEL = "Write true when it floated level all the time, or false.";
  private static final String HEADS = "Write true when every head stayed clear, or false.";

  private static final String SEATS = "Write the place of each who sat in it, by its name.";

  private ObservedTrialCodec() {}

  /** The boat with the trial; if the trial does not count, with the reason. */
  static Boat read(ObjectReader trial, Boat boat) {
    ObservedTrial seen =
        new ObservedTrial(
            SealTestCodec.date(trial),
            trial.text("by", BY),
            trial.whole("people", BoatQuantity.PEOPLE, PEOPLE),
            trial.number("mass", BoatQuantity.SEEN_MASS, MASS),
            trial.number("minutes", BoatQuantity.SEEN_MINUTES, MINUTES),
            trial.value("level", LEVEL).bool(),
            trial.value("headsClear", HEADS).bool(),
            trial.has("seats") ? trial.value("seats", SEATS).texts() : List.of());
    if (seen.failed()) {
      return boat.withObservedTrial(Optional.of(seen));
    }
    if (!trial.has("boat") || !trial.text("boat", "").equals(BoatMark.ofTrial(boat))) {
      return nothing(boat, seen, TrialFault.OF_ANOTHER_BOAT);
    }
    return seen.seats().size() == seen.people()
        ? boat.withObservedTrial(Optional.of(seen))
        : nothing(boat, seen, TrialFault.SEATS_NOT_NAMED);
  }

  private static Boat nothing(Boat boat, ObservedTrial seen, TrialFault fault) {
    return boat.withAssumptions(
        List.of(new Assumption.TrialNotCounted(seen.date().toString(), fault)));
  }

  static ObjectNode write(ObservedTrial seen, Boat boat) {
    ObjectNode node =
        JsonText.object()
            .put("date", seen.date().toString())
            .put("by", seen.by())
            .put("people", seen.people())
            .put("mass", seen.mass())
            .put("minutes", seen.minutes())
            .put("level", seen.level())
            .put("headsClear", seen.headsClear());
    node.set("seats", JsonText.texts(seen.seats()));
    return node.put("boat", BoatMark.ofTrial(boat));
  }
}
