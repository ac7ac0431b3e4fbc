package thwartwise.boat;

import java.util.Optional;
import thwartwise.boat.Filling.SealTest;
import thwartwise.geometry.Box;

/**
 * A chamber in the boat: a single one, or one of two twins, with what is known of that one.
 *
 * @param whole as it was drawn
 * @param side of one of two twins
 * @param name of its own, with the side
 * @param measuredVolume volume poured in, m³; that of its twin where only that was poured
 * @param sharesSeal whether seal and test were entered once for both of two twins
 */
public record ChamberPart(
    Chamber whole,
    Optional<Side> side,
    String name,
    Box box,
    Filling filling,
    Optional<Double> measuredVolume,
    boolean sharesSeal) {

  /** Whether this name means this one, alone or with its twin. */
  public boolean isNamedBy(String called) {
    return called.equals(name) || called.equals(whole.name());
  }

  /** Whether a record calls it by this name; earlier records only named the pair. */
  public boolean isRecordedAs(String recorded) {
    return recorded.equals(name) || side.isPresent() && recorded.equals(whole.name() + earlier());
  }

  private String earlier() {
    return side.get() == Side.of(whole.box()) ? ", one side" : ", other side";
  }

  /** Its leak test, if it holds air and one was made. */
  public Optional<SealTest> test() {
    return filling instanceof Filling.Air air ? air.test() : Optional.empty();
  }
}
