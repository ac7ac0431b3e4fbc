package thwartwise.inspection;

import java.util.List;
import java.util.Optional;
import thwartwise.loadcase.LoadCase;

/**
 * One loading of the boat: afloat, heeled and swamped.
 *
 * @param loadCase who is aboard and where
 * @param afloat empty when no such pose exists; {@code note} says why
 * @param looseWater how it floats with more and more water loose in it
 */
public record StateFigures(
    LoadCase loadCase,
    Optional<AfloatFigures> afloat,
    Optional<RightingFigures> righting,
    SwampedFigures swamped,
    List<WaterFigures> looseWater,
    String note) {

  public StateFigures {
    looseWater = List.copyOf(looseWater);
  }
}
