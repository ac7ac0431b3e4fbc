package thwartwise.hull;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import thwartwise.RandomCases;
import thwartwise.geometry.Box;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/**
 * What must hold of the solids of any hull, however it is cut: ten thousand of the outside, a
 * thousand of hulls built with all their solids.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HullPropertiesTest {
  private static final double NUMERIC = 1e-11;

  private final List<Solid> outsides =
      RandomCases.of(10_000, random -> RandomHull.outside(RandomHull.any(random).measured()));

  private final List<BuiltHull> hulls =
      RandomCases.of(1_000, random -> BuiltHull.of(RandomHull.any(random)));

  /** A hull with all its solids. */
  private record BuiltHull(RandomHull hull, HullForm form) {
    static BuiltHull of(RandomHull hull) {
      return new BuiltHull(hull, HullForm.of(hull.measured()));
    }

    // Short, so that a report of a failure can be read.
    @Override
    public String toString() {
      return hull.toString();
    }
  }

  private static Span span(Random random) {
    double one = RandomHull.between(0, 1, random);
    double other = RandomHull.between(0, 1, random);
    return new Span(Math.min(one, other), Math.max(one, other));
  }

  @Test
  void both_sides_of_any_plane_make_the_whole() {
    RandomCases.each(
        outsides,
        (whole, random) -> {
          double heel = RandomHull.between(-3.1, 3.1, random);
          double trim = RandomHull.between(-3.1, 3.1, random);
          double share = RandomHull.between(0, 1, random);
          Vector3 up = WaterPlane.upward(heel, trim / 2);
          Span reach = whole.extent(up);
          WaterPlane plane = new WaterPlane(up, reach.from() + share * reach.length());
          Solid under = whole.under(plane);
          Solid over = whole.under(new WaterPlane(up.times(-1), -plane.height()));
          addUp(whole, List.of(under, over));
          ImmersedPart part = ImmersedPart.of(whole, plane);
          assertThat(part.volume()).isCloseTo(under.volume(), within(NUMERIC));
          assertThat(part.volume()).isBetween(-NUMERIC, whole.volume() + NUMERIC);
          assertThat(part.momentS() + plane.height() * part.volume())
              .isCloseTo(up.dot(under.moment()), within(NUMERIC));
        });
  }

  @Test
  void a_box_and_what_is_left_round_it_make_the_whole() {
    RandomCases.each(
        outsides,
        (whole, random) -> {
          Box shares = new Box(span(random), span(random), span(random));
          Box all = block(whole);
          Box box =
              new Box(
                  part(all.x(), shares.x()), part(all.y(), shares.y()), part(all.z(), shares.z()));
          List<Solid> parts = new ArrayList<>();
          parts.add(whole.within(box));
          all.without(box).forEach(rest -> parts.add(whole.within(rest)));
          addUp(whole, parts);
          assertThat(parts).extracting(Solid::volume).allMatch(volume -> volume > -NUMERIC);
        });
  }

  private static Box block(Solid solid) {
    return new Box(
        solid.extent(Vector3.of(1, 0, 0)),
        solid.extent(Vector3.of(0, 1, 0)),
        solid.extent(Vector3.of(0, 0, 1)));
  }

  private static Span part(Span all, Span share) {
    return new Span(
        all.from() + share.from() * all.length(), all.from() + share.to() * all.length());
  }

  private static void addUp(Solid whole, List<Solid> parts) {
    double volume = 0;
    Vector3 moment = Vector3.ZERO;
    for (Solid part : parts) {
      volume += part.volume();
      moment = moment.plus(part.moment());
    }
    assertThat(volume).isCloseTo(whole.volume(), within(NUMERIC));
    assertThat(moment.minus(whole.moment()).norm()).isLessThan(NUMERIC);
  }

  @Test
  void a_mirrored_hull_has_the_mirrored_solids() {
    RandomCases.each(
        hulls,
        built -> {
          HullForm one = built.form();
          HullForm other = HullForm.of(RandomHull.mirrored(built.hull().measured()));
          mirrored(one.outside(), other.outside());
          mirrored(one.inside(), other.inside());
          mirrored(one.shellOutside(), other.shellOutside());
          mirrored(one.shellInside(), other.shellInside());
          assertThat(other.centre().mirrored().minus(one.centre()).norm()).isLessThan(NUMERIC);
          assertThat(other.shellArea()).isCloseTo(one.shellArea(), within(NUMERIC));
        });
  }

  private static void mirrored(Solid one, Solid other) {
    assertThat(other.volume()).isCloseTo(one.volume(), within(NUMERIC));
    assertThat(other.moment().mirrored().minus(one.moment()).norm()).isLessThan(10 * NUMERIC);
  }

  // As water rises past a swamped hull its shell must never lift less: that needs an inside that
  // nowhere comes out through the outside.
  @Test
  void the_shell_is_nowhere_thinner_than_nothing() {
    RandomCases.each(
        hulls,
        built -> {
          HullForm form = built.form();
          double before = 0;
          for (int i = 0; i <= 20; i++) {
            Span depth = form.shellOutside().extent(Vector3.of(0, 0, 1));
            WaterPlane plane = WaterPlane.of(0, 0, depth.from() + i / 20.0 * depth.length());
            double shell =
                ImmersedPart.of(form.shellOutside(), plane).volume()
                    - ImmersedPart.of(form.shellInside(), plane).volume();
            assertThat(shell).isGreaterThanOrEqualTo(before - 1e-9);
            before = shell;
          }
        });
  }
}
