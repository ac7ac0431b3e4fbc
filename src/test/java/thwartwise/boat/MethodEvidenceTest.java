package thwartwise.boat;

import static thwartwise.Assertions.assertThat;
import static thwartwise.boat.MeasurementKind.CHAMBER_LITRES;
import static thwartwise.boat.MeasurementKind.EDGE_HEIGHTS;
import static thwartwise.boat.MeasurementKind.HULL_BALANCE;
import static thwartwise.boat.MeasurementKind.HULL_INCLINED;
import static thwartwise.boat.MeasurementKind.HULL_WEIGHT;
import static thwartwise.boat.MeasurementKind.SHELL_THICKNESS;
import static thwartwise.boat.MeasurementKind.SOAKED_DENSITY;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Assumption.Simplification;
import thwartwise.hull.Material;
import thwartwise.record.SampleBoats;

/** A way of measuring counts only of what was measured; a guess always counts. */
class MethodEvidenceTest {
  private static final Boat SOUP = SampleBoats.plain();

  private static Optional<MeasuringWay> way(
      Boat boat, MeasurementKind kind, MeasuringWay way, String item) {
    return new MethodEvidence(
            boat.withMethods(List.of(new MeasuringMethod(kind, Optional.empty(), way))))
        .way(kind, item);
  }

  private static Optional<MeasuringWay> way(Boat boat, MeasurementKind kind, MeasuringWay way) {
    return way(boat, kind, way, "");
  }

  @Test
  void a_centre_that_is_estimated_was_neither_rolled_nor_inclined() {
    Boat estimated = SampleBoats.with("\"centre\": { \"x\": 1.70, \"y\": 0.0, \"z\": 0.21 },", "");
    assertThat(way(estimated, HULL_BALANCE, MeasuringWay.ROLLER)).isEmpty();
    assertThat(way(estimated, HULL_INCLINED, MeasuringWay.INCLINED)).isEmpty();
    assertThat(way(estimated, HULL_BALANCE, MeasuringWay.GUESS)).contains(MeasuringWay.GUESS);
    assertThat(way(SOUP, HULL_BALANCE, MeasuringWay.ROLLER)).contains(MeasuringWay.ROLLER);
  }

  @Test
  void a_jug_counts_for_chambers_of_which_the_litres_are_known() {
    assertThat(way(SOUP, CHAMBER_LITRES, MeasuringWay.JUG, "midships thwart"))
        .contains(MeasuringWay.JUG);
    assertThat(way(SOUP, CHAMBER_LITRES, MeasuringWay.JUG, "fore locker")).isEmpty();
  }

  @Test
  void a_density_taken_from_the_material_was_not_weighed_in_an_offcut() {
    Boat stated = SampleBoats.with("\"material\": \"plywood\"", "\"density\": 700");
    assertThat(way(SOUP, SOAKED_DENSITY, MeasuringWay.OFFCUT)).isEmpty();
    assertThat(way(stated, SOAKED_DENSITY, MeasuringWay.OFFCUT)).contains(MeasuringWay.OFFCUT);
  }

  @Test
  void a_thickness_that_is_usual_was_not_measured_with_callipers() {
    Boat usual = SOUP.withAssumptions(List.of(Assumption.thickShell(Material.PLYWOOD)));
    assertThat(way(usual, SHELL_THICKNESS, MeasuringWay.CALLIPERS)).isEmpty();
    assertThat(way(SOUP, SHELL_THICKNESS, MeasuringWay.CALLIPERS)).contains(MeasuringWay.CALLIPERS);
  }

  /** Drawn from length, beam and depth; only its weight can have been taken. */
  @Test
  void of_a_borrowed_boat_nothing_but_the_weight_was_measured() {
    Boat borrowed =
        SOUP.withAssumptions(List.of(new Assumption.Simplified(Simplification.SHORT_WALK)));
    assertThat(way(borrowed, EDGE_HEIGHTS, MeasuringWay.TAUT_LINE)).isEmpty();
    assertThat(new MethodEvidence(borrowed).kinds()).containsExactly(HULL_WEIGHT);
    Boat heavy = SOUP.withAssumptions(List.of(new Assumption.HullByArea(20)));
    assertThat(way(heavy, HULL_WEIGHT, MeasuringWay.BATHROOM_SCALES)).isEmpty();
  }

  /** Else the guess of all others would be lost behind a word that counts for nothing. */
  @Test
  void what_counts_for_nothing_hides_no_guess() {
    Boat boat =
        SOUP.withMethods(
            List.of(
                new MeasuringMethod(CHAMBER_LITRES, Optional.empty(), MeasuringWay.GUESS),
                new MeasuringMethod(CHAMBER_LITRES, Optional.of("fore locker"), MeasuringWay.JUG)));
    MethodEvidence evidence = new MethodEvidence(boat);
    assertThat(evidence.way(CHAMBER_LITRES, "fore locker")).contains(MeasuringWay.GUESS);
    assertThat(evidence.unmeasured()).containsExactly(boat.methods().get(1));
    assertThat(evidence.counting()).containsExactly(boat.methods().get(0));
  }
}
