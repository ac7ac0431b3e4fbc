package thwartwise.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.afloat.WaterLimits;
import thwartwise.boat.Assumption;
import thwartwise.boat.Assumption.UnmeasuredThing;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.CountedBuoyancy;
import thwartwise.boat.MethodAssumption;
import thwartwise.boat.MethodAssumption.GuessedShape;
import thwartwise.boat.MethodAssumption.RuleFigure;
import thwartwise.boat.MethodEvidence;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.hull.HullMeasurements;
import thwartwise.loadcase.Allowance;
import thwartwise.rules.RuleSet;

/** The assumptions behind the figures that hold for every boat. */
final class Assumptions {
  /** Figures behind the pulls on the boat. */
  private static final List<String> PULLS =
      List.of(
          "current",
          "wind",
          "drag-water",
          "drag-hull",
          "drag-person",
          "person-area",
          "snatch",
          "line-angle",
          "motor-thrust",
          "motor-depth",
          "motor-over");

  /** Figures behind bailing, drains and people in the water. */
  private static final List<String> FLOW =
      List.of("drain-coefficient", "bailer", "bailer-fill", "bailer-strokes", "hanging");

  private Assumptions() {}

  static List<Assumption> of(BoatModel model, RuleSet rules) {
    List<Assumption> all = new ArrayList<>(ofThisBoat(model.boat()));
    addMethods(
        all,
        List.of(
            new MethodAssumption.SeatedCrew(
                rules.value("design-person"), rules.value("lightest-person")),
            allowance(model, rules)));
    addMethods(all, measuringWays(model, rules).stream().toList());
    StationRefinement.of(model, rules).ifPresent(all::add);
    addMethods(all, figures(model, rules));
    addMethods(all, AssumedWaters.of(rules, model.boat().waters()));
    return all;
  }

  private static void addMethods(List<Assumption> all, List<MethodAssumption> more) {
    more.stream().map(Assumption.OfMethod::new).forEach(all::add);
  }

  private static List<Assumption> ofThisBoat(Boat boat) {
    List<Assumption> all = new ArrayList<>();
    if (boat.hull().centre().isEmpty()) {
      all.add(new Assumption.Unmeasured(UnmeasuredThing.CENTRE_OF_BARE_HULL));
    }
    if (boat.propulsion() instanceof Propulsion.NotStated) {
      all.add(new Assumption.Unmeasured(UnmeasuredThing.PROPULSION));
    }
    boat.kit().stream()
        .filter(k -> k.volume().isPresent() && !k.fastened())
        .map(kit -> new Assumption.LooseKit(kit.name()))
        .forEach(all::add);
    boat.places().stream()
        .filter(p -> sitting(boat, p) > p.people())
        .map(place -> new Assumption.CrowdedPlace(place.name()))
        .forEach(all::add);
    if (!boat.kit().isEmpty()) {
      all.add(new Assumption.Unmeasured(UnmeasuredThing.KIT_STAYS_WHERE_LISTED));
    }
    return all;
  }

  /** Figures that every answer uses and no single finding names. */
  private static List<MethodAssumption> figures(BoatModel model, RuleSet rules) {
    Boat boat = model.boat();
    HullMeasurements hull = boat.hull();
    List<MethodAssumption> all = new ArrayList<>();
    all.add(
        new MethodAssumption.MovedShare(
            rules.value("offset-share"), rules.limit("offset-share").cited()));
    all.add(new MethodAssumption.SwampedShell(hull.density(), hull.material().isEmpty()));
    all.add(CountedBuoyancy.rule());
    if (model.spaces().stream().anyMatch(space -> space.counting().leaks())) {
      all.add(
          new MethodAssumption.LeakingChambers(
              rules.value("swamped-minutes"), rules.limit("swamped-minutes").cited()));
    }
    all.addAll(Body.assumptions());
    all.add(
        new MethodAssumption.PullFigures(figures(rules, PULLS), boat.outfit().isAnchorLineKnown()));
    all.add(new MethodAssumption.FlowFigures(figures(rules, FLOW)));
    all.add(WaterLimits.assumption());
    return all;
  }

  private static List<RuleFigure> figures(RuleSet rules, List<String> limits) {
    return limits.stream()
        .map(key -> new RuleFigure(key, rules.value(key), rules.limit(key).basis().word()))
        .toList();
  }

  private static MethodAssumption allowance(BoatModel model, RuleSet rules) {
    Allowance taken = Allowance.of(rules, model);
    return new MethodAssumption.MeasurementAllowance(
        taken.massFactor() - 1,
        1 - taken.volumeFactor(),
        taken.freeboardLoss(),
        Allowance.isGuessed(rules, model)
            ? Optional.of(guessed(model.boat().hull(), rules))
            : Optional.empty());
  }

  private static Optional<MethodAssumption> measuringWays(BoatModel model, RuleSet rules) {
    List<String> limits =
        new MethodEvidence(model.boat())
            .counting().stream().map(said -> said.way().limit()).distinct().sorted().toList();
    return limits.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new MethodAssumption.MeasuringWays(
                Allowance.of(rules, model).listedFactor() - 1, figures(rules, limits)));
  }

  private static GuessedShape guessed(HullMeasurements hull, RuleSet rules) {
    Allowance enough = Allowance.withEnoughStations(rules);
    double few = rules.value("few-stations");
    boolean isFew = hull.stations().size() <= few;
    return new GuessedShape(
        isFew,
        isFew ? hull.stations().size() : hull.longestStretch(),
        isFew ? 1 + few : rules.value("stretch-measured"),
        1 - enough.volumeFactor(),
        enough.freeboardLoss());
  }

  private static long sitting(Boat boat, Place place) {
    return boat.aboard().stream().filter(p -> p.place().equals(place.name())).count();
  }
}
