package thwartwise.measured;

import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.boat.Outfit.AnchorBottom;
import thwartwise.boat.Outfit.SeamLeak;
import thwartwise.measured.Property.Settable;

/** The part of the table that holds the outfit: anchor line and leaks. */
public final class OutfitProperties {
  private OutfitProperties() {}

  public static final Property<Boat, Double> ANCHOR_LINE =
      Property.<Boat, Double>of(
              "anchorLine",
              ValueType.number(BoatQuantity.LINE_METRES),
              boat -> boat.outfit().anchorLine(),
              "Measure line and chain along the bank in metres, or leave it out.")
          .withQuestion(
              "length of the line",
              List.of("Line and chain together, laid out on the bank against the tape."),
              List.of("A short line leads steeply down: the anchor breaks out, the bow dips."))
          .whenOmitted("taken as twice the depth")
          .withChangeLabel("the anchor line")
          .withLabel("To anchor: a line of ");

  public static final Property<Boat, Double> ANCHOR_DEPTH =
      Property.<Boat, Double>of(
              "anchorDepth",
              ValueType.number(BoatQuantity.ANCHOR_DEPTH),
              boat -> boat.outfit().anchorDepth(),
              "Write the deepest water it anchors in, in metres, or leave it out.")
          .withQuestion(
              "deepest water it anchors in",
              List.of("Let the anchor down on its line, or read it on a chart, at high water."),
              List.of("The line must be several times as long."))
          .whenOmitted("a line is not judged")
          .withChangeLabel("the depth it anchors in")
          .withLabel("It anchors in water as deep as ");

  public static final Property<Boat, AnchorBottom> ANCHOR_BOTTOM =
      Property.<Boat, AnchorBottom>of(
              "anchorBottom",
              ValueType.oneOf(AnchorBottom::word, AnchorBottom.values()),
              boat -> boat.outfit().anchorBottom(),
              "Write what the anchor lies on, or leave it out.")
          .whenOmitted("stones or weed")
          .withQuestion(
              "on a bottom of",
              List.of("What sticks to the anchor when it comes up; not known: Enter."),
              List.of("On stones and in weed it holds only with a longer line."))
          .withChangeLabel("the bottom it anchors on")
          .withLabel("It anchors on ");

  static final List<Settable<Boat, ?>> OF_BOAT =
      List.of(
          ANCHOR_LINE.with((boat, metres) -> boat.withOutfit(boat.outfit().withAnchorLine(metres))),
          ANCHOR_DEPTH.with(
              (boat, metres) -> boat.withOutfit(boat.outfit().withAnchorDepth(metres))),
          ANCHOR_BOTTOM.with(
              (boat, bottom) -> boat.withOutfit(boat.outfit().withAnchorBottom(bottom))));

  public static final Property<SeamLeak, Double> LEAK_LITRES =
      Property.known(
              "litres",
              ValueType.number(BoatQuantity.LEAKED_LITRES),
              SeamLeak::volume,
              "Sponge the water into a measured bucket and write litres.")
          .withQuestion(
              "water that came in",
              List.of("Dry it, wait half an hour, sponge it into a measured bucket."),
              List.of("It tells how soon there is too much water in the boat."))
          .withChangeLabel("water that came in");

  public static final Property<SeamLeak, Double> LEAK_TIME =
      Property.known(
              "minutes",
              ValueType.number(BoatQuantity.LEAK_MINUTES),
              SeamLeak::time,
              "Write how long it came in, in minutes.")
          .withQuestion(
              "in how many minutes",
              List.of("By the watch, from dry to sponged."),
              List.of("Litres by time give the rate of the leak."))
          .withChangeLabel("time it took");

  public static final List<Property<SeamLeak, ?>> OF_LEAK = List.of(LEAK_LITRES, LEAK_TIME);
}
