package thwartwise.boat;

import java.util.List;
import thwartwise.geometry.Vector3;

/**
 * Something that stands in the wind besides the hull and the people, a flat plate for every
 * direction.
 *
 * @param area m²
 * @param at its middle
 */
public record WindArea(double area, Vector3 at) {
  /** The solar panel, where it is stated and listed among the kit. */
  public static List<WindArea> of(Boat boat) {
    return boat.electrics().panel().stream()
        .flatMap(
            panel ->
                boat.kit().stream()
                    .filter(kit -> panel.kit().filter(kit.name()::equals).isPresent())
                    .map(kit -> new WindArea(panel.windArea(), kit.at())))
        .toList();
  }
}
