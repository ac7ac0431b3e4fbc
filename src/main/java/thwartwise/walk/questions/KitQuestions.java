package thwartwise.walk.questions;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import thwartwise.boat.Chamber;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.measure.Dimension;
import thwartwise.measure.QuantityText;
import thwartwise.measure.Reading;
import thwartwise.measure.Reading.AnswerBasis;
import thwartwise.measure.Rounding;
import thwartwise.measured.BoatProperties;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.plausibility.UsualKit;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.QuestionTopic;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Warning;
import thwartwise.walk.engine.WordQuestions;

/** Questions for everything carried that is not built in. */
public final class KitQuestions {
  private static final String[] USUAL =
      Question.wrapped(
              "Any name. A usual mass is offered for: "
                  + String.join(", ", UsualKit.words())
                  + ". Call batteries and chargers by those words.")
          .toArray(String[]::new);

  private static final String[] USUAL_AND_ROW =
      Stream.concat(
              Arrays.stream(USUAL),
              Stream.of(
                  "Or on one line, with ; between: name; mass; forward of the aft end; to port;",
                  "height; fastened; chamber it is in; and of what is fastened or stowed in one,",
                  "its litres (may stay empty)."))
          .toArray(String[]::new);

  private final Replay replay;
  private final QuantityQuestions quantities;
  private final KitPositionQuestions position;
  private final List<ChamberPart> chambers;
  private final List<Place> places;
  private final PlausibleLimits limits;
  private final Propulsion driven;

  public KitQuestions(
      Replay replay,
      QuantityQuestions quantities,
      Outline outline,
      List<Chamber> chambers,
      List<Place> places,
      PlausibleLimits limits,
      Propulsion driven) {
    this.limits = limits;
    this.driven = driven;
    this.replay = replay;
    this.quantities = quantities;
    this.position = new KitPositionQuestions(replay, quantities, outline, limits);
    this.places = places;
    this.chambers = chambers.stream().flatMap(c -> c.parts().stream()).toList();
  }

  public List<Kit> kit(Consumer<List<Kit>> known) {
    return new RepeatedQuestion(replay, "kit", "piece of kit", "Is any kit carried?")
        .withExplicitEnd()
        .inRows("Kit", order())
        .orNone(
            entry ->
                entry
                    .how(
                        "Motor, battery, tank, anchor, oars, water can, bags: each by itself, in a",
                        "row with ; between, nothing for what Enter means; or its name alone.")
                    .why("Kit is subtracted from what is left for people, and its place matters."),
            this::item,
            known);
  }

  public Kit item(String key, List<Kit> before) {
    String title = "Kit " + (before.size() + 1);
    return item(key, replay.ask(named(key, before).row(title, List.of(order()))));
  }

  private Kit item(String key, String name) {
    String subject = "Kit " + WordQuestions.quoted(name);
    double mass = mass(key, subject, name);
    Vector3 at = position.at(key, subject);
    boolean fastened = fastened(key, subject);
    Optional<String> in = in(key, subject, name);
    Optional<Double> volume =
        fastened || in.isPresent() ? litres(key, subject, mass) : Optional.empty();
    Kit item = new Kit(name, mass, at, volume, fastened, in);
    return new WorkingPlaces(replay, quantities, places).asked(key, subject, item);
  }

  private String[] order() {
    String mass = quantities.either("kg", "lb");
    return chambers.isEmpty()
        ? new String[] {"name", mass, "forward", "to port", "height", "fastened", "litres"}
        : new String[] {"name", mass, "forward", "to port", "height", "fastened", "in", "litres"};
  }

  private static QuestionDefinition<String> named(String key, List<Kit> before) {
    return WordQuestions.name(key + ".name", "Kit, name", before.stream().map(Kit::name).toList())
        .how(USUAL_AND_ROW)
        .choices(UsualKit.words())
        .why("A space that holds a battery or a charger never counts: it must be vented.");
  }

  private double mass(String key, String subject, String name) {
    Optional<UsualKit> usual = UsualKit.named(name);
    QuestionDefinition<Double> weighed =
        quantities
            .asked(BoatProperties.KIT_MASS, new QuestionTopic(key, subject))
            .within(kg -> unusual(kg, limits.kitMass(name, driven)));
    return replay.ask(
        usual
            .map(u -> weighed.orElse(heavy(u), quantities.heavy(heavy(u)), AnswerBasis.GUESSED))
            .orElse(weighed));
  }

  private Optional<Warning> unusual(double mass, Span usual) {
    if (usual.contains(mass)) {
      return Optional.empty();
    }
    Optional<Double> meant =
        quantities
            .otherMass(mass)
            .filter(usual::contains)
            .or(() -> UsualKit.withPointMoved(mass, usual));
    return Optional.of(
        new Warning(
            "%s is not what such a thing weighs (%s to %s).%s"
                .formatted(
                    quantities.mass(mass),
                    quantities.mass(usual.from()),
                    quantities.mass(usual.to()),
                    meant
                        .map(kg -> " Did you mean " + quantities.mass(kg) + "?")
                        .orElse(" Weigh it again.")),
            meant.map(kg -> Rounding.plain(kg) + " kg"),
            true));
  }

  /** The mass to count: one that nobody weighed counts as a guess. */
  private static double heavy(UsualKit usual) {
    return usual.mass() * QuantityQuestions.HEAVIER;
  }

  /**
   * Densities of the materials of kit, kg/m³, each at the upper end of its usual range so that it
   * lifts least (judgement; steel and water are textbook figures).
   */
  private static final Map<String, Double> DENSE =
      Map.of(
          "battery", 2800.0,
          "motor", 5000.0,
          "steel", 7850.0,
          "iron", 7850.0,
          "wood", 800.0,
          "water", 1000.0,
          "bottle of water", 1000.0,
          "aluminium", 2700.0);

  /** A material instead of litres: the least volume that so many kilograms of it can have. */
  private Optional<Reading<Double>> ofItsStuff(String typed, double mass) {
    return Optional.ofNullable(DENSE.get(typed.strip().toLowerCase(Locale.ROOT)))
        .map(density -> mass / density)
        .map(
            volume ->
                Reading.understood(
                    volume,
                    QuantityText.litres(volume)
                        + ", by its mass, dense for "
                        + typed.strip().toLowerCase(Locale.ROOT),
                    AnswerBasis.GUESSED));
  }

  /**
   * The volume. It is not asked for loose kit outside a chamber, which floats away from a swamped
   * boat; heeled, kit of unknown size is taken to slide farthest.
   */
  private Optional<Double> litres(String key, String subject, double mass) {
    return replay.ask(
        quantities
            .asked(BoatProperties.KIT_LITRES, new QuestionTopic(key, subject))
            .how(
                "Length times breadth times height in cm, by 1000; what it pushes out of a full",
                "bucket; or what it is: battery, motor, steel, aluminium, wood, water.")
            .or(typed -> ofItsStuff(typed, mass))
            .orNone(BoatProperties.KIT_LITRES.whenOmitted()));
  }

  private boolean fastened(String key, String subject) {
    return replay.ask(
        WordQuestions.yesNo(BoatProperties.KIT_FASTENED, new QuestionTopic(key, subject))
            .ifUnknown(false, "no"));
  }

  private Optional<String> in(String key, String subject, String name) {
    return chambers.isEmpty() ? Optional.empty() : replay.ask(stowed(key, subject, name));
  }

  private QuestionDefinition<Optional<String>> stowed(String key, String subject, String name) {
    QuestionDefinition<String> entry =
        WordQuestions.oneOf(
                key + ".in",
                subject + ", " + BoatProperties.KIT_IN.subject(),
                chambers.stream().map(ChamberPart::name).toList())
            .worded(BoatProperties.KIT_IN)
            .within(chamber -> costly(name, chamber));
    return (isVented(name) ? entry.remark(chamber -> Optional.of(VENTED)) : entry)
        .orWord("none", "none");
  }

  /**
   * Asks before an answer that nobody means to give, such as giving up a tight chamber or stowing a
   * motor in a box.
   */
  private Optional<Warning> costly(String name, String chamber) {
    ChamberPart part =
        chambers.stream().filter(c -> c.name().equals(chamber)).findFirst().orElseThrow();
    if (isVented(name) && isProven(part)) {
      String lost = part.measuredVolume().map(this::lost).orElse("all that it lifts");
      return Optional.of(
          new Warning(
              "In there %s costs %s: such a space never counts. Really?"
                  .formatted(WordQuestions.quoted(name), lost),
              Optional.of(NOWHERE),
              true));
    }
    return name.toLowerCase(Locale.ROOT).contains("motor")
        ? Optional.of(
            new Warning(
                "A motor hangs on the transom under way. Is it really stowed in %s?"
                    .formatted(WordQuestions.quoted(chamber)),
                Optional.of(NOWHERE),
                true))
        : Optional.empty();
  }

  private static final String NOWHERE = "none";

  private String lost(double cubicMetres) {
    return quantities.system().show(cubicMetres, Dimension.VOLUME);
  }

  private static boolean isProven(ChamberPart part) {
    return part.filling() instanceof Filling.Air air && air.seal() == Seal.PROVEN;
  }

  private static final String VENTED =
      "a space that holds a battery or a charger never counts: vent it, do not seal it";

  private static boolean isVented(String name) {
    return Kit.named(name).needsVenting();
  }
}
