package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.afloat.Pose;
import thwartwise.afloat.RightingCurve;
import thwartwise.afloat.TimedDynamicHeel;
import thwartwise.boat.Body;
import thwartwise.boat.Side;
import thwartwise.loadcase.Disturbance;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/**
 * How far does the boat swing when somebody, or everyone, moves hard against one side in the time
 * that a step takes? Next to {@link SuddenShift}, whose move takes no time at all.
 */
public record ShiftOverTime(RuleSet rules) implements Check {
  private static final CheckQuestion ONE =
      CheckQuestion.of(CheckId.ONE_PERSON_TO_ONE_SIDE_IN_A_STEP, Measure.SWING);
  private static final CheckQuestion ALL =
      CheckQuestion.of(CheckId.EVERYONE_TO_ONE_SIDE_IN_A_STEP, Measure.SWING);

  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    if (boat.people().isEmpty() || !boat.atRest().allUpright()) {
      return List.of();
    }
    List<CheckReading> one = new ArrayList<>();
    List<CheckReading> all = new ArrayList<>();
    for (Side side : boat.isAlikeOnBothSides() ? List.of(Side.PORT) : List.of(Side.values())) {
      double to = -side.sign();
      Optional<RightingCurve> before = boat.stiff().rightingCurve(side);
      for (int i = 0; i < boat.people().size(); i++) {
        Body body = boat.people().get(i);
        List<Body> people = PeopleMoves.replaced(boat.people(), i, body.hardToSide(to));
        one.addAll(readings(ONE, boat, before, people, body.name(), side));
      }
      if (boat.people().size() > 1) {
        List<Body> people = boat.people().stream().map(b -> b.hardToSide(to)).toList();
        all.addAll(readings(ALL, boat, before, people, "", side));
      }
    }
    List<CheckReading> worst = new ArrayList<>();
    one.stream().min(CheckReading.WORST_FIRST).ifPresent(worst::add);
    all.stream().min(CheckReading.WORST_FIRST).ifPresent(worst::add);
    return worst;
  }

  private List<CheckReading> readings(
      CheckQuestion question,
      LoadedBoat boat,
      Optional<RightingCurve> before,
      List<Body> people,
      String who,
      Side side) {
    LoadCaseStep moved =
        new LoadCaseStep.MovedInTime(who, rules.value("shift-time"), Optional.of(side), false);
    return boat.toSide(Disturbance.moved(moved, people), -side.sign()).stream()
        .filter(after -> !after.isOutdoneAfloat())
        .map(after -> reading(question, before, after.stiff(), side, heel(boat, side)))
        .toList();
  }

  private static double heel(LoadedBoat boat, Side side) {
    return side.sign() * boat.atRest().worst().map(Pose::heel).orElse(0.0);
  }

  private CheckReading reading(
      CheckQuestion question,
      Optional<RightingCurve> old,
      LoadedBoat after,
      Side side,
      double from) {
    Optional<RightingCurve> now = after.rightingCurve(side);
    if (old.isEmpty() || now.isEmpty()) {
      Note none = Note.of(Note.Fact.NO_TRIM);
      return reading(question, after, OptionalDouble.empty(), Math.PI / 2, false, none);
    }
    double radius = rules.value("roll-radius") * after.model().form().beam();
    TimedDynamicHeel swing =
        TimedDynamicHeel.of(old.get(), now.get(), from, rules.value("shift-time"), radius);
    Note note =
        Note.of(
            swing.heel().isPresent()
                ? Note.Fact.SUDDENLY_FARTHER
                : Note.Fact.FLOODS_BEFORE_SWINGING_BACK);
    double flooding = swing.flooding().orElse(Math.PI / 2);
    return reading(question, after, swing.heel(), flooding, true, note);
  }

  private CheckReading reading(
      CheckQuestion question,
      LoadedBoat after,
      OptionalDouble value,
      double limit,
      boolean assessed,
      Note note) {
    Limit time = rules.limit("shift-time");
    return new CheckReading(
        question,
        Margin.atMost(limit, value, Unit.DEGREE),
        assessed,
        time.cited(),
        after.loadCase(),
        note);
  }
}
