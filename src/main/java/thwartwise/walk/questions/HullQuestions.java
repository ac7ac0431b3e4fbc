package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Assumption;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Material;
import thwartwise.hull.Station;
import thwartwise.measure.ChoiceReader;
import thwartwise.measure.NumberReader;
import thwartwise.measure.Reading;
import thwartwise.measure.Rounding;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.BoatQuantity;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.walk.engine.OrderedLengths;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Warning;
import thwartwise.walk.engine.WordQuestions;

/** Questions for the bare hull: material, shape, mass. */
public final class HullQuestions {
  private static final int USUAL_STATIONS = 5;
  private static final int USUAL_POINTS = 3;

  private final Replay replay;
  private final QuantityQuestions quantities;
  private final PlausibleLimits limits;
  private final ShapeQuestions shape;

  public HullQuestions(
      Replay replay, QuantityQuestions quantities, PlausibleLimits limits, ShapeQuestions shape) {
    this.shape = shape;
    this.replay = replay;
    this.quantities = quantities;
    this.limits = limits;
  }

  public MeasuredHull hull() {
    List<Assumption> assumed = new ArrayList<>();
    Optional<Material> material = material();
    double density = material.map(Material::swampedDensity).orElseGet(this::density);
    ShellThickness shell =
        material.map(known -> thickness(known, assumed)).orElseGet(() -> replay.ask(thickness()));
    replay.begin(FullWalkSections.SHAPE);
    List<Station> stations = stations(length());
    shape.ask(replay, stations, quantities.system());
    replay.ask("hull.looks", () -> looks(stations));
    replay.begin(FullWalkSections.WEIGHT);
    Outline outline = new Outline(stations);
    SkinWarnings skin = new SkinWarnings(quantities, limits, stations, shell, density, material);
    WeighingQuestions.Weighed weighed =
        new WeighingQuestions(replay, quantities, outline, skin).weighed();
    Optional<Vector3> centre =
        new BalanceQuestions(replay, quantities, outline, skin).centre(weighed);
    double floor = floor(outline);
    return new MeasuredHull(
        new HullMeasurements(
            weighed.mass(),
            centre,
            material,
            density,
            shell.thicker(),
            floor,
            stations,
            decked(outline)),
        assumed);
  }

  private Optional<Material> material() {
    ChoiceReader<Optional<Material>> choices =
        MaterialChoices.known().or(Optional.empty(), "other", "something else");
    return replay.ask(
        WordQuestions.choice("hull.material", BoatProperties.MATERIAL.subject(), choices)
            .worded(BoatProperties.MATERIAL));
  }

  private double density() {
    return replay.ask(
        QuestionDefinition.of(
                "hull.density",
                BoatProperties.DENSITY.subject(),
                "kg/m³",
                "a number such as 900 (kg/m³, soaked)",
                NumberReader::figure)
            .worded(BoatProperties.DENSITY)
            .within(this::unlikelyDensity)
            .unless(HullQuestions::impossibleDensity));
  }

  /** The density in kilograms per litre, which is what a jug and a scale give. */
  private Optional<Warning> unlikelyDensity(double density) {
    Span usual = limits.density();
    if (usual.contains(density)) {
      return Optional.empty();
    }
    double perLitre = density * 1000;
    if (usual.contains(perLitre)) {
      String meant = Rounding.plain(perLitre);
      return Optional.of(
          new Warning(
              "No material is so light; was it read as kilograms a litre? Did you mean %s kg/m³?"
                  .formatted(meant),
              Optional.of(meant),
              false));
    }
    return impossibleDensity(density).isPresent()
        ? Optional.empty()
        : Optional.of(
            new Warning(
                "Hulls are hardly made of that: soaked cedar is 500, a foam sandwich with its"
                    + " skins 300, steel 7850 kg/m³. Weigh it again.",
                Optional.empty(),
                true));
  }

  private static Optional<String> impossibleDensity(double density) {
    return BoatQuantity.DENSITY.believes(density)
        ? Optional.empty()
        : Optional.of(
            "No hull is made of that: densities run from 50 (foam) to 8000 (steel) kg/m³."
                + " Type kilograms for each cubic metre.");
  }

  private QuestionDefinition<ShellThickness> thickness() {
    return quantities
        .asked(BoatProperties.THICKNESS, "hull.thickness", BoatProperties.THICKNESS.subject())
        .how(
            "With a calliper or a rule at a cut edge: top of the transom, oar notch,",
            "hatch. Where bottom and sides differ, both with ; between: bottom; sides.")
        .as(ShellThickness::everywhere, ShellThickness::thicker)
        .or(this::bottomAndSides);
  }

  /**
   * The thickness, which may be two figures. The larger counts, because it leaves less room in the
   * chambers.
   */
  private Optional<Reading<ShellThickness>> bottomAndSides(String typed) {
    String[] two = typed.split(";", -1);
    if (two.length != 2) {
      return Optional.empty();
    }
    Reading<Double> bottom = quantities.length("", "").read(two[0]);
    Reading<Double> sides = quantities.length("", "").read(two[1]);
    return Optional.of(
        bottom.then(
            b ->
                sides.then(
                    s ->
                        Reading.understood(
                            new ShellThickness(b, s),
                            "bottom %s, sides %s, the thicker counts"
                                .formatted(quantities.show(b), quantities.show(s))))));
  }

  private ShellThickness thickness(Material material, List<Assumption> assumed) {
    double thick = material.unmeasuredThickness();
    Optional<ShellThickness> measured =
        replay.ask(
            "hull.thickness",
            () -> thickness().optional(quantities.show(thick) + ", thick for it, not measured"));
    return orAssumed(
        measured, ShellThickness.everywhere(thick), Assumption.thickShell(material), assumed);
  }

  /** What nobody measured is recorded as an assumption, so that the report can name it. */
  private static <T> T orAssumed(
      Optional<T> measured, T usual, Assumption what, List<Assumption> assumed) {
    if (measured.isEmpty()) {
      assumed.add(what);
    }
    return measured.orElse(usual);
  }

  private double length() {
    return replay.ask(length(quantities));
  }

  public static QuestionDefinition<Double> length(QuantityQuestions quantities) {
    return quantities
        .length("hull.length", "Length overall")
        .how(
            "Plumb both ends down to the ground and tape between the marks. In a row with ;",
            "between; the length alone: the rest is asked, or comes as a table of stations.")
        .show(Sketches.LENGTHS)
        .why("It is only used to find slips of the tape in the answers that follow.")
        .within(quantities.length(1.5, 8.0, "length of any boat this is for").unlessInsisted())
        .row(
            "The hull",
            List.of("length", "stations, 5", "points at each, 3", "sides alike: yes or no"));
  }

  private List<Station> stations(double length) {
    int stations =
        replay.ask(
            WordQuestions.whole("hull.stations", "How many stations", 3, 21)
                .how(
                    "Stations are the places along the boat where you measure across it: one at",
                    "each end, the rest between, closer together where the shape changes fast.",
                    "Or all of them at once, from a spreadsheet or a plan: type table.")
                .why("Three find a plain pram; five suit most boats; more for much curve.")
                .orElse(USUAL_STATIONS, Integer.toString(USUAL_STATIONS)));
    int points =
        replay.ask(
            WordQuestions.whole("hull.points", "How many points at each station", 2, 12)
                .how(
                    "From the keel up to the rail, the same number at every station: keel, chine",
                    "and rail are three; a round side needs five or more.")
                .why("Between points the side is taken as straight.")
                .orElse(USUAL_POINTS, Integer.toString(USUAL_POINTS)));
    boolean alike = alike();
    replay.expect(OF_EVERY_SHAPE + stations * (1 + (alike ? 2 : 4) * points - 1));
    return new StationQuestions(replay, quantities, length, stations, points, alike, limits)
        .stations();
  }

  private static QuestionDefinition<Boolean> looks(List<Station> stations) {
    List<String> drawn = new ArrayList<>(HullSketch.of(stations));
    drawn.add("no: type list, then change and the number of the answer that is wrong.");
    return WordQuestions.yesNo("hull.looks", "Does this look like your boat?")
        .how(drawn.toArray(String[]::new))
        .why("A slip of the tape shows here at a glance, and nobody sees it later.")
        .orElse(true, "yes")
        .ifUnknown(false, "no")
        .unless(yes -> yes ? Optional.empty() : Optional.of(MEND));
  }

  private static final String MEND =
      "Then type list, and change with the number of the answer that is wrong; or back.";

  /** The questions of every shape: length, stations, points, equal sides, the final look. */
  private static final int OF_EVERY_SHAPE = 5;

  private boolean alike() {
    return replay.ask(
        WordQuestions.yesNo("hull.alike", "Are port and starboard alike?")
            .how("Tape from the middle of the stem to each corner of the transom and compare.")
            .why("If yes, port is measured and mirrored; if no, starboard is asked as well."));
  }

  private double floor(Outline outline) {
    QuestionDefinition<Double> floor =
        quantities
            .length("hull.floor", BoatProperties.FLOOR.subject())
            .worded(BoatProperties.FLOOR)
            .within(quantities.length(outline.lowest(), outline.highest(), "height of the hull"));
    return replay.ask(floor);
  }

  private List<Span> decked(Outline outline) {
    return new RepeatedQuestion(
            replay, "hull.decked", "decked length", "Is any length of the boat decked over?")
        .inRows("Decked length", DECKED)
        .orNone(
            entry ->
                entry
                    .how("A deck from rail to rail that keeps water out; a loose cover is none.")
                    .why("Along a deck, water at the rail does not run in.")
                    .ifUnknown(false, "no"),
            (key, before) -> deck(key, before.size() + 1, outline));
  }

  /**
   * Doubts a deck longer than half the boat; the ends typed are most often those of the open part.
   */
  private Optional<Warning> longDeck(double from, double to, Outline outline) {
    double length = outline.fore() - outline.aft();
    return to - from > length / 2
        ? Optional.of(
            new Warning(
                "That deck is %s long, more than half of the boat (%s). Is it the deck, and not the"
                        .formatted(quantities.show(to - from), quantities.show(length))
                    + " open part?",
                Optional.empty(),
                true))
        : Optional.empty();
  }

  private static final String[] DECKED = {"from", "to, forward of the aft end"};

  private Span deck(String key, int number, Outline outline) {
    double from =
        replay.ask(
            quantities
                .length(key + ".from", "Decked from, forward of the aft end")
                .how("Tape from the aft end to where the deck begins.")
                .why("Within this length alone the rail is no edge that floods.")
                .row("Decked length " + number, List.of(DECKED))
                .unlessAmbiguous(quantities.feetOrInches(outline.aft(), outline.fore()))
                .within(quantities.length(outline.aft(), outline.fore(), "length of the hull")));
    double to =
        replay.ask(
            quantities
                .length(key + ".to", "Decked to, forward of the aft end")
                .how("Tape from the aft end to where the deck ends.")
                .why("Within this length alone the rail is no edge that floods.")
                .unlessAmbiguous(quantities.feetOrInches(outline.aft(), outline.fore()))
                .within(quantities.length(outline.aft(), outline.fore(), "length of the hull"))
                .unless(end -> OrderedLengths.backward("Decked length", from, end, quantities))
                .within(end -> longDeck(from, end, outline)));
    return new Span(from, to);
  }
}
