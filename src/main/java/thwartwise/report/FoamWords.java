package thwartwise.report;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import thwartwise.geometry.Box;
import thwartwise.measure.UnitFormat;
import thwartwise.remedy.Deed.FoamBlock;

/** The place of foam, in lengths that can be measured in the boat. */
final class FoamWords {
  private FoamWords() {}

  /** One block by its limits, several by the space between them. */
  static String of(List<FoamBlock> blocks, UnitFormat units) {
    return blocks.size() == 1 ? one(blocks.get(0), units) : several(blocks, units);
  }

  private static String one(FoamBlock block, UnitFormat units) {
    return along(block.box().x().from(), block.box().x().to(), units)
        + ", "
        + across(block, units)
        + up(block.box().z().from(), block.box().z().to(), units);
  }

  private static String several(List<FoamBlock> blocks, UnitFormat units) {
    double thick = FoamBlock.THICK;
    return along(least(blocks, b -> b.x().from()), -least(blocks, b -> -b.x().to()), units)
        + ", in "
        + blocks.size()
        + " blocks on each side, "
        + units.mark(thick)
        + " thick at the narrowest part of the boat there, and clear of all fittings; "
        + up(least(blocks, b -> b.z().from()), -least(blocks, b -> -b.z().to()), units)
        + " at most";
  }

  private static double least(List<FoamBlock> blocks, ToDoubleFunction<Box> of) {
    return blocks.stream()
        .map(FoamBlock::box)
        .min(Comparator.comparingDouble(of))
        .map(of::applyAsDouble)
        .orElse(0.0);
  }

  private static String along(double from, double to, UnitFormat units) {
    return "From " + units.mark(from) + " to " + DeedWords.position(to, units);
  }

  private static String up(double from, double to, UnitFormat units) {
    return units.mark(from) + " to " + units.mark(to) + " up";
  }

  private static String across(FoamBlock block, UnitFormat units) {
    if (block.mirrored()) {
      return "on both sides from " + units.mark(block.box().y().from()) + " out to the side, ";
    }
    return Double.isInfinite(block.box().y().to())
        ? "from side to side, "
        : "as far as " + units.mark(block.box().y().to()) + " to either side, ";
  }
}
