package thwartwise.walk.questions;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.Cleat;
import thwartwise.boat.Outfit.AnchorBottom;
import thwartwise.boat.Outfit.Rowlocks;
import thwartwise.boat.Outfit.SeamLeak;
import thwartwise.geometry.Vector3;
import thwartwise.measure.ChoiceReader;
import thwartwise.measure.Reading;
import thwartwise.measured.OutfitProperties;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionTopic;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/**
 * Questions for fittings that are no kit, each on one line: rowlocks, cleats, anchor line, leaks. A
 * boat without them answers one question. Hatches and pockets belong to the openings, which know
 * their chamber.
 */
public record OutfitQuestions(Replay replay, QuantityQuestions quantities) {
  private static final double BEYOND_END = 0.3;
  private static final double ABOVE_RAIL = 0.15;

  private enum What {
    ROWLOCKS,
    CLEAT,
    ANCHOR,
    LEAK
  }

  /** All of them, in the full walk. */
  public Boat asked(Boat boat) {
    List<UnaryOperator<Boat>> entered =
        new RepeatedQuestion(
                replay,
                "outfit",
                "rowlocks, cleat, anchor line or leak",
                "Any rowlocks, cleat, anchor line or leak to enter?")
            .orNone(
                entry ->
                    entry
                        .how(ROWS)
                        .why("Seat and rowlocks, a leak, and a short line are worked out.")
                        .orElse(false, "no"),
                (key, before) -> item(key, with(boat, before)));
    return with(boat, entered);
  }

  private static final String[] ROWS = {
    "On one line each: rowlocks; forward of the aft end.",
    "cleat; name; forward; to port; height.",
    "anchor; length of line; depth; bottom. leak; seam; litres; minutes."
  };

  private static Boat with(Boat boat, List<UnaryOperator<Boat>> entered) {
    Boat fitted = boat;
    for (UnaryOperator<Boat> each : entered) {
      fitted = each.apply(fitted);
    }
    return fitted;
  }

  /** One of them, in the walk of changes. */
  public UnaryOperator<Boat> item(String key, Boat boat) {
    return switch (replay.ask(
        WordQuestions.choice(key + ".what", "Which of them", CHOICES)
            .or(OutfitQuestions::hatch)
            .how(ROWS)
            .why(WHY))) {
      case ROWLOCKS -> rowlocks(key, boat);
      case CLEAT -> cleat(key, boat);
      case ANCHOR -> anchor(key);
      case LEAK -> leak(key);
    };
  }

  private static final String WHY =
      "Each is worked out separately; what is not entered is left out.";

  private static final ChoiceReader<What> CHOICES =
      ChoiceReader.of(What.ROWLOCKS, "rowlocks", "rowlock", "oarlocks", "oars")
          .or(What.CLEAT, "cleat", "ring", "bollard")
          .or(What.ANCHOR, "anchor", "anchor line")
          .or(What.LEAK, "leak", "seam");

  private static final ChoiceReader<String> AMONG_OPENINGS =
      ChoiceReader.of("hatch", "hatch", "pocket", "deck plate", "lid");

  /** Refers to the openings, which know where it is and what closes it. */
  private static Optional<Reading<What>> hatch(String typed) {
    return AMONG_OPENINGS.read(typed).refusal().isEmpty()
        ? Optional.of(
            Reading.refused(
                "A hatch or pocket is one of the openings: type list and change the question for"
                    + " another opening; in a walk of changes answer cut."))
        : Optional.empty();
  }

  private UnaryOperator<Boat> rowlocks(String key, Boat boat) {
    Outline outline = new Outline(boat.hull().stations());
    double x =
        replay.ask(
            quantities
                .length(key + ".pins", "Rowlocks, forward of the aft end")
                .how("Tape from the aft end to where the pins of the pair stand.")
                .why("Too near to or too far from a seat, nobody rows home from it.")
                .unlessAmbiguous(quantities.feetOrInches(outline.aft(), outline.fore()))
                .within(quantities.length(outline.aft(), outline.fore(), "length of the hull")));
    return before -> before.withOutfit(before.outfit().with(new Rowlocks(x)));
  }

  private UnaryOperator<Boat> cleat(String key, Boat boat) {
    Outline outline = new Outline(boat.hull().stations());
    String name =
        replay.ask(
            WordQuestions.name(
                    key + ".name",
                    "Cleat or ring, name",
                    boat.cleats().stream().map(Cleat::name).toList())
                .how("Such as bow ring, stern cleat, or the thwart a line is tied round.")
                .why("A line pulls there: the page says how hard it may."));
    String subject = "Cleat " + WordQuestions.quoted(name);
    double x =
        replay.ask(
            quantities
                .length(key + ".x", subject + ", forward of the aft end")
                .how("Tape from the aft end to where the line is made fast.")
                .why("At an end it pulls that end down.")
                .unlessAmbiguous(quantities.feetOrInches(outline.aft(), outline.fore()))
                .within(
                    quantities.length(
                        outline.aft() - BEYOND_END,
                        outline.fore() + BEYOND_END,
                        "length of the hull and a hand")));
    double y =
        replay.ask(
            quantities
                .length(key + ".y", subject + ", port of the middle")
                .how("From the middle line, to port; to starboard with a minus.")
                .why("Off the middle it heels the boat as well.")
                .within(
                    quantities.length(
                        -outline.halfBeam(), outline.halfBeam(), "breadth of the hull")));
    double z =
        replay.ask(
            quantities
                .length(key + ".z", subject + ", height")
                .how("From the baseline straight up to where the line is made fast.")
                .why("The higher it pulls, the more it heels and trims.")
                .within(
                    quantities.length(
                        outline.lowest(), outline.highest() + ABOVE_RAIL, "height of the hull")));
    Cleat cleat = new Cleat(name, Vector3.of(x, y, z));
    return before -> before.withCleats(added(before.cleats(), cleat));
  }

  private UnaryOperator<Boat> anchor(String key) {
    double line =
        replay.ask(
            quantities.asked(
                OutfitProperties.ANCHOR_LINE,
                key + ".line",
                "Anchor line, " + OutfitProperties.ANCHOR_LINE.subject()));
    double depth =
        replay.ask(
            quantities.asked(
                OutfitProperties.ANCHOR_DEPTH,
                key + ".depth",
                "Anchor, " + OutfitProperties.ANCHOR_DEPTH.subject()));
    AnchorBottom bottom =
        replay.ask(
            WordQuestions.choice(
                    key + ".bottom",
                    "Anchor, " + OutfitProperties.ANCHOR_BOTTOM.subject(),
                    ChoiceReader.of(
                            AnchorBottom.SAND_OR_MUD,
                            AnchorBottom.SAND_OR_MUD.word(),
                            "mud",
                            "clay")
                        .or(
                            AnchorBottom.STONES_OR_WEED,
                            AnchorBottom.STONES_OR_WEED.word(),
                            "weed",
                            "gravel",
                            "rock"))
                .worded(OutfitProperties.ANCHOR_BOTTOM)
                .orElse(AnchorBottom.STONES_OR_WEED, AnchorBottom.STONES_OR_WEED.word()));
    return before ->
        before.withOutfit(
            before.outfit().withAnchorLine(line).withAnchorDepth(depth).withAnchorBottom(bottom));
  }

  private UnaryOperator<Boat> leak(String key) {
    String seam =
        replay.ask(
            WordQuestions.remark(key + ".seam", "Leak, at which seam")
                .how("Where it comes in at the mooring, such as port chine; each by itself.")
                .why("The page names the worst first."));
    QuestionTopic leaks = new QuestionTopic(key, "Leak " + WordQuestions.quoted(seam));
    double litres = replay.ask(quantities.asked(OutfitProperties.LEAK_LITRES, leaks));
    double seconds = replay.ask(quantities.asked(OutfitProperties.LEAK_TIME, leaks));
    SeamLeak leak = new SeamLeak(seam, litres, seconds);
    return before -> before.withOutfit(before.outfit().with(leak));
  }

  private static <T> List<T> added(List<T> there, T more) {
    return Stream.concat(there.stream(), Stream.of(more)).toList();
  }
}
