package thwartwise.inspection;

import java.util.List;
import java.util.Optional;

/**
 * One loading of the boat: afloat, heeled and swamped.
 *
 * @param loading in words: who is aboard and where
 * @param afloat empty when no such pose exists; {@code note} says why
 * @param looseWater how it floats with more and more water loose in it
 */
public record StateFigures(
    String loading,
    Optional<AfloatFigures> afloat,
    Optional<RightingFigures> righting,
    SwampedFigures swamped,
    List<WaterFigures> looseWater,
    String note) {

  public StateFigures {
    looseWater = List.copyOf(looseWater);
  }
}
