package thwartwise.inspection;

import java.util.List;
import java.util.Optional;

/**
 * The boat open to the sea, with what is left to hold it up.
 *
 * @param pose the worst pose reached; empty when it sinks or none was found
 * @param poses every pose reached
 * @param spareBuoyancy water density times all counted volume fully under, minus all mass aboard,
 *     kg
 */
public record SwampedFigures(
    boolean floats, Optional<PoseFigures> pose, List<PoseFigures> poses, double spareBuoyancy) {

  public SwampedFigures {
    poses = List.copyOf(poses);
  }
}
