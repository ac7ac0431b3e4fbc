package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.crew.Recommendation;
import thwartwise.sampleboats.OrdinaryBoats;

/**
 * What a reader takes for granted of a limit, on the two quickest of the ordinary boats; {@link
 * LimitsSweep} asks all forty.
 */
class OrdinaryBoatsLimitsTest {
  private static final Boat CANOE = named("16 ft canoe");
  private static final Recommendation OF_THE_CANOE = LimitsProperties.of(CANOE);

  private static Boat named(String name) {
    return OrdinaryBoats.all().stream()
        .filter(b -> b.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void every_mass_of_people_below_the_limit_meets_everything() {
    assertThat(LimitsProperties.peopleBelowTheLimit(CANOE, OF_THE_CANOE, 1)).isEmpty();
  }

  @Test
  void every_weight_besides_below_the_limit_meets_everything_wherever_it_stands() {
    assertThat(OF_THE_CANOE.extra()).isPositive();
    assertThat(LimitsProperties.weightsBelowTheLimit(CANOE, OF_THE_CANOE)).isEmpty();
  }

  @Test
  void a_millimetre_or_a_tenth_of_a_kilogram_moves_no_figure_by_more_than_two_kilograms() {
    assertThat(LimitsProperties.hairsBreadths(CANOE, OF_THE_CANOE)).isEmpty();
  }

  // Without the station of a quarter three kilograms more of people were told.
  @Test
  void who_knows_less_is_told_no_more() {
    assertThat(LimitsProperties.lessKnown(CANOE, OF_THE_CANOE)).isEmpty();
  }

  // Its poorest way to seat two carries 95 kg each, and left nothing besides; with the tank under
  // the
  // thwart only claimed that way was left out, and there were five kilograms more in all.
  @Test
  void a_poor_way_to_sit_that_is_left_out_raises_nothing() {
    Boat boat = named("14 ft pulling boat");
    String claimed = "middle thwart only claimed";
    Map<String, Boat> less = Map.of(claimed, LimitsProperties.lessKnown(boat).get(claimed));
    assertThat(LimitsProperties.lessKnown(less, LimitsProperties.of(boat))).isEmpty();
  }
}
