package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Chamber;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;

/** The side foam of the sheet, told as seats full of air. */
class TwinsInTheWalkTest {
  private static final Sheet SEATS =
      Sheet.full(true)
          .with("chamber.3.filling", "air")
          .with("chamber.3.seal", "proven")
          .with("chamber.3.test.date", "2026-05-02")
          .with("chamber.3.test.how", "held under")
          .with("chamber.3.test.minutes", "15")
          .with("chamber.3.test.litresIn", "0")
          .with("chamber.3.test.by", "me")
          .with("chamber.3.twin.seal", "claimed");

  @Test
  void seal_and_test_are_asked_of_each_side() {
    assertThat(Sheet.open(SEATS.upTo("chamber.3.seal")).prompt())
        .startsWith("Chamber \"side foam\", port, its seal is");
    assertThat(Sheet.open(SEATS.upTo("chamber.3.twin.seal")).prompt())
        .startsWith("Chamber \"side foam\", starboard, its seal is");
    Chamber seats = SEATS.boat().chambers().get(2);
    assertThat(seats.parts().get(0).test()).isPresent();
    assertThat(seats.parts().get(1).filling())
        .isEqualTo(new Filling.Air(Seal.CLAIMED, Optional.empty()));
  }

  @Test
  void litres_are_asked_of_the_twin_when_the_first_was_poured() {
    Sheet poured = SEATS.with("chamber.3.litres", "30");
    assertThat(litres(poured)).containsExactly(Optional.of(0.03), Optional.of(0.03));
    assertThat(litres(poured.with("chamber.3.twin.litres", "28")))
        .containsExactly(Optional.of(0.03), Optional.of(0.028));
    assertThat(litres(SEATS)).containsExactly(Optional.empty(), Optional.empty());
  }

  private static List<Optional<Double>> litres(Sheet sheet) {
    return sheet.boat().chambers().get(2).parts().stream()
        .map(ChamberPart::measuredVolume)
        .toList();
  }

  @Test
  void foam_is_told_once_for_both() {
    assertThat(Sheet.full(true).boat().chambers().get(2).parts())
        .allMatch(part -> part.filling().equals(new Filling.Foam(true, true)));
  }
}
