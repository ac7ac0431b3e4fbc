package thwartwise.checks;

import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.RULES;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.afloat.BalanceCache;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LoadedBoat;

/**
 * A hurried trial of a boat whose loose kit lies to one side leaves out ways that others outdo, and
 * takes rests from mirror images: it must refuse what the full trial refuses. Crews thrown by dice,
 * each of them and its mirror image.
 */
class LopsidedHurryTest {
  private static final List<Check> CHECKS =
      CautiousChecks.of(RULES).stream().filter(c -> c.role() != Role.INFORMATION).toList();

  private static final Place THWART = new Place("thwart", 1.6, 0.25, 0.45, 2);
  private static final Place BENCH = new Place("bench", 0.6, 0.25, 0.45, 2);

  private static BoatModel boat(double anchor, double y) {
    return BoxBoat.of(3, 1.3, 0.5)
        .hull(90, 0.2)
        .weightlessShell()
        .proven("stern tank", new Span(0, 0.45))
        .proven("bow tank", new Span(2.3, 3))
        .kit(
            new Kit(
                "anchor",
                anchor,
                Vector3.of(2, y, 0.05),
                Optional.empty(),
                false,
                Optional.empty()))
        .model();
  }

  private static List<Body> crew(Random random) {
    List<Body> crew = new ArrayList<>();
    int people = 1 + random.nextInt(3);
    for (int i = 0; i < people; i++) {
      double y = 0.6 * (random.nextDouble() - 0.5);
      Place place = i < 2 ? THWART : BENCH;
      crew.add(Body.seated("crew " + i, 25 + 90 * random.nextDouble(), place, y, 0.05));
    }
    return crew;
  }

  private static List<Body> mirrored(List<Body> crew) {
    return crew.stream().map(b -> b.at(-b.y())).toList();
  }

  @ParameterizedTest
  @ValueSource(doubles = {5, 30})
  void a_hurried_trial_of_a_lopsided_boat_refuses_just_what_the_full_one_does(double anchor) {
    Random random = new Random(20261126);
    int refused = 0;
    int met = 0;
    BoatModel model = boat(anchor, 0.3);
    BalanceCache known = new BalanceCache();
    for (int i = 0; i < 6; i++) {
      List<Body> crew = crew(random);
      for (List<Body> people : List.of(crew, mirrored(crew))) {
        for (Allowance taken : List.of(Allowance.NONE, Allowance.of(RULES, model))) {
          LoadedBoat trial = LoadedBoat.of(model, people).under(taken);
          for (Check check : CHECKS) {
            List<Boolean> full = met(check.readings(trial));
            assertThat(met(check.confirmedReadings(trial.hurried(known))))
                .as("%s of %s", check.getClass().getSimpleName(), people)
                .isEqualTo(full);
            refused += full.contains(false) ? 1 : 0;
            met += full.contains(false) ? 0 : 1;
          }
        }
      }
    }
    assertThat(Stream.of(refused, met)).allMatch(some -> some > 40);
  }

  private static List<Boolean> met(List<CheckReading> readings) {
    return readings.stream().map(CheckReading::met).toList();
  }
}
