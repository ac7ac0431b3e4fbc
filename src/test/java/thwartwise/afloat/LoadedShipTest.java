package thwartwise.afloat;

import static thwartwise.afloat.BoxAfloat.meets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Loading;
import thwartwise.boat.Side;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;

/** Ships loaded, unloaded and listed on paper, through loading, equilibrium and righting curve. */
class LoadedShipTest {

  /** Small, so that a ship with the published KM follows GM W sin as its book does. */
  private static final double RADIUS = 0.1;

  static Stream<Reference> ships() {
    return Reference.of("loaded-ship");
  }

  @ParameterizedTest
  @MethodSource("ships")
  void a_loaded_ship_has_the_published_heights_and_list(Reference r) {
    Loading loading = loading(r);
    Vector3 centre = loading.centre();
    meets(r, "KG", centre.z());
    meets(r, "aside", Math.abs(centre.y()));
    FloatingBody level = ship(r, loading.mass(), Vector3.of(0, 0, centre.z()));
    meets(r, "GM", upright(level));
    FloatingBody listed = ship(r, loading.mass(), Vector3.of(0, centre.y(), centre.z()));
    RightingCurve curve = RightingCurve.toward(Side.STARBOARD, listed, List.of()).orElseThrow();
    meets(r, "moment", -curve.moment(curve.points().get(0)) / Gravity.STANDARD);
    meets(r, "list", Math.toDegrees(Equilibrium.from(listed).worst().orElseThrow().heel()));
  }

  private static double upright(FloatingBody floating) {
    return Equilibrium.from(floating).worst().orElseThrow().metacentricHeight();
  }

  private static Loading loading(Reference r) {
    List<Loading.Weight> cargo = new ArrayList<>();
    for (int i = 1; r.inputs().containsKey("w" + i); i++) {
      Vector3 at = Vector3.of(30, r.in("y" + i, 0), r.in("z" + i));
      cargo.add(new Loading.Weight(r.in("w" + i), at));
    }
    BoxBoat boat = BoxBoat.of(60, 20, 40).hull(r.in("w0"), r.in("z0"));
    return new Loading(boat.model(), List.of(), cargo, 1);
  }

  /** A deep narrow box whose metacentre stands at the published KM. */
  private static FloatingBody ship(Reference r, double mass, Vector3 centre) {
    double draught = 2 * (r.in("KM") - RADIUS);
    double breadth = Math.sqrt(12 * draught * RADIUS);
    double length = 20 * breadth;
    Solid block = Blocks.block(length, breadth, 2 * draught);
    double volume = length * breadth * draught;
    return new FloatingBody(mass, centre, List.of(new Lift(block, 1)), mass / volume);
  }
}
