package thwartwise.checklist;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.boat.Boat;
import thwartwise.boat.Opening;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.geometry.Vector3;
import thwartwise.record.SampleBoats;
import thwartwise.sampleboats.ElectricBoat;

/**
 * The plain boat has two air chambers, foam, a motor and a battery, and neither hatch nor cleat.
 */
class ChecklistTest {
  private static final Boat PLAIN = SampleBoats.plain();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
      any boat | Look.
      holes that something closes | -
      hatches into chambers | -
      air chambers | Look (fore locker, midships thwart).
      foam | Look (side foam).
      kit | Look (battery, motor).
      batteries and chargers | Look (battery).
      petrol | -
      a motor | Look.
      cleats | -
      """)
  void a_point_is_asked_of_a_boat_that_has_what_it_concerns_and_names_it(
      String concern, String told) {
    assertThat(told(PLAIN, concern)).isEqualTo(told.equals("-") ? List.of() : List.of(told));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
      petrol | Look (petrol can).
      kit | Look (battery, motor, petrol can).
      """)
  void what_is_added_is_asked_about(String concern, String told) {
    assertThat(told(SampleBoats.withKit(PLAIN, "petrol can", 5), concern)).containsExactly(told);
  }

  /** A lid, a cover or a bag belongs to it; to a hole for a cable there is none. */
  @Test
  void a_hatch_or_pocket_into_a_chamber_is_asked_about_and_a_cable_hole_is_not() {
    Boat holed =
        PLAIN.withOpenings(
            List.of(
                into("hatch", 0.3, Optional.empty()),
                into("pocket", 0.15, Optional.of(0.15)),
                into("cable hole", 0.012, Optional.of(0.012)),
                new Opening("notch", Vector3.of(0, 0, 0.38), 0.3, true)));
    assertThat(told(holed, "hatches into chambers")).containsExactly("Look (hatch, pocket).");
  }

  private static Opening into(String name, double width, Optional<Double> diameter) {
    return new Opening(
        name,
        Vector3.of(2.9, 0, 0.3),
        width,
        true,
        Optional.of("lid"),
        Optional.of("fore locker"),
        diameter);
  }

  private static List<String> told(Boat boat, String concern) {
    ChecklistPoint point =
        Stream.of(Concern.values())
            .filter(c -> c.word().equals(concern))
            .map(c -> new ChecklistPoint("Look", "why", c))
            .findFirst()
            .orElseThrow();
    return new Checklist("n", "w", "s", List.of(point))
        .askedOf(boat).stream().map(p -> p.of(boat) + ".").toList();
  }

  /** A name need not say what a thing is; the entry of the battery and of the motor does. */
  @Test
  void battery_and_motor_are_asked_about_under_any_name() {
    Boat boat = ElectricBoat.called("house bank", "pusher");
    assertThat(Concern.BATTERIES.names(boat)).containsExactly("house bank");
    assertThat(Concern.MOTOR.isOf(boat)).isTrue();
    assertThat(Concern.MOTOR.isOf(boat.withElectrics(ElectricalSystem.NONE))).isFalse();
  }
}
