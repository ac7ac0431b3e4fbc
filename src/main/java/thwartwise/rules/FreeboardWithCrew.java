package thwartwise.rules;

import java.util.List;
import java.util.Optional;
import thwartwise.afloat.Equilibrium;
import thwartwise.afloat.FloatingBody;
import thwartwise.afloat.Freeboard;
import thwartwise.afloat.Pose;
import thwartwise.boat.Loading;
import thwartwise.rules.Parameters.Parameter;

/** The lowest edge with the recommended crew seated, compared with a minimum of the rule. */
final class FreeboardWithCrew {
  static final Parameter LEAST =
      Parameter.number("least", 0.01, 3, "the freeboard the rule wants, m");

  private FreeboardWithCrew() {}

  static List<FormulaResult> of(RatedBoat boat, Parameters values) {
    FormulaResult line =
        FormulaResult.of("freeboard at rest", CapKind.FREEBOARD, values.number(LEAST.name()));
    Optional<Pose> rest =
        Equilibrium.from(FloatingBody.dry(new Loading(boat.model(), boat.crew(), List.of(), 1)))
            .worst();
    return List.of(
        rest.map(p -> line.comparedWith(Freeboard.least(boat.model().edges(), p.plane()).height()))
            .orElse(line)
            .withNote(new FormulaNote.Crewed(!boat.crew().isEmpty(), rest.isPresent())));
  }
}
