package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import thwartwise.boat.Chamber;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Opening;
import thwartwise.measure.Reading;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/**
 * Questions for openings that let water in below the rail or into a chamber. The kind of opening
 * decides what is asked.
 */
public final class OpeningQuestions {
  static final String BOAT = "boat";

  /** The longest name in characters. A name has 30, of which a number may take three. */
  private static final int LONGEST_NAME = 27;

  private final Replay replay;
  private final QuantityQuestions quantities;
  private final Outline outline;
  private final PlausibleLimits limits;
  private final List<ChamberPart> chambers;

  public OpeningQuestions(
      Replay replay,
      QuantityQuestions quantities,
      Outline outline,
      PlausibleLimits limits,
      List<Chamber> chambers) {
    this.limits = limits;
    this.replay = replay;
    this.quantities = quantities;
    this.outline = outline;
    this.chambers = chambers.stream().flatMap(c -> c.parts().stream()).toList();
  }

  public List<Opening> openings(Consumer<List<Opening>> known) {
    return new RepeatedQuestion(
            replay, "opening", "opening", "Is there any notch, drain, hatch or cable hole?")
        .withExplicitEnd()
        .inRows("Opening", "what it is", "its measurements")
        .orNone(
            entry ->
                entry
                    .how(
                        "Cut-out for the motor, oar notch, drain, hatch in a deck or a locker's face,",
                        "screw-in pocket, cable hole, centreboard case: each where water could come in",
                        "lower than the rail, or into a chamber.")
                    .show(Sketches.OPENINGS)
                    .why(
                        "The boat floods at its lowest opening, not at its rail; a chamber with an",
                        "open hole fills."),
            this::opening,
            known);
  }

  public Opening opening(String key, List<Opening> before) {
    OpeningKind kind = kind(key);
    Optional<ChamberPart> into = into(key, kind);
    String name = name(key, kind, into, before);
    String subject = "Opening " + WordQuestions.quoted(name);
    return new OpeningMeasurements(replay, quantities, outline, limits, key, subject, kind, into)
        .named(name);
  }

  private OpeningKind kind(String key) {
    return replay.ask(
        WordQuestions.choice(key + ".kind", "Opening", OpeningKind.choices())
            .or(OpeningQuestions::whichHatch)
            .how(
                "notch: cut into the transom. oar notch: into a side. drain: a round hole with",
                "a bung. deck hatch: lies in a deck or a seat top, as a pocket or deck plate.",
                "face hatch: stands in a bulkhead or the front of a seat. cable hole: small",
                "and round. other: a centreboard case or anything else. Or all of it on one",
                "line, with ; between, in the order asked.")
            .show(Sketches.OPENINGS)
            .why("Each has its own two or three measurements."));
  }

  private static Optional<Reading<OpeningKind>> whichHatch(String typed) {
    return typed.strip().equalsIgnoreCase("hatch")
        ? Optional.of(
            Reading.refused(
                "A hatch lies in a deck or a seat top (deck hatch) or stands in an upright face (face"
                    + " hatch). Type which of the two."))
        : Optional.empty();
  }

  private Optional<ChamberPart> into(String key, OpeningKind kind) {
    if (kind.isNotch() || chambers.isEmpty()) {
      return Optional.empty();
    }
    List<String> places = new ArrayList<>(chambers.stream().map(ChamberPart::name).toList());
    places.add(BOAT);
    QuestionDefinition<String> leads =
        WordQuestions.oneOf(key + ".into", "This opening leads into", places)
            .how(
                "A chamber you named, a beginning of its name is enough; or boat: where people",
                "sit.")
            .show(kind.sketch())
            .why("A hole into a chamber that nothing shuts makes it count for nothing.");
    List<String> order = Stream.concat(Stream.of("leads into"), kind.order().stream()).toList();
    String place = replay.ask(leads.row(kind.title(), order));
    return chambers.stream().filter(chamber -> chamber.name().equals(place)).findFirst();
  }

  private String name(
      String key, OpeningKind kind, Optional<ChamberPart> into, List<Opening> before) {
    List<String> taken = before.stream().map(Opening::name).toList();
    String usual = usual(kind, into.map(ChamberPart::name), taken);
    QuestionDefinition<String> entry =
        WordQuestions.name(key + ".name", "Opening, name", taken)
            .how("Such as motor notch, drain, hatch of the fore locker.")
            .show(kind.sketch())
            .why("The report says which opening the water reaches first.");
    QuestionDefinition<String> named =
        kind == OpeningKind.OTHER ? entry : entry.orElse(usual, usual);
    boolean first = kind.isNotch() || chambers.isEmpty();
    return replay.ask(first ? named.rowOrEnter(kind.title(), kind.order()) : named);
  }

  private static String usual(OpeningKind kind, Optional<String> into, List<String> taken) {
    String whole = into.map(chamber -> kind.word() + " of " + chamber).orElse(kind.word());
    return WordQuestions.freeName(whole.length() <= LONGEST_NAME ? whole : kind.word(), taken);
  }
}
