package thwartwise.boat;

import java.util.Optional;
import thwartwise.boat.Filling.SealTest;
import thwartwise.geometry.Box;

/**
 * A chamber as it stands in the boat: the whole of it, or one of two twins, with what is known of
 * that one.
 *
 * @param whole as it was drawn
 * @param side of one of two twins
 * @param name of its own, with the side
 * @param measuredVolume litres poured in, in m³; those of its twin where only they were poured
 * @param sharesSeal whether seal and test were told once for both of two twins
 */
public record ChamberPart(
    Chamber whole,
    Optional<Side> side,
    String name,
    Box box,
    Filling filling,
    Optional<Double> measuredVolume,
    boolean sharesSeal) {

  /** Whether somebody who writes this name means this one, alone or with its twin. */
  public boolean isNamedBy(String called) {
    return called.equals(name) || called.equals(whole.name());
  }

  /** Whether a record tells of it under this name; earlier ones said only that there were two. */
  public boolean isRecordedAs(String told) {
    return told.equals(name) || side.isPresent() && told.equals(whole.name() + earlier());
  }

  private String earlier() {
    return side.get() == Side.of(whole.box()) ? ", one side" : ", other side";
  }

  /** Its leak test, if it holds air and one was made. */
  public Optional<SealTest> test() {
    return filling instanceof Filling.Air air ? air.test() : Optional.empty();
  }
}
