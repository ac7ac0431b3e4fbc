package thwartwise.report;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import thwartwise.geometry.Box;
import thwartwise.remedy.FoamBlock;

/** Where foam goes, in metres that can be measured in the boat. */
final class FoamWords {
  private FoamWords() {}

  /** One block is told by its limits, several by what they lie between. */
  static String of(List<FoamBlock> blocks) {
    return blocks.size() == 1 ? one(blocks.get(0)) : several(blocks);
  }

  private static String one(FoamBlock block) {
    return along(block.box().x().from(), block.box().x().to())
        + ", "
        + across(block)
        + up(block.box().z().from(), block.box().z().to());
  }

  private static String several(List<FoamBlock> blocks) {
    double thick = FoamBlock.THICK;
    return along(least(blocks, b -> b.x().from()), -least(blocks, b -> -b.x().to()))
        + ", in "
        + blocks.size()
        + " blocks on each side, "
        + Along.metres(thick)
        + " thick where the boat is narrowest beside each, and clear of what stands there; "
        + up(least(blocks, b -> b.z().from()), -least(blocks, b -> -b.z().to()))
        + " at most";
  }

  private static double least(List<FoamBlock> blocks, ToDoubleFunction<Box> of) {
    return blocks.stream()
        .map(FoamBlock::box)
        .min(Comparator.comparingDouble(of))
        .map(of::applyAsDouble)
        .orElse(0.0);
  }

  private static String along(double from, double to) {
    return "From " + Along.metres(from) + " to " + Along.boat(to);
  }

  private static String up(double from, double to) {
    return Along.metres(from) + " to " + Along.metres(to) + " up";
  }

  private static String across(FoamBlock block) {
    if (block.mirrored()) {
      return "on both sides from " + Along.metres(block.box().y().from()) + " out to the side, ";
    }
    return Double.isInfinite(block.box().y().to())
        ? "from side to side, "
        : "as far as " + Along.metres(block.box().y().to()) + " to either side, ";
  }
}
