package thwartwise.plausibility;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.boat.Propulsion;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.measure.UnitFormat;
import thwartwise.report.PlausibilityWords;
import thwartwise.sampleboats.BoatEdits;
import thwartwise.sampleboats.OrdinaryBoats;

/** A pram with oars of 3 kg and an anchor of 3.5 kg; masses are judgement, as in UsualKit. */
class KitMassPlausibilityTest {
  private static final PlausibleLimits LIMITS = new PlausibleLimits(RuleSetFile.cautiousDefault());
  private static final Boat PRAM = OrdinaryBoats.all().get(0);

  private static List<PlausibilityFinding> of(Boat boat) {
    return KitMassPlausibility.of(BoatModel.of(boat, OrdinaryBoats.TODAY), LIMITS);
  }

  private static Boat weighing(String name, double mass) {
    return BoatEdits.withKit(
        PRAM,
        0,
        k ->
            new Kit(name, mass, Vector3.of(1.2, 0, 0.4), Optional.empty(), true, Optional.empty()));
  }

  @Test
  void oars_of_forty_kilograms_for_four_are_doubted_with_what_was_meant() {
    PlausibilityFinding doubt = of(weighing("oars", 40)).get(0);
    assertThat(doubt.id().text()).isEqualTo("kit-mass:oars");
    assertThat(doubt.withholds()).isTrue();
    assertThat(PlausibilityWords.of(doubt, UnitFormat.METRIC))
        .isEqualTo(
            "kit \"oars\", mass: 40 kg, limit 12 kg; 40 kg is not what such a thing"
                + " weighs; did the decimal point slip, from 4 kg? Weigh it again");
    assertThat(doubt.finding().source()).isEqualTo("what such things weigh (judgement)");
  }

  @Test
  void oars_of_four_hundred_grams_are_doubted_as_well() {
    assertThat(PlausibilityWords.of(of(weighing("oars", 0.4)).get(0), UnitFormat.METRIC))
        .isEqualTo(
            "kit \"oars\", mass: 0 kg, limit 2 kg; 0.4 kg is not what such a thing weighs;"
                + " did the decimal point slip, from 4 kg? Weigh it again");
  }

  @Test
  void what_no_name_tells_is_doubted_only_where_nobody_could_lift_it() {
    assertThat(of(weighing("sack", 75))).isEmpty();
    assertThat(PlausibilityWords.of(of(weighing("sack", 800)).get(0), UnitFormat.METRIC))
        .isEqualTo(
            "kit \"sack\", mass: 800 kg, limit 75 kg; 800 kg is not what such a thing"
                + " weighs: weigh it again");
  }

  /** Of so many the most counts for each, and a bracket or a box is none of them. */
  @ParameterizedTest
  @CsvSource({
    "two pairs of oars, 1.2, 24",
    "'oars, pair', 1.2, 12",
    "anchor and line, 0.7, 25",
    "12 V battery, 0, 75",
    "2 batteries, 0.5, 150",
    "battery box, 0, 75",
    "battery 2, 0.5, 75",
    "Fuel tank, 0, 50"
  })
  void a_name_tells_what_a_thing_can_weigh(String name, double least, double most) {
    assertThat(UsualKit.mass(name)).hasValue(new Span(least, most));
  }

  /**
   * 10 hp, 7.5 kW: 25 kg and 5 g for each watt, 62.5 kg; of the same figure ten times is doubted.
   */
  @Test
  void a_motor_is_held_against_what_it_gives() {
    Propulsion ten = new Propulsion.Outboard(7500);
    assertThat(LIMITS.kitMass("motor", ten).to()).isEqualTo(62.5);
    assertThat(LIMITS.kitMass("motor", new Propulsion.Manual()).to()).isEqualTo(220);
  }
}
