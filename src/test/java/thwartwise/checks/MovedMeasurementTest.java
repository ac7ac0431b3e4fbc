package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.RULES;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.afloat.BalanceCache;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Kit;
import thwartwise.boat.Opening;
import thwartwise.boat.Place;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadedBoat;

/**
 * The figures of a boat with a measurement moved, next to those as measured, are the ones it has by
 * itself: what is begun at a known answer, left out or taken from a mirror image changes none.
 */
class MovedMeasurementTest {

  /** Loose kit off the middle line, a drain, and a hull that water makes tender. */
  private static BoatModel boat(double hull, double anchor, double width) {
    return BoxBoat.of(3, width, 0.5)
        .hull(hull, 0.25)
        .weightlessShell()
        .proven("stern tank", new Span(0, 0.6))
        .proven("bow tank", new Span(2.3, 3))
        .kit(kit("anchor", anchor, Vector3.of(2, 0.15, 0.05), false))
        .kit(kit("battery", 20, Vector3.of(1, 0, 0.1), true))
        .opening(
            new Opening(
                "drain",
                Vector3.of(0.7, 0.2, 0.02),
                0.02,
                true,
                Optional.of("bung"),
                Optional.empty(),
                Optional.of(0.02)))
        .model();
  }

  private static Kit kit(String name, double mass, Vector3 at, boolean fastened) {
    return new Kit(name, mass, at, Optional.of(0.005), fastened, Optional.empty());
  }

  private static LoadedBoat loaded(BoatModel model, double mass) {
    return LoadedBoat.of(model, List.of(at("helm", 1.2, mass), at("passenger", 1.8, 55)));
  }

  private static Body at(String name, double x, double mass) {
    return Body.seated(name, mass, new Place("thwart " + name, x, 0.25, 0.4, 1), 0, 0.02);
  }

  @ParameterizedTest
  @CsvSource({
    "94, 6, 1.3, 80",
    "90, 7, 1.3, 80",
    "90, 6, 1.31, 80",
    "90, 6, 1.29, 80",
    "90, 6, 1.3, 84"
  })
  void every_check_answers_as_for_the_boat_by_itself(
      double hull, double anchor, double width, double helm) {
    BalanceCache balances = new BalanceCache();
    LoadedBoat measured = loaded(boat(90, 6, 1.3), 80).remembering(balances).fromUpright();
    CautiousChecks.of(RULES, measured.model()).forEach(check -> check.confirmedReadings(measured));
    LoadedBoat alone = loaded(boat(hull, anchor, width), helm);
    LoadedBoat moved = alone.remembering(balances.moved());
    for (Check check : CautiousChecks.of(RULES, alone.model())) {
      List<CheckReading> expected = check.readings(alone);
      List<CheckReading> found = check.confirmedReadings(moved);
      assertThat(found).as(check.toString()).hasSameSizeAs(expected);
      for (int i = 0; i < found.size(); i++) {
        alike(found.get(i), expected.get(i));
      }
    }
  }

  private static void alike(CheckReading found, CheckReading expected) {
    assertThat(found.question()).isEqualTo(expected.question());
    double room = expected.margin().room();
    String which = expected.question() + " " + expected.margin();
    if (Double.isFinite(room)) {
      assertThat(found.margin().room())
          .as(which)
          .isCloseTo(room, within(1e-7 * Math.max(1, Math.abs(expected.margin().limit()))));
    } else {
      assertThat(found.margin().room()).as(which).isEqualTo(room);
    }
  }
}
