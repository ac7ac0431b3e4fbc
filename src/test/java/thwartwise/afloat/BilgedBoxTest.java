package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Loading;
import thwartwise.geometry.Box;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * Textbook bilging through the code of the swamped boat.
 *
 * <p>How the numbers map: the box is cut into chambers that are all proven but one. The bilged
 * compartment is left open, or, where its permeability μ is under one, is a chamber of which
 * measured litres let a share 1 − μ count. The hull has the whole mass and the stated G, and a
 * shell of 1e-7 m and 1e12 kg/m³, which lifts next to nothing: so the shell, which the textbook
 * does not know, takes no part. A shell with a volume of its own is added back in the last test.
 */
class BilgedBoxTest {

  static Stream<Reference> amidships() {
    return Reference.of("bilged-amidships");
  }

  @ParameterizedTest
  @MethodSource("amidships")
  void a_box_bilged_amidships_sinks_to_the_published_draft(Reference r) {
    Pose pose = onlyPose(amidshipsOpen(r));
    assertThat(pose.tilt()).isLessThan(1e-6);
    meets(r, "draft", pose.plane().height());
    meets(r, "KB", pose.part().centroid().z());
    meets(r, "GM", pose.metacentricHeight());
  }

  @Test
  void a_published_gm_known_to_be_wrong_is_not_met() {
    Reference wrong =
        Reference.read(Reference.KNOWN_WRONG).stream()
            .filter(k -> k.id().equals("A24-reduction"))
            .findFirst()
            .orElseThrow();
    double gm = onlyPose(amidshipsOpen(wrong)).metacentricHeight();
    assertThat(Math.abs(gm - wrong.wanted("GM"))).isGreaterThan(0.4);
  }

  private static BoatModel amidshipsOpen(Reference r) {
    double mid = r.in("L") / 2;
    double half = r.in("l") / 2;
    BoxBoat boat = textbook(r);
    boat.proven("aft", new Span(0, mid - half));
    boat.proven("fore", new Span(mid + half, r.in("L")));
    Span along = new Span(mid - half, mid + half);
    double wide = r.in("w");
    double high = r.in("h", r.in("D"));
    if (wide < r.in("B")) {
      boat.proven("port", along, new Span(wide / 2, r.in("B")), Span.ALL);
      boat.proven("starboard", along, new Span(-r.in("B"), -wide / 2), Span.ALL);
    }
    Span across = new Span(-wide / 2, wide / 2);
    if (high < r.in("D")) {
      boat.proven("over it", along, across, new Span(high, r.in("D")));
    }
    partly(boat, r, new Box(along, across, new Span(0, high)));
    return boat.model();
  }

  private static void partly(BoxBoat boat, Reference r, Box box) {
    if (r.in("mu") < 1) {
      double litres = (1 - r.in("mu")) * box.volume();
      boat.chamber(BoxBoat.proven("bilged", box, Optional.of(litres)));
    }
  }

  private static BoxBoat textbook(Reference r) {
    double mass = 1000 * r.in("L") * r.in("B") * r.in("d");
    return BoxBoat.of(r.in("L"), r.in("B"), r.in("D")).hull(mass, r.in("KG")).weightlessShell();
  }

  static Stream<Reference> ends() {
    return Reference.of("bilged-end");
  }

  @ParameterizedTest
  @MethodSource("ends")
  void a_box_bilged_at_its_fore_end_trims_by_the_bow_as_published(Reference r) {
    BoxBoat boat = textbook(r);
    Span fore = new Span(r.in("L") - r.in("l"), r.in("L"));
    boat.proven("main", new Span(0, r.in("L") - r.in("l")));
    boat.proven("over it", fore, Span.ALL, new Span(r.in("h"), r.in("D")));
    Span across = new Span(-r.in("B") / 2, r.in("B") / 2);
    partly(boat, r, new Box(fore, across, new Span(0, r.in("h"))));
    Pose pose = onlyPose(boat.model());
    assertThat(pose.trim()).as("bow down").isPositive();
    // Heights up the box's own end posts: what a draft mark shows.
    double aft = draftAt(pose, 0);
    double bow = draftAt(pose, r.in("L"));
    meets(r, "sinkage", (aft + bow) / 2 - r.in("d"));
    meets(r, "trim", bow - aft);
    meets(r, "fore", bow);
    meets(r, "aft", aft);
  }

  private static double draftAt(Pose pose, double x) {
    Vector3 up = pose.plane().up();
    return (pose.plane().height() - up.x() * x) / up.z();
  }

  // Closed form, DERIVED: box 4 x 1.4 x 0.5 with a shell of 10 mm that lifts by all its volume,
  // two end tanks of 1 m. Under water to a draft d stand: the ends in full, 2 b L_e (d - t) inside
  // plus the shell, that is the whole outside L B d less the open middle (4 - 2) x 1.38 x (d -
  // 0.01).
  @Test
  void a_shell_with_a_volume_of_its_own_lifts_by_just_that() {
    double t = 0.01;
    BoxBoat boat = BoxBoat.of(4, 1.4, 0.5).hull(300, 0.2).solidShell(t);
    boat.proven("aft", new Span(0, 1)).proven("fore", new Span(3, 4));
    Pose pose = onlyPose(boat.model());
    double open = 2 * 1.38;
    double draft = (0.300 - open * t) / (4 * 1.4 - open);
    assertThat(pose.plane().height()).isCloseTo(draft, within(1e-7));
    double inertia = (4 * Math.pow(1.4, 3) - 2 * Math.pow(1.38, 3)) / 12;
    double first = 4 * 1.4 * draft * draft / 2 - open * (draft * draft - t * t) / 2;
    double gm = first / 0.3 + inertia / 0.3 - 0.2;
    assertThat(pose.metacentricHeight()).isCloseTo(gm, within(1e-6));
  }

  private static Pose onlyPose(BoatModel model) {
    Loading loading = new Loading(model, List.of(), List.of(), 1);
    Equilibria found = Equilibrium.from(Swamping.of(loading, 1).floating(List.of()));
    assertThat(found.reached()).hasSize(1);
    assertThat(found.allStable()).isTrue();
    return found.reached().get(0);
  }

  private static void meets(Reference r, String name, double ours) {
    if (r.wants(name)) {
      assertThat(ours).as(name).isCloseTo(r.wanted(name), within(r.near(name)));
    }
  }
}
