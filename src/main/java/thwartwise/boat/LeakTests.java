package thwartwise.boat;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.Filling.SealTest;

/** The leak tests of a boat's chambers. */
final class LeakTests {
  private LeakTests() {}

  /** The boat as if no test that counts had let any water in. */
  static Boat withoutWater(Boat boat) {
    List<Chamber> tight = boat.chambers().stream().map(LeakTests::withoutWater).toList();
    return boat.withChambers(tight);
  }

  private static Chamber withoutWater(Chamber chamber) {
    Chamber tight = chamber;
    for (ChamberPart part : chamber.parts()) {
      if (part.filling() instanceof Filling.Air air
          && air.test().filter(LeakTests::counts).isPresent()) {
        tight = tight.filledWith(part, withoutWater(air));
      }
    }
    return tight;
  }

  private static boolean counts(SealTest test) {
    return test.litresIn() > 0 && test.litresIn() <= SealTest.MOST_LITRES;
  }

  private static Filling withoutWater(Filling.Air air) {
    Optional<SealTest> dry =
        air.test().map(t -> new SealTest(t.date(), t.how(), t.minutes(), 0, t.by(), t.head()));
    return new Filling.Air(air.seal(), dry, air.repaired());
  }
}
