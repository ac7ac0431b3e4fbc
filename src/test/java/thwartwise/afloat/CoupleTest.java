package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/** The moments and the bend of a couple's energy against differences, at poses of every kind. */
class CoupleTest {
  private static final Vector3 AT = Vector3.of(1.7, -0.6, 0.9);
  private static final Vector3 REACTION = Vector3.of(0.3, 0.2, 0.1);

  private static final List<Couple> COUPLES =
      List.of(
          Couple.ahead(300, AT, REACTION),
          Couple.ahead(-120, AT, REACTION),
          Couple.toPort(250, AT, REACTION),
          Couple.toPort(-80, AT, REACTION),
          new Couple(200, -150, AT.minus(REACTION)));

  /** Any direction but within 6 degrees of standing on end. */
  private static WaterPlane any(Random random) {
    double heel = 2 * Math.PI * random.nextDouble() - Math.PI;
    return WaterPlane.of(heel, 2.9 * random.nextDouble() - 1.45, 0.2);
  }

  private static double energy(Couple couple, WaterPlane from, double heel, double trim) {
    return couple.energy(new WaterPlane(from.turned(heel, trim), from.height()));
  }

  // Central differences err by h2/6 of the third slope and by 1e-16 x 1000 J/h, both near 1e-6 for
  // h = 1e-4 where the trim is steep (slopes grow as 1/cos).
  @Test
  void its_moments_are_the_slopes_of_its_energy() {
    Random random = new Random(21);
    double h = 1e-5;
    for (int i = 0; i < 200; i++) {
      WaterPlane plane = any(random);
      for (Couple couple : COUPLES) {
        double heel = (energy(couple, plane, h, 0) - energy(couple, plane, -h, 0)) / (2 * h);
        double trim = (energy(couple, plane, 0, h) - energy(couple, plane, 0, -h)) / (2 * h);
        double near = 1e-4 * size(couple);
        assertThat(couple.heelMoment(plane)).as("%s", plane).isCloseTo(heel, within(near));
        assertThat(couple.trimMoment(plane)).as("%s", plane).isCloseTo(trim, within(near));
      }
    }
  }

  @Test
  void its_stiffness_is_the_bend_of_its_energy_along_any_turn() {
    Random random = new Random(22);
    double h = 1e-4;
    for (int i = 0; i < 200; i++) {
      WaterPlane plane = any(random);
      double angle = 2 * Math.PI * random.nextDouble();
      double a = Math.cos(angle);
      double b = Math.sin(angle);
      for (Couple couple : COUPLES) {
        double ahead = energy(couple, plane, h * a, h * b);
        double back = energy(couple, plane, -h * a, -h * b);
        double bend = (ahead - 2 * couple.energy(plane) + back) / (h * h);
        RestoringStiffness k = couple.curvature(plane);
        double ours = k.heel() * a * a + 2 * k.product() * a * b + k.trim() * b * b;
        // Fourth slope times h2/12: up to 1/cos4 of a trim of 1.45, 4700, times 1e-9.
        assertThat(ours).as("%s %s", couple, plane).isCloseTo(bend, within(1e-3 * size(couple)));
      }
    }
  }

  private static double size(Couple couple) {
    return Math.hypot(couple.ahead(), couple.toPort()) * couple.arm().norm();
  }

  // A pull to port above its reaction heels to port, which is negative: the energy falls that way.
  @Test
  void a_pull_to_port_turns_to_port_and_a_pull_ahead_puts_the_bow_down() {
    WaterPlane level = WaterPlane.of(0, 0, 0);
    Couple toPort = Couple.toPort(100, AT, REACTION);
    assertThat(toPort.heelMoment(level)).isCloseTo(100 * 0.8, within(1e-12));
    assertThat(toPort.trimMoment(level)).isCloseTo(0, within(1e-12));
    Couple ahead = Couple.ahead(100, AT, REACTION);
    assertThat(ahead.trimMoment(level)).isCloseTo(-100 * 0.8, within(1e-12));
    assertThat(ahead.heelMoment(level)).isCloseTo(0, within(1e-12));
  }

  @Test
  void the_lever_is_the_height_of_the_force_over_its_reaction() {
    Couple couple = Couple.toPort(100, AT, REACTION);
    assertThat(couple.lever(WaterPlane.of(0, 0, 7))).isCloseTo(0.8, within(1e-12));
    double heel = 0.3;
    assertThat(couple.lever(WaterPlane.of(heel, 0, 0)))
        .isCloseTo(0.8 * Math.cos(heel) - 0.8 * Math.sin(heel), within(1e-12));
  }

  @Test
  void a_boat_that_may_swing_has_no_part_of_the_arm_along_a_force_athwart() {
    assertThat(Couple.toPort(100, AT, REACTION).arm()).isEqualTo(Vector3.of(0, -0.8, 0.8));
    Vector3 along = Couple.ahead(100, AT, REACTION).arm();
    assertThat(along.minus(Vector3.of(1.4, 0, 0.8)).norm()).isLessThan(1e-12);
  }

  @Test
  void its_energy_does_not_depend_on_the_height_of_the_water() {
    Couple couple = COUPLES.get(4);
    assertThat(couple.energy(WaterPlane.of(0.2, 0.1, 3)))
        .isEqualTo(couple.energy(WaterPlane.of(0.2, 0.1, -1)));
  }

  @Test
  void a_boat_on_end_has_finite_moments() {
    WaterPlane onEnd = new WaterPlane(Vector3.of(1, 0, 0), 0);
    for (Couple couple : COUPLES) {
      assertThat(couple.heelMoment(onEnd)).isFinite();
      assertThat(couple.trimMoment(onEnd)).isFinite();
      assertThat(couple.curvature(onEnd).heel()).isFinite();
      assertThat(couple.curvature(onEnd).product()).isFinite();
    }
  }
}
