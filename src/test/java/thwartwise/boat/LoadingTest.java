package thwartwise.boat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.geometry.Box;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Vector3;

class LoadingTest {

  static Stream<Reference> weights() {
    return Reference.of("weights");
  }

  /** The first weight is the hull, the others are kit. */
  @ParameterizedTest
  @MethodSource("weights")
  void the_centre_of_gravity_follows_from_the_moments(Reference r) {
    BoxBoat boat = BoxBoat.of(60, 20, 40).hull(r.in("w0"), r.in("z0"));
    double mass = r.in("w0");
    for (int i = 1; r.inputs().containsKey("w" + i); i++) {
      boat.weight("cargo " + i, r.in("w" + i), Vector3.of(30, 0, r.in("z" + i)));
      mass += r.in("w" + i);
    }
    Loading loading = new Loading(boat.model(), List.of(), List.of(), 1);
    assertThat(loading.mass()).isCloseTo(mass, within(1e-9));
    assertThat(loading.centre().z()).isCloseTo(r.wanted("KG"), within(r.near("KG")));
    Loading heavier = new Loading(boat.model(), List.of(), List.of(), 1.05);
    assertThat(heavier.mass()).isCloseTo(1.05 * mass, within(1e-6));
    assertThat(heavier.centre().minus(loading.centre()).norm()).isLessThan(1e-12);
  }

  // IMO A.749(18) 3.5.2.7 (READ): centre 0.30 m above the seat, 1.0 m above the floor standing.
  // Upright the weight acts at the seat (references E2).
  @Test
  void a_person_sits_low_and_stands_high() {
    Place thwart = new Place("thwart", 1.5, 0.25, 0.4, 2);
    Body seated = Body.seated("helm", 80, thwart, -0.2, 0.03);
    assertThat(seated.centre()).isEqualTo(Vector3.of(1.5, -0.2, 0.25));
    assertThat(seated.stiff().centre()).isEqualTo(Vector3.of(1.5, -0.2, 0.55));
    assertThat(seated.standing().centre()).isEqualTo(Vector3.of(1.5, -0.2, 1.03));
  }

  // The two boxes of a body hold its mass at 1000 kg/m3: legs 32 % from floor to seat, the rest
  // 0.85 m above it. On the floor itself the legs lie 0.10 m thick, and the rest above them.
  @Test
  void a_body_displaces_its_mass() {
    for (double seat : List.of(0.03, 0.10, 0.25)) {
      double lap = Math.max(seat, 0.13);
      Body body = Body.seated("helm", 80, new Place("thwart", 1.5, seat, 0.4, 2), 0.1, 0.03);
      List<Box> boxes = body.boxes();
      assertThat(boxes.stream().mapToDouble(Box::volume).sum()).isCloseTo(0.080, within(1e-12));
      assertThat(boxes.get(0).volume()).isCloseTo(0.0256, within(1e-12));
      assertThat(boxes.get(0).z().to()).isCloseTo(lap, within(1e-12));
      assertThat(boxes.get(1).z().from()).isCloseTo(lap, within(1e-12));
      assertThat(boxes.get(1).z().length()).isCloseTo(0.85, within(1e-12));
    }
  }
}
