package thwartwise.checks;

import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.RULES;
import static thwartwise.checks.OnPaper.tanks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import thwartwise.afloat.BalanceCache;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.Place;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LoadCase;
import thwartwise.loadcase.LoadedBoat;

/**
 * Boats whose rest is looked for from balances already known refuse what boats let go upright do.
 */
class LoadedBoatsNextToKnownTest {
  private static final BoatModel CRAFT = tanks(200).model();

  private static final List<Check> LIMITING =
      CautiousChecks.of(RULES).stream().filter(c -> c.role() == Role.LIMITS_CREW).toList();

  @Test
  void nothing_else_is_refused_than_of_boats_let_go_upright() {
    BalanceCache known = new BalanceCache();
    int refused = 0;
    int met = 0;
    for (double mass = 30; mass <= 400; mass += 19) {
      for (double y = -0.2; y <= 0.2; y += 0.05) {
        for (Allowance allowance : List.of(Allowance.NONE, Allowance.withEnoughStations(RULES))) {
          LoadedBoat trial = seated(mass, y).under(allowance);
          List<Boolean> upright =
              LIMITING.stream().map(c -> met(c.readings(trial.hurried()))).toList();
          LoadedBoat near = trial.hurried(known);
          assertThat(LIMITING.stream().map(c -> met(c.confirmedReadings(near))).toList())
              .as("%s kg at %s m", mass, y)
              .isEqualTo(upright);
          refused += upright.contains(false) ? 1 : 0;
          met += upright.contains(false) ? 0 : 1;
        }
      }
    }
    assertThat(List.of(refused, met)).allMatch(some -> some > 20);
  }

  @Test
  void what_is_not_met_next_to_a_known_balance_is_asked_once_more_from_upright() {
    BalanceCache known = new BalanceCache();
    assertThat(seated(70, 0).hurried(known).atRest().allUpright()).isTrue();
    assertThat(asked(seated(70.5, 0).hurried(known), false)).hasSize(2).doesNotHaveDuplicates();
  }

  @Test
  void what_is_met_and_what_is_asked_from_upright_is_asked_once() {
    BalanceCache known = new BalanceCache();
    LoadedBoat trial = seated(70, 0);
    assertThat(asked(trial.hurried(known), false)).hasSize(1);
    assertThat(asked(seated(70.5, 0).hurried(known), true)).hasSize(1);
    assertThat(asked(trial.hurried(), false)).hasSize(1);
    assertThat(asked(trial, false)).hasSize(1);
  }

  /** The trials a check was given. */
  private static List<LoadedBoat> asked(LoadedBoat trial, boolean met) {
    List<LoadedBoat> asked = new ArrayList<>();
    new Check() {
      @Override
      public Role role() {
        return Role.LIMITS_CREW;
      }

      @Override
      public List<CheckReading> readings(LoadedBoat given) {
        asked.add(given);
        given.atRest();
        return List.of(
            new CheckReading(
                CheckQuestion.of(CheckId.FREEBOARD_AT_REST, Measure.FREEBOARD),
                Margin.atLeast(0, OptionalDouble.of(met ? 1 : -1), Unit.METRE),
                true,
                "",
                LoadCase.UNNAMED,
                Note.NONE));
      }
    }.confirmedReadings(trial);
    return asked;
  }

  private static LoadedBoat seated(double mass, double y) {
    Place thwart = new Place("thwart", 1.5, 0.25, 0.4, 1);
    return LoadedBoat.of(CRAFT, List.of(Body.seated("crew", mass, thwart, y, 0.05)));
  }

  private static boolean met(List<CheckReading> readings) {
    return readings.stream().allMatch(CheckReading::met);
  }
}
