package thwartwise.inspection;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Space;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Margin;
import thwartwise.checks.Measure;
import thwartwise.checks.Note;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.loadcase.LoadCase;

/**
 * Chambers whose poured litres differ from the drawn volume by more than a fifth: one of the two is
 * wrong.
 */
public final class ChamberVolumeComparison {
  private static final double FIFTH = 0.2;

  private ChamberVolumeComparison() {}

  /** Whether poured and drawn volume, m³, differ by more than errors of measurement explain. */
  public static boolean disagree(double poured, double drawn) {
    return Math.abs(poured - drawn) > FIFTH * drawn;
  }

  static List<Finding> findings(BoatModel model) {
    return model.spaces().stream().flatMap(s -> finding(s).stream()).toList();
  }

  private static Optional<Finding> finding(Space space) {
    double drawn = space.solid().volume();
    return space
        .part()
        .measuredVolume()
        .filter(poured -> disagree(poured, drawn))
        .map(
            poured ->
                new Finding(
                    CheckQuestion.of(CheckId.LITRES_POURED, Measure.VOLUME, space.name()),
                    Role.INFORMATION,
                    Outcome.FALLS_SHORT,
                    new Margin(OptionalDouble.of(poured), drawn, poured < drawn, Unit.LITRE),
                    "they should agree within a fifth (judgement)",
                    LoadCase.AS_MEASURED,
                    Note.of(Note.Fact.SMALLER_VOLUME_COUNTS)));
  }
}
