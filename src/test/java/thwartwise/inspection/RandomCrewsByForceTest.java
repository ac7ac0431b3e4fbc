package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.crew.CrewAssessment;
import thwartwise.crew.CrewSearch;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Span;
import thwartwise.rules.RuleSet;

/**
 * The crews found for random boats against every check asked in full, one by one and without a
 * cache: as many adults, and for each number of people the same mass to 0.1 kg. {@code
 * -Dtwo.ways.crews=300} tries more boats. Boats of every kind do not all carry alike.
 */
class RandomCrewsByForceTest {
  private static final RedrawnBoats OTHERWISE =
      new RedrawnBoats(new Span(0.85, 1.25), new Span(0.9, 1.2), 3, 12);

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
            .mapToObj(i -> OTHERWISE.of(PLAIN.get(i % PLAIN.size()), random))
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
}
