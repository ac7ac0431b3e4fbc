package thwartwise.remedy;

import java.util.List;
import java.util.stream.Collectors;

/** Where blocks of foam go, in metres that can be measured in the boat. */
final class FoamWords {
  private FoamWords() {}

  static String of(List<FoamRoom.Block> blocks) {
    return blocks.stream().map(FoamWords::of).collect(Collectors.joining("; "));
  }

  private static String of(FoamRoom.Block block) {
    return "From "
        .concat(Along.metres(block.box().x().from()))
        .concat(" to ")
        .concat(Along.boat(block.box().x().to()))
        .concat(", ")
        .concat(across(block))
        .concat(Along.metres(block.box().z().from()))
        .concat(" to ")
        .concat(Along.metres(block.box().z().to()))
        .concat(" up");
  }

  private static String across(FoamRoom.Block block) {
    if (block.mirrored()) {
      return "on both sides from " + Along.metres(block.box().y().from()) + " out to the side, ";
    }
    return Double.isInfinite(block.box().y().to())
        ? "from side to side, "
        : "as far as " + Along.metres(block.box().y().to()) + " to either side, ";
  }
}
