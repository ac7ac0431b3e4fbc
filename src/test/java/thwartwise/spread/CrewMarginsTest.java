package thwartwise.spread;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.checks.CheckId;
import thwartwise.checks.Measure;
import thwartwise.crew.Seating;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.PlainHulls;
import thwartwise.rules.RuleSet;
import thwartwise.uncertainty.Distribution;
import thwartwise.uncertainty.FirstOrderPropagation;
import thwartwise.uncertainty.MonteCarloPropagation;
import thwartwise.uncertainty.PropagatedResult;
import thwartwise.uncertainty.SampledResult;

/** The freeboard of a box, D - M/(rho L B), and what moves it: closed forms, DERIVED. */
class CrewMarginsTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();
  private static final double MASS = 1300;

  /** Kilograms that sink the box by a metre. */
  private static final double PER_METRE = 1000 * TextbookBox.LENGTH * TextbookBox.BREADTH;

  private static final CrewCase NOBODY =
      new CrewCase.SeatedCrew(new Seating(List.of(0)), List.of(), Packing.SPREAD);

  private record Margins(List<SpreadInput> inputs, CrewMargins margins) {
    static Margins of(Boat boat) {
      BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
      List<SpreadInput> inputs =
          SpreadInputs.of(boat, model, RULES, RuleSetFile.measuringSpreads(), Set.of(), 0);
      return new Margins(
          inputs, new CrewMargins(boat, model, RULES, inputs, List.of(NOBODY), new CaseFigures()));
    }

    List<Distribution> distributions() {
      return inputs.stream().map(SpreadInput::distribution).toList();
    }

    PropagatedResult freeboard() {
      return FirstOrderPropagation.of(distributions(), margins, 1).get(ofFreeboard());
    }

    int ofFreeboard() {
      return IntStream.range(0, margins.figures().size())
          .filter(
              i ->
                  margins
                      .figures()
                      .get(i)
                      .question()
                      .asks(CheckId.FREEBOARD_AT_REST, Measure.FREEBOARD))
          .findFirst()
          .orElseThrow();
    }

    double contribution(PropagatedResult freeboard, InputKind kind) {
      return IntStream.range(0, inputs.size())
          .filter(i -> inputs.get(i).kind() == kind)
          .mapToDouble(freeboard::contribution)
          .findFirst()
          .orElseThrow();
    }
  }

  @Test
  void the_freeboard_of_a_box_is_moved_as_the_closed_form_says() {
    Margins box = Margins.of(TextbookBox.weighing(MASS));
    PropagatedResult freeboard = box.freeboard();

    double draught = MASS / PER_METRE;
    assertThat(freeboard.best()).isCloseTo(TextbookBox.DEPTH - draught - 0.20, within(1e-6));
    // Edges by the 20 mm of the default set.
    assertThat(box.contribution(freeboard, InputKind.EDGE_HEIGHTS)).isCloseTo(0.020, within(1e-6));
    // 5 % of the mass, of which the scales' part is 0.6 and the hull's own 0.8: 3 % and 4 %.
    assertThat(box.contribution(freeboard, InputKind.HULL_MASS))
        .isCloseTo(-0.04 * draught, within(1e-6));
    assertThat(box.contribution(freeboard, InputKind.SCALES))
        .isCloseTo(-0.03 * draught, within(1e-6));
    // A broader box floats higher: d(-M/(rho L B))/dB = +T/B, and 0.3 % of B.
    assertThat(box.contribution(freeboard, InputKind.TAPE))
        .isCloseTo(0.003 * draught, within(1e-6));
    // What lifts only when swamped moves nothing.
    assertThat(box.contribution(freeboard, InputKind.SWAMPED_DENSITY)).isCloseTo(0, within(1e-9));
    assertThat(box.contribution(freeboard, InputKind.SHELL_THICKNESS)).isCloseTo(0, within(1e-9));
  }

  /**
   * 400 boxes worked out in full, all of them down by the stern so that one corner is the lowest:
   * mean and spread are those of first order. Of 400 the mean scatters by a twentieth of the
   * spread, and the spread by 3.5 %; three times that.
   */
  @Test
  void boxes_worked_out_in_full_agree_with_first_order() {
    Margins box = Margins.of(TextbookBox.weighing(1000, -0.2));
    PropagatedResult first = box.freeboard();
    SampledResult inFull =
        MonteCarloPropagation.of(box.distributions(), box.margins, 400, 5).get(box.ofFreeboard());

    double spread = first.standardUncertainty();
    assertThat(inFull.missing()).isZero();
    assertThat(inFull.mean()).isCloseTo(first.best(), within(0.15 * spread));
    assertThat(inFull.standardDeviation()).isCloseTo(spread, within(0.11 * spread));
  }

  /**
   * On an even keel either end may be the lower one, whichever way a measurement is off: first
   * order alone sees no change, and the second order, one measurement at a time, is the poorer.
   */
  @Test
  void where_either_end_may_be_the_lower_one_second_order_flatters_least() {
    Margins box = Margins.of(TextbookBox.weighing(MASS));
    PropagatedResult first = box.freeboard();
    int inputs = box.inputs.size();
    double[][] drawn = new CaseFigures().deviations(box.inputs);
    SampledResult second = SampledResult.of(first.at(drawn, CaseFigures.DRAWS));
    SampledResult inFull =
        MonteCarloPropagation.of(box.distributions(), box.margins, 400, 5).get(box.ofFreeboard());

    assertThat(inputs).isEqualTo(19);
    assertThat(first.best()).isGreaterThan(inFull.mean());
    assertThat(second.mean()).isLessThan(inFull.mean());
    assertThat(second.shareAtLeast(0)).isLessThan(inFull.shareAtLeast(0));
  }

  @Test
  void a_crew_worked_out_before_is_found_again_by_who_it_is() {
    Boat boat = TextbookBox.weighing(MASS);
    BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
    CaseFigures known = new CaseFigures();
    CrewMargins before = new CrewMargins(boat, model, RULES, List.of(), List.of(NOBODY), known);
    CrewCase again = new CrewCase.SeatedCrew(new Seating(List.of(0)), List.of(), Packing.SPREAD);
    CrewMargins now = new CrewMargins(boat, model, RULES, List.of(), List.of(again), known);
    double[] rooms = now.results(new double[0]);
    assertThat(rooms).isEqualTo(before.results(new double[0])).isNotEmpty();
    assertThat(now.leastOfEach(List.of(again), rooms))
        .containsExactly(Arrays.stream(rooms).min().orElseThrow());
    assertThat(rooms).doesNotContain(0);
  }
}
