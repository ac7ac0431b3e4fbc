package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import thwartwise.afloat.DynamicHeel;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Pose;
import thwartwise.boat.Body;
import thwartwise.boat.Side;
import thwartwise.loadcase.Disturbance;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.rules.RuleSet;

/**
 * May somebody, or everybody at once, shift suddenly from where they sit to one side? The criterion
 * is energy: the boat must swing back before water comes in. Where no swing can be computed, the
 * heel at rest may be at most half the flooding heel.
 */
public record SuddenShift(RuleSet rules) implements Check {
  private static final CheckQuestion ONE =
      CheckQuestion.of(CheckId.ONE_PERSON_SUDDENLY_TO_ONE_SIDE, Measure.SWING);
  private static final CheckQuestion ALL =
      CheckQuestion.of(CheckId.EVERYONE_SUDDENLY_TO_ONE_SIDE, Measure.SWING);
  private static final String SOURCE =
      "work of the moved weight against work of righting, dynamical stability of the textbooks"
          + " (FROM MEMORY)";
  private static final double UNLIMITED = Math.PI / 2;

  @Override
  public Role role() {
    return Role.FORBIDS_AN_ACT;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    Equilibria before = boat.atRest();
    List<CheckReading> one = new ArrayList<>();
    List<CheckReading> all = new ArrayList<>();
    for (Side side : boat.isAlikeOnBothSides() ? List.of(Side.PORT) : List.of(Side.values())) {
      for (int i = 0; i < boat.people().size(); i++) {
        Body body = boat.people().get(i);
        List<Body> people = PeopleMoves.replaced(boat.people(), i, atSide(body, side));
        one.addAll(readings(ONE, before, boat, people, body.name(), side));
      }
      if (boat.people().size() > 1) {
        List<Body> people = boat.people().stream().map(b -> atSide(b, side)).toList();
        all.addAll(readings(ALL, before, boat, people, "", side));
      }
    }
    return Stream.of(one, all)
        .flatMap(r -> r.stream().min(CheckReading.WORST_FIRST).stream())
        .toList();
  }

  private static Body atSide(Body body, Side side) {
    return body.hardToSide(-side.sign());
  }

  private static List<CheckReading> readings(
      CheckQuestion question,
      Equilibria before,
      LoadedBoat boat,
      List<Body> people,
      String who,
      Side side) {
    LoadCaseStep moved = LoadCaseStep.of(Act.SUDDENLY_HARD_TO_THE_SIDE, who).to(side);
    return boat.toSide(Disturbance.moved(moved, people), -side.sign()).stream()
        .filter(after -> !after.isOutdoneAfloat())
        .map(after -> reading(question, before, after.stiff(), side))
        .toList();
  }

  private static CheckReading reading(
      CheckQuestion question, Equilibria before, LoadedBoat after, Side side) {
    if (!before.allUpright()) {
      OptionalDouble none = OptionalDouble.empty();
      return reading(question, after, none, UNLIMITED, before.assessed(), Note.of(before));
    }
    double from = side.sign() * before.worst().map(Pose::heel).orElse(0.0);
    Optional<DynamicHeel> swing = after.swing(from, side);
    double flooding = swing.map(s -> s.flooding().orElse(UNLIMITED)).orElse(UNLIMITED);
    if (swing.map(s -> s.heel().isPresent()).orElse(false)) {
      Note note = Note.of(Note.Fact.SWINGS_SO_FAR);
      return reading(question, after, swing.get().heel(), flooding, true, note);
    }
    if (swing.map(s -> s.flooding().isPresent()).orElse(false)) {
      Note note = floods(swing.get());
      return reading(question, after, OptionalDouble.empty(), flooding, true, note);
    }
    return atRest(question, after, flooding);
  }

  private static Note floods(DynamicHeel swing) {
    return new Note.FloodsFirst(
        swing.floodingAt(), swing.flooding().orElseThrow(), -swing.spare().orElse(0));
  }

  private static CheckReading atRest(CheckQuestion question, LoadedBoat after, double flooding) {
    Equilibria rest = after.atRest();
    return reading(
        question,
        after,
        StableRest.greatest(rest, StableRest::heel),
        flooding / 2,
        rest.assessed(),
        Note.of(Note.Fact.NO_SWING_FOLLOWED));
  }

  private static CheckReading reading(
      CheckQuestion question,
      LoadedBoat after,
      OptionalDouble value,
      double limit,
      boolean assessed,
      Note note) {
    return new CheckReading(
        question,
        Margin.atMost(limit, value, Unit.DEGREE),
        assessed,
        SOURCE,
        after.loadCase(),
        note);
  }
}
