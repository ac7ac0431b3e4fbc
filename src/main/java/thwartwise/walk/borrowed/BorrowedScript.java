package thwartwise.walk.borrowed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import thwartwise.boat.Assumption;
import thwartwise.boat.Assumption.Simplification;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Opening;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Water;
import thwartwise.boat.Waters;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Material;
import thwartwise.hull.Station;
import thwartwise.walk.engine.BoatInProgress;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WalkSection;
import thwartwise.walk.questions.BasicQuestions;
import thwartwise.walk.questions.ConfirmationQuestions;
import thwartwise.walk.questions.Outline;
import thwartwise.walk.questions.TrialQuestions;
import thwartwise.walk.questions.WatersQuestions;

/**
 * The short walk: a dozen questions about a borrowed boat on the bank, twenty if there was a trial.
 * Everything else is assumed at its unfavourable end and listed as an assumption.
 */
public final class BorrowedScript {
  static final WalkSection BOAT = new WalkSection("the boat", 2);
  static final WalkSection HULL = new WalkSection("the hull", 9);
  static final WalkSection SEATS = new WalkSection("seats and kit", 6);
  static final WalkSection PEOPLE = new WalkSection("people", 1);
  static final WalkSection PROOF = new WalkSection("what holds it up full of water", 2);
  static final WalkSection WATERS = new WalkSection("waters", 2);

  static final List<WalkSection> ALL = List.of(BOAT, HULL, SEATS, PEOPLE, PROOF, WATERS);

  private final LocalDate today;
  private final ConfirmationQuestions kept;

  public BorrowedScript(LocalDate today, ConfirmationQuestions kept) {
    this.today = today;
    this.kept = kept;
  }

  public Boat boat(Replay replay) {
    replay.plan(ALL);
    replay.begin(BOAT);
    BasicQuestions basics = new BasicQuestions(replay);
    String name = basics.nameOfBorrowed();
    QuantityQuestions quantities = new QuantityQuestions(basics.units());
    List<Assumption> assumed =
        new ArrayList<>(List.of(new Assumption.Simplified(Simplification.SHORT_WALK)));
    replay.begin(HULL);
    BorrowedHull hull = new BorrowedHull(replay, quantities, assumed);
    EstimatedLines lines = hull.lines();
    List<Station> stations = lines.stations();
    Outline outline = new Outline(stations);
    List<Opening> openings = hull.lowestEdge(lines);
    double mass = hull.mass(lines);
    Optional<Material> material = hull.material();
    double thick = thickness(material);
    HullMeasurements measured =
        new HullMeasurements(
            mass,
            Optional.empty(),
            material,
            material.map(Material::swampedDensity).orElse(worst(Material::swampedDensity)),
            thick,
            thick,
            stations,
            List.of());
    BoatInProgress known =
        new BoatInProgress(
            replay,
            quantities.system(),
            Boat.bare(name, Water.FRESH, measured, new Propulsion.NotStated())
                .withOpenings(openings)
                .in(quantities.system()));
    replay.begin(SEATS);
    List<Place> places = new BorrowedSeats(replay, quantities, outline, assumed).places();
    known.with(b -> b.withPlaces(places));
    BorrowedKit carried = new BorrowedKit(replay, quantities, outline, assumed);
    Propulsion propulsion = carried.propulsion();
    var kit = carried.kit(propulsion);
    known.with(b -> b.withKit(kit));
    replay.begin(PEOPLE);
    BorrowedPeople people =
        new BorrowedPeople(
            replay, kept.plannedMasses(), quantities.system(), outline, places, assumed);
    List<Person> aboard = people.aboard();
    replay.begin(PROOF);
    BorrowedChamber shown =
        new BorrowedChamber(replay, quantities, outline, places, today, assumed);
    BorrowedChamber.Shown what = shown.asked();
    List<Chamber> chambers = shown.chambers(what);
    known.with(b -> b.withChambers(chambers));
    replay.begin(WATERS);
    Waters waters = new WatersQuestions(replay, quantities).waters();
    Boat boat =
        new Boat(
                name,
                Water.FRESH,
                measured,
                openings,
                chambers,
                places,
                kit,
                aboard,
                propulsion,
                List.of(),
                Optional.empty(),
                waters,
                Optional.empty(),
                assumed)
            .in(quantities.system());
    Boat tried =
        what == BorrowedChamber.Shown.TRIAL
            ? boat.withObservedTrial(
                Optional.of(new TrialQuestions(replay, quantities, today, places).trialDetails()))
            : boat;
    Boat seated =
        tried
            .observedTrial()
            .map(seen -> tried.withAboard(people.seatedAsObserved(seen, aboard)))
            .orElse(tried);
    Boat settled = kept.confirmed(replay, seated);
    BasicQuestions.finish(replay, settled);
    return settled;
  }

  /** Twice the usual thickness of a material, at most the thickness assumed for an unknown one. */
  private static double thickness(Optional<Material> material) {
    double most = worst(Material::usualThickness);
    return material.map(m -> Math.min(m.unmeasuredThickness(), most)).orElse(most);
  }

  /** An unknown material is as heavy as the heaviest and as thick as the thickest. */
  private static double worst(ToDoubleFunction<Material> of) {
    return Arrays.stream(Material.values()).mapToDouble(of).max().orElseThrow();
  }
}
