package thwartwise.walk;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Opening;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Water;
import thwartwise.boat.Waters;
import thwartwise.hull.HullMeasurements;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.walk.engine.BoatInProgress;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.questions.BasicQuestions;
import thwartwise.walk.questions.ChamberBoxVolume;
import thwartwise.walk.questions.ChamberQuestions;
import thwartwise.walk.questions.ConfirmationQuestions;
import thwartwise.walk.questions.ElectricalQuestions;
import thwartwise.walk.questions.EquipmentQuestions;
import thwartwise.walk.questions.FullWalkSections;
import thwartwise.walk.questions.GuessedMasses;
import thwartwise.walk.questions.HullQuestions;
import thwartwise.walk.questions.KitQuestions;
import thwartwise.walk.questions.MeasuredHull;
import thwartwise.walk.questions.MethodQuestions;
import thwartwise.walk.questions.OpeningQuestions;
import thwartwise.walk.questions.OutfitQuestions;
import thwartwise.walk.questions.Outline;
import thwartwise.walk.questions.PeopleQuestions;
import thwartwise.walk.questions.PlaceQuestions;
import thwartwise.walk.questions.SeatHeightWarnings;
import thwartwise.walk.questions.ShapeQuestions;
import thwartwise.walk.questions.SwampedQuestion;
import thwartwise.walk.questions.WatersQuestions;

/** All questions of the full walk, in the order in which a person with a tape measures. */
final class BoatScript {
  private final LocalDate today;
  private final PlausibleLimits limits;
  private final ConfirmationQuestions kept;
  private final ChamberBoxVolume drawn = new ChamberBoxVolume();
  private final ShapeQuestions shape;

  BoatScript(LocalDate today, PlausibleLimits limits, ConfirmationQuestions kept) {
    this.today = today;
    this.shape = new ShapeQuestions(limits);
    this.limits = limits;
    this.kept = kept;
  }

  Boat boat(Replay replay) {
    replay.plan(FullWalkSections.ALL);
    replay.begin(FullWalkSections.BOAT);
    BasicQuestions basics = new BasicQuestions(replay);
    String name = basics.name();
    Optional<String> measuredBy = basics.measuredBy();
    QuantityQuestions quantities = new QuantityQuestions(basics.units());
    Water water = basics.water();
    Propulsion propulsion = basics.propulsion(quantities);
    MeasuredHull measured = new HullQuestions(replay, quantities, limits, shape).hull();
    HullMeasurements hull = measured.hull();
    Outline outline = new Outline(hull.stations());
    BoatInProgress known =
        new BoatInProgress(
            replay,
            quantities.system(),
            Boat.bare(name, water, hull, propulsion).in(quantities.system()));
    replay.begin(FullWalkSections.CHAMBERS);
    List<Chamber> chambers =
        new ChamberQuestions(replay, quantities, outline, today)
            .chambers(
                (poured, box) -> drawn.comparison(poured, hull, box),
                some -> known.with(b -> b.withChambers(some)));
    replay.begin(FullWalkSections.OPENINGS);
    List<Opening> openings =
        new OpeningQuestions(replay, quantities, outline, limits, chambers)
            .openings(some -> known.with(b -> b.withOpenings(some)));
    replay.begin(FullWalkSections.PLACES);
    List<Place> places =
        new PlaceQuestions(
                replay,
                quantities,
                outline,
                new SeatHeightWarnings(quantities, outline, hull.floor(), chambers, limits))
            .places(some -> known.with(b -> b.withPlaces(some)));
    replay.begin(FullWalkSections.KIT);
    KitQuestions carried =
        new KitQuestions(replay, quantities, outline, chambers, places, limits, propulsion);
    carried.kit(some -> known.with(b -> b.withKit(some)));
    known.with(new OutfitQuestions(replay, quantities)::asked);
    known.with(new EquipmentQuestions(replay, quantities)::equipped);
    Boat fitted = known.with(new ElectricalQuestions(replay, quantities, today, carried)::asked);
    replay.begin(FullWalkSections.PEOPLE);
    List<Person> aboard = new PeopleQuestions(replay, quantities, places, fitted.kit()).aboard();
    Waters waters = new WatersQuestions(replay, quantities).waters();
    Boat boat =
        known.with(
            b ->
                b.withAboard(aboard)
                    .withWaters(waters)
                    .withMeasuredBy(measuredBy)
                    .withAssumptions(measured.assumed()));
    Boat swamped = new SwampedQuestion(limits).asked(replay, "whenSwamped", boat);
    known.with(before -> swamped);
    Boat guessed = GuessedMasses.withGuesses(replay, swamped);
    Boat said = new MethodQuestions(replay, limits, quantities.system()).asked(guessed);
    Boat settled = kept.confirmed(replay, said);
    BasicQuestions.finish(replay, settled.withAssumptions(replay.guesses()));
    return settled;
  }
}
