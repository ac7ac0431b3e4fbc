package thwartwise.spread;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Chamber;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.inspection.PlainHulls;

/**
 * A boat as somebody measures it whose errors scatter as the spreads have it. What people weigh is
 * no measurement of the boat: an adult counts what the rules say.
 */
public final class MeasuringErrors {
  private MeasuringErrors() {}

  /** The boat that is taken for this one. */
  public static Boat measured(Boat truth, SplittableRandom random) {
    BoatModel model = BoatModel.of(truth, PlainHulls.TODAY);
    List<SpreadInput> inputs =
        SpreadInputs.of(
            truth,
            model,
            RuleSetFile.cautiousDefault(),
            RuleSetFile.measuringSpreads(),
            Set.of(),
            0);
    double[] read = inputs.stream().mapToDouble(i -> i.distribution().draw(random)).toArray();
    Boat measured = VariedBoat.asMeasured(truth, 0).at(inputs, read).boat();
    List<Chamber> chambers = new ArrayList<>();
    for (Chamber chamber : measured.chambers()) {
      double factor = 1;
      for (int i = 0; i < read.length; i++) {
        boolean own =
            inputs.get(i).kind() == InputKind.CHAMBER_VOLUME
                && chamber.parts().get(0).name().equals(inputs.get(i).item());
        factor = own ? read[i] : factor;
      }
      chambers.add(longer(chamber, model.form().length() / 2, factor));
    }
    return measured.withChambers(chambers);
  }

  /** Its end nearer the middle of the boat lies elsewhere, so that it holds so much more. */
  private static Chamber longer(Chamber chamber, double amidships, double factor) {
    Span x = chamber.box().x();
    double length = x.length() * factor;
    Span other =
        x.middle() < amidships
            ? new Span(x.from(), x.from() + length)
            : new Span(x.to() - length, x.to());
    return new Chamber(
        chamber.name(),
        new Box(other, chamber.box().y(), chamber.box().z()),
        chamber.filling(),
        chamber.measuredVolume(),
        chamber.mirrored(),
        chamber.limberHole(),
        chamber.twin());
  }
}
