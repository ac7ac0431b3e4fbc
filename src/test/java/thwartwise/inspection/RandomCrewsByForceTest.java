package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.crew.CrewAssessment;
import thwartwise.crew.CrewSearch;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;
import thwartwise.rules.RuleSet;

/**
 * The crews found for random boats against every check asked in full, one by one and without a
 * cache: as many adults, and for each number of people the same mass to 0.1 kg. {@code
 * -Dtwo.ways.crews=300} tries more boats. Boats of every kind do not all carry alike.
 */
class RandomCrewsByForceTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();
  private static final int BOATS = Integer.getInteger("two.ways.crews", 8);
  private static final long SEED = 20261128;

  /** So many people at the most, because every mixture of them is tried. */
  private static final int MOST = 3;

  private static final List<Boat> PLAIN =
      List.of(PlainHulls.pram(), PlainHulls.skiff(), PlainHulls.canoe(), PlainHulls.dory());

  @Test
  void as_many_people_and_as_heavy_are_found_as_by_force() {
    Random random = new Random(SEED);
    List<Boat> boats =
        IntStream.range(0, BOATS)
            .mapToObj(i -> otherwise(PLAIN.get(i % PLAIN.size()), random))
            .toList();
    int[] carried = boats.parallelStream().mapToInt(RandomCrewsByForceTest::alike).toArray();
    if (BOATS >= PLAIN.size()) {
      assertThat(IntStream.of(carried).distinct().count()).isGreaterThan(1);
    }
  }

  /** Compares one boat; returns how many adults it carries. */
  private static int alike(Boat boat) {
    BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
    CrewSearch search = new CrewSearch(new CrewAssessment(model, RULES), RULES);
    int room = Math.min(MOST, CrewSearchByForceTest.room(model));
    int adults = 0;
    while (adults < room && CrewSearchByForceTest.found(model, adults + 1, 95)) {
      adults++;
    }
    assertThat(Math.min(MOST, search.people())).as(boat.toString()).isEqualTo(adults);
    for (int people = 1; people <= room; people++) {
      alike(model, people, search.massLimit(people));
    }
    return adults;
  }

  private static void alike(BoatModel model, int people, double each) {
    String which = people + " of " + each + " kg: " + model.boat();
    if (each > 0) {
      assertThat(CrewSearchByForceTest.found(model, people, each)).as(which).isTrue();
    }
    double heavier = each > 0 ? each + 0.1 : RULES.value("lightest-person");
    if (heavier <= RULES.value("heaviest-person")) {
      assertThat(CrewSearchByForceTest.found(model, people, heavier)).as(which).isFalse();
    }
  }

  /** The same kind of boat, wider or narrower, deeper or not, heavier or lighter, with kit. */
  private static Boat otherwise(Boat boat, Random random) {
    double wide = 0.85 + 0.4 * random.nextDouble();
    double deep = 0.9 + 0.3 * random.nextDouble();
    HullMeasurements hull = boat.hull();
    List<Station> stations =
        hull.stations().stream()
            .map(s -> Station.mirrored(s.name(), scaled(s.port(), wide, deep)))
            .toList();
    return boat.withHull(
            hull.withStations(stations).weighing(hull.mass() * (0.8 + 0.5 * random.nextDouble())))
        .withKit(kit(hull, random));
  }

  private static List<Vector3> scaled(List<Vector3> points, double wide, double deep) {
    return points.stream().map(p -> Vector3.of(p.x(), wide * p.y(), deep * p.z())).toList();
  }

  private static List<Kit> kit(HullMeasurements hull, Random random) {
    double length = hull.stations().get(hull.stations().size() - 1).portRail().x();
    List<Kit> kit = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      Vector3 at =
          Vector3.of(length * (0.2 + 0.6 * random.nextDouble()), 0.1 * random.nextGaussian(), 0.15);
      boolean fastened = random.nextBoolean();
      double mass = 2 + 12 * random.nextDouble();
      kit.add(new Kit("thing " + i, mass, at, Optional.of(0.004), fastened, Optional.empty()));
    }
    return kit;
  }
}
