package thwartwise.walk.questions;

import java.util.Optional;
import thwartwise.hull.Material;
import thwartwise.measure.ChoiceReader;

/** Materials of a hull in the words of people who build and buy boats. */
public final class MaterialChoices {
  private MaterialChoices() {}

  public static ChoiceReader<Optional<Material>> known() {
    return ChoiceReader.of(
            Optional.of(Material.PLYWOOD),
            Material.PLYWOOD.word(),
            "ply",
            "marine ply",
            "marine plywood",
            "okoume",
            "okoume ply",
            "epoxy ply",
            "ply and epoxy",
            "plywood and epoxy",
            "stitch and glue")
        .or(
            Optional.of(Material.SOFTWOOD),
            Material.SOFTWOOD.word(),
            "wood",
            "planks",
            "pine",
            "larch",
            "spruce",
            "cedar",
            "fir",
            "timber")
        .or(
            Optional.of(Material.GRP),
            Material.GRP.word(),
            "fibreglass",
            "fiberglass",
            "glassfibre",
            "glass fibre",
            "glass",
            "polyester")
        .or(
            Optional.of(Material.ALUMINIUM),
            Material.ALUMINIUM.word(),
            "aluminum",
            "alloy",
            "alu",
            "tin");
  }
}
