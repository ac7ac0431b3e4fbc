package thwartwise.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.boat.Outfit;
import thwartwise.boat.Outfit.AnchorBottom;
import thwartwise.boat.Outfit.Rowlocks;
import thwartwise.boat.SteeringSeat;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Margin;
import thwartwise.checks.Measure;
import thwartwise.checks.Note;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.RowingSeat;
import thwartwise.checks.Unit;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LineOut;
import thwartwise.loadcase.LoadCase;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/**
 * Findings on the outfit that do not depend on the crew: a second way home, the anchor line, the
 * trailer. A fault forbids an act; the rest informs.
 */
final class OutfitFindings {
  private final BoatModel model;
  private final Boat boat;
  private final RuleSet rules;

  private OutfitFindings(BoatModel model, RuleSet rules) {
    this.model = model;
    this.boat = model.boat();
    this.rules = rules;
  }

  static List<Finding> of(BoatModel model, RuleSet rules) {
    OutfitFindings findings = new OutfitFindings(model, rules);
    List<Finding> all = new ArrayList<>();
    findings.secondWayHome().ifPresent(all::add);
    findings.boat.outfit().rowlocks().forEach(pair -> findings.rowing(pair).ifPresent(all::add));
    findings.steering().ifPresent(all::add);
    findings.anchorLine().ifPresent(all::add);
    findings.road().ifPresent(all::add);
    return all;
  }

  /**
   * The ways home with the motor dead. It is only asked of a boat whose kit is listed thing by
   * thing, battery or tank by itself; for others nobody knows whether oars are in the one weight of
   * all kit.
   */
  private Optional<Finding> secondWayHome() {
    boolean driven =
        boat.kit().stream().anyMatch(k -> k.isMotor(boat.electrics()))
            && boat.kit().stream().anyMatch(this::isPower);
    if (!driven) {
      return Optional.empty();
    }
    boolean rowed = boat.kit().stream().anyMatch(Kit::isForRowing);
    if (!rowed) {
      return Optional.of(noWayHome(Note.Fact.NOTHING_TO_ROW_WITH));
    }
    List<Rowlocks> pairs = boat.outfit().rowlocks();
    boolean paddled = boat.kit().stream().anyMatch(Kit::isPaddle);
    return paddled
            || pairs.isEmpty()
            || pairs.stream().anyMatch(p -> seat(p).filter(RowingSeat::isInReach).isPresent())
        ? Optional.empty()
        : Optional.of(noWayHome(Note.Fact.ROWLOCKS_OUT_OF_REACH));
  }

  private boolean isPower(Kit kit) {
    return !kit.isMotor(boat.electrics())
        && (kit.needsVenting(boat.electrics()) || kit.holdsPetrol());
  }

  private Finding noWayHome(Note.Fact why) {
    return new Finding(
        CheckQuestion.of(CheckId.SECOND_WAY_HOME, Measure.SEATS),
        Role.FORBIDS_AN_ACT,
        Outcome.FALLS_SHORT,
        Margin.atLeast(1, OptionalDouble.of(0), Unit.SEAT),
        "with the motor dead oars or paddles are the only way home (common practice, no source)",
        LoadCase.AS_MEASURED,
        Note.of(why));
  }

  private Optional<RowingSeat> seat(Rowlocks pair) {
    return RowingSeat.of(boat, pair, rules);
  }

  private Optional<Finding> rowing(Rowlocks pair) {
    return seat(pair)
        .map(
            seat ->
                new Finding(
                    CheckQuestion.of(CheckId.ROWING, Measure.DISTANCE, seat.place().name()),
                    Role.INFORMATION,
                    seat.isInReach() ? Outcome.MEETS : Outcome.FALLS_SHORT,
                    seat.margin(),
                    rules.limit("rowlock-aft").cited(),
                    LoadCase.AS_MEASURED,
                    new Note.RowlocksAft(seat.aft(), rules.value("rowlock-aft"))));
  }

  /**
   * Whether the stated place is within reach of the motor; the nearest place is only assumed within
   * reach.
   */
  private Optional<Finding> steering() {
    return SteeringSeat.of(boat)
        .filter(SteeringSeat::isStated)
        .map(
            seat ->
                new Finding(
                    CheckQuestion.of(CheckId.STEERING, Measure.DISTANCE, seat.place().name()),
                    Role.INFORMATION,
                    seat.isInReach() ? Outcome.MEETS : Outcome.FALLS_SHORT,
                    Margin.atMost(
                        SteeringSeat.REACH, OptionalDouble.of(seat.distance()), Unit.METRE),
                    "an arm and a tiller, from the middle of whoever steers (judgement)",
                    LoadCase.AS_MEASURED,
                    seat.isInReach() ? Note.NONE : Note.of(Note.Fact.TILLER_TOO_SHORT)));
  }

  /** The anchor line, for a boat with a stated depth of anchoring. */
  private Optional<Finding> anchorLine() {
    Outfit outfit = boat.outfit();
    boolean holds = outfit.anchorBottom().equals(Optional.of(AnchorBottom.SAND_OR_MUD));
    Limit scope = rules.limit(holds ? "anchor-scope" : "anchor-scope-poor");
    return outfit
        .anchorDepth()
        .map(
            depth ->
                judged(
                    CheckQuestion.of(CheckId.ANCHOR_LINE, Measure.DISTANCE),
                    Margin.atLeast(
                        scope.value() * (depth + LineOut.bowHeight(model)),
                        outfit
                            .anchorLine()
                            .map(OptionalDouble::of)
                            .orElseGet(OptionalDouble::empty),
                        Unit.METRE),
                    false,
                    scope.cited(),
                    new Note.AnchorScope(depth, scope.value())));
  }

  /** Hull and all kit compared with what may be carried on the road. */
  private Optional<Finding> road() {
    double mass = boat.hull().mass() + boat.kitMass();
    boolean close =
        boat.roadLimit()
            .filter(most -> mass * Allowance.of(rules, model).listedFactor() > most)
            .isPresent();
    return boat.roadLimit()
        .map(
            most ->
                judged(
                    CheckQuestion.of(CheckId.ROAD_LOAD, Measure.MASS),
                    Margin.atMost(most, OptionalDouble.of(mass), Unit.KILOGRAM),
                    close,
                    "plate or papers of what carries it on the road, as stated",
                    Note.NONE));
  }

  private static Finding judged(
      CheckQuestion question, Margin margin, boolean close, String source, Note note) {
    Outcome outcome =
        !margin.met() ? Outcome.FALLS_SHORT : close ? Outcome.BORDERLINE : Outcome.MEETS;
    return new Finding(
        question,
        outcome == Outcome.MEETS ? Role.INFORMATION : Role.FORBIDS_AN_ACT,
        outcome,
        margin,
        source,
        LoadCase.AS_MEASURED,
        note);
  }
}
