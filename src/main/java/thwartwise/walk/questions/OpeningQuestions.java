package thwartwise.walk.questions;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import thwartwise.boat.Opening;
import thwartwise.geometry.Vector3;
import thwartwise.measure.ChoiceReader;
import thwartwise.measure.QuotedText;
import thwartwise.measure.YesOrNo;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Tape;
import thwartwise.walk.engine.Warning;
import thwartwise.walk.engine.WordQuestions;

/** Where water comes in before it reaches the rail. */
public final class OpeningQuestions {
  private final Replay replay;
  private final Tape tape;
  private final Outline outline;
  private final PlausibleLimits limits;

  public OpeningQuestions(Replay replay, Tape tape, Outline outline, PlausibleLimits limits) {
    this.limits = limits;
    this.replay = replay;
    this.tape = tape;
    this.outline = outline;
  }

  public List<Opening> openings(Consumer<List<Opening>> known) {
    return new RepeatedQuestion(
            replay, "opening", "opening", "Is there any opening lower than the rail?")
        .forgettingNone()
        .inRows("Opening", "name", "forward", "to port", "up", "length", "shut by", "across")
        .orNone(
            entry ->
                entry
                    .how(
                        "Cut-out for the motor, oar notch, cable hole, drain without its bung,",
                        "centreboard case: each where water could come in.")
                    .why("The boat floods at its lowest opening, not at its rail."),
            this::opening,
            known);
  }

  public Opening opening(String key, List<Opening> before) {
    String name =
        replay.ask(
            WordQuestions.name(
                    key + ".name", "Opening, name", before.stream().map(Opening::name).toList())
                .how(
                    "Such as transom cut-out, port oar notch, drain. Or on one line: name; forward;",
                    "port; height of the lowest edge; its length; closed by; across or along.")
                .why("The report says which opening the water reaches first."));
    String subject = "Opening " + WordQuestions.quoted(name);
    double x = along(key, subject);
    double y = across(key, subject);
    double z = up(key, subject);
    double width = width(key, subject);
    Optional<String> closedBy = closedBy(key, subject, z, width);
    boolean athwart = runsAcross(key, subject);
    return new Opening(
        name, Vector3.of(x, y, z), width, athwart, closedBy, Optional.empty(), Optional.empty());
  }

  private double along(String key, String subject) {
    return replay.ask(
        tape.length(key + ".x", subject + ", forward of the aft end")
            .how("Tape from the aft end to the middle of its lowest edge.")
            .why("Water reaches it when that place goes under.")
            .unlessUnclear(tape.feetOrInches(outline.aft(), outline.fore()))
            .within(tape.length(outline.aft(), outline.fore(), "length of the hull")));
  }

  private double across(String key, String subject) {
    double beam = outline.halfBeam();
    return replay.ask(
        tape.length(key + ".y", subject + ", port of the middle")
            .how("From the middle line to the middle of its lowest edge; starboard with a minus.")
            .why("An opening far out goes under first when the boat heels.")
            .within(tape.length(-beam, beam, "breadth of the hull")));
  }

  private double up(String key, String subject) {
    return replay.ask(
        tape.length(key + ".z", subject + ", height of its lowest edge")
            .how("From the baseline straight up to its lowest edge.")
            .show(Sketches.EDGE)
            .why("This height is where flooding begins.")
            .within(tape.length(outline.lowest(), outline.highest(), "height of the hull")));
  }

  private double width(String key, String subject) {
    double widest = Math.max(2 * outline.halfBeam(), outline.fore() - outline.aft());
    return replay.ask(
        tape.length(key + ".width", subject + ", length of that edge")
            .how("Tape along the lowest edge; for a small hole its diameter.")
            .show(Sketches.EDGE)
            .why("A wide opening floods at the end that dips.")
            .within(tape.length(0, widest, "size of the hull")));
  }

  private Optional<String> closedBy(String key, String subject, double z, double width) {
    return replay.ask(
        WordQuestions.thing(key + ".closedBy", subject + ", closed under way by")
            .how("What shuts it whenever the boat is afloat: bung, hatch lid; or no.")
            .why("Only what is always in place keeps water out. In doubt: no.")
            .unless(OpeningQuestions::noThing)
            .within(lid -> tooLow(z, width))
            .orNone("nothing"));
  }

  /** A lid that large is not relied on under water. */
  private Optional<Warning> tooLow(double z, double width) {
    double depth = outline.highest() - outline.lowest();
    return limits.isLidTooLow(z - outline.lowest(), width, depth)
        ? Optional.of(
            new Warning(
                "A hole %s wide, %s up, lies under water; nobody relies on a lid wider than %s there."
                        .formatted(tape.show(width), tape.show(z), tape.show(limits.lidMost()))
                    + " Measure its edge again, or say no.",
                Optional.of("no"),
                true))
        : Optional.empty();
  }

  private static Optional<String> noThing(String typed) {
    return YesOrNo.read(typed).refusal().isEmpty()
        ? Optional.of(
            QuotedText.of(typed) + " names nothing. Type what shuts it, such as bung; or no.")
        : Optional.empty();
  }

  private boolean runsAcross(String key, String subject) {
    return replay.ask(
        WordQuestions.choice(
                key + ".edge",
                subject + ", its edge runs",
                ChoiceReader.of(true, "across", "athwart").or(false, "along", "fore and aft"))
            .how("across: as in a transom. along: as a notch in the side.")
            .why("It decides which end of the edge dips when the boat heels."));
  }
}
