package thwartwise.measured;

import java.util.Locale;
import java.util.Optional;
import thwartwise.measure.Dimension;
import thwartwise.measure.NumberText;
import thwartwise.measure.UnitFormat;

/**
 * The quantity of a single number about a boat: its unit in the boat file, the range outside which
 * no file is read, and the usual range, outside which the walk asks for confirmation. The outer
 * range is wide and finds errors of unit and tape; a person who insists can keep a value between
 * the two. All bounds are judgement.
 */
public enum BoatQuantity {
  AGAIN_AFTER_DAYS("how many days a look at a point stands", "days", 1, 3650, Usual.NONE),
  HULL_MASS(
      "a bare hull",
      "kg",
      1,
      2000,
      Usual.of(8, 800, Dimension.MASS, "mass of any hull this is for"),
      UnitSlip.GRAMS),
  KIT_MASS(
      "a thing carried",
      "kg",
      0.01,
      500,
      Usual.of(0.01, 300, Dimension.MASS, "mass of a piece of kit"),
      UnitSlip.GRAMS),
  PERSON_MASS(
      "a person",
      "kg",
      2,
      250,
      Usual.of(8, 200, Dimension.MASS, "mass of one person"),
      UnitSlip.GRAMS),
  ALONG(
      "a place along a small boat",
      "m",
      -2,
      13,
      Usual.NONE,
      UnitSlip.CENTIMETRES,
      UnitSlip.MILLIMETRES),
  ATHWART(
      "a distance from the middle line",
      "m",
      -3,
      3,
      Usual.NONE,
      UnitSlip.CENTIMETRES,
      UnitSlip.MILLIMETRES),
  HEIGHT(
      "a height in a small boat",
      "m",
      -1,
      3,
      Usual.NONE,
      UnitSlip.CENTIMETRES,
      UnitSlip.MILLIMETRES),
  DEPTH(
      "a distance down from a line",
      "m",
      -1,
      3,
      Usual.NONE,
      UnitSlip.CENTIMETRES,
      UnitSlip.MILLIMETRES),
  THICKNESS(
      "the thickness of a shell",
      "m",
      0.0003,
      0.1,
      Usual.of(0.0005, 0.060, Dimension.LENGTH, "thickness of such shells"),
      UnitSlip.MILLIMETRES,
      UnitSlip.CENTIMETRES),
  SKEG_THICKNESS(
      "the thickness of a skeg",
      "m",
      0.002,
      0.3,
      Usual.NONE,
      UnitSlip.MILLIMETRES,
      UnitSlip.CENTIMETRES),
  OPENING_WIDTH(
      "the width of an opening", "m", 0, 5, Usual.NONE, UnitSlip.CENTIMETRES, UnitSlip.MILLIMETRES),
  // Millimetres first, because holes are sold in them.
  DIAMETER("a round hole", "m", 0.005, 0.6, Usual.NONE, UnitSlip.MILLIMETRES, UnitSlip.CENTIMETRES),
  HALF_WIDTH(
      "how far out somebody sits",
      "m",
      0,
      2,
      Usual.NONE,
      UnitSlip.CENTIMETRES,
      UnitSlip.MILLIMETRES),
  DENSITY(
      "what a hull is made of", "kg/m3", 50, 9000, Usual.NONE, UnitSlip.GRAMS_PER_CUBIC_CENTIMETRE),
  CHAMBER_LITRES(
      "a chamber",
      "litres",
      0.1,
      5000,
      Usual.of(0.1, 2000, Dimension.VOLUME, "volume of chambers in such boats"),
      UnitSlip.MILLILITRES,
      UnitSlip.CUBIC_METRES),
  KIT_LITRES(
      "a thing carried",
      "litres",
      0.001,
      1000,
      Usual.of(0.01, 500, Dimension.VOLUME, "volume of a piece of kit"),
      UnitSlip.MILLILITRES),
  BAILER_LITRES(
      "a bailer",
      "litres",
      0.2,
      30,
      Usual.of(0.2, 30, Dimension.VOLUME, "volume of bailers one person can swing"),
      UnitSlip.MILLILITRES,
      UnitSlip.CUBIC_METRES),
  TRAILER_MASS(
      "a trailer or rack",
      "kg",
      10,
      3500,
      Usual.of(30, 1500, Dimension.MASS, "mass such a trailer or rack may carry"),
      UnitSlip.GRAMS),
  VEHICLE_MASS(
      "what a car pulls or bears",
      "kg",
      10,
      3500,
      Usual.of(30, 3000, Dimension.MASS, "mass a car pulls or bears on its roof"),
      UnitSlip.GRAMS),
  LINE_METRES(
      "an anchor line",
      "m",
      1,
      300,
      Usual.of(3, 150, Dimension.LENGTH, "length of anchor lines of such boats"),
      UnitSlip.CENTIMETRES),
  ANCHOR_DEPTH(
      "water that so small a boat anchors in",
      "m",
      0.2,
      100,
      Usual.of(0.3, 30, Dimension.LENGTH, "depth that such boats anchor in"),
      UnitSlip.CENTIMETRES),
  LEAK_MINUTES(
      "a look at a leak",
      "minutes",
      1,
      2880,
      Usual.of(5, 1440, Dimension.TIME, "time to watch a leak for")),
  LEAKED_LITRES(
      "water that got in",
      "litres",
      0,
      5000,
      Usual.of(0, 2000, Dimension.VOLUME, "volume of chambers in such boats"),
      UnitSlip.MILLILITRES),
  MINUTES(
      "a leak test",
      "minutes",
      0.1,
      50000,
      Usual.of(0.1, 16_666, Dimension.TIME, "time a test can last")),
  TEST_HEAD(
      "water above a chamber in a leak test",
      "m",
      0.01,
      3,
      Usual.of(0.02, 1.5, Dimension.LENGTH, "height of water in such a test"),
      UnitSlip.CENTIMETRES,
      UnitSlip.MILLIMETRES),
  SEEN_MINUTES(
      "a trial in knee-deep water",
      "minutes",
      0,
      1440,
      Usual.of(0, 120, Dimension.TIME, "time people sit in a swamped boat")),
  SEEN_MASS(
      "people in a trial",
      "kg",
      2,
      2500,
      Usual.of(5, 1500, Dimension.MASS, "mass of people in such a boat"),
      UnitSlip.GRAMS),
  KILOWATTS(
      "a motor on a small boat",
      "kW",
      0.01,
      60,
      Usual.of(0.05, 30, Dimension.POWER, "power of motors on such boats"),
      UnitSlip.WATTS),
  RULE_METRES(
      "the boats of a rule", "m", 0, 30, Usual.NONE, UnitSlip.CENTIMETRES, UnitSlip.MILLIMETRES),
  RULE_WATTS("the motors of a rule", "W", 0, 100000, Usual.NONE),
  WAVES(
      "waves",
      "m",
      0,
      10,
      Usual.of(0, 10, Dimension.LENGTH, "height of waves"),
      UnitSlip.CENTIMETRES,
      UnitSlip.MILLIMETRES),
  WIND("a wind", "m/s", 0, 80, Usual.NONE),
  FORCE("a Beaufort force", "by force", 0, 12, Usual.NONE),
  CURRENT("a current", "m/s", 0, 10, Usual.NONE, UnitSlip.CENTIMETRES),
  CELSIUS("water", "degrees Celsius", -2, 40, Usual.NONE),
  OFFSHORE(
      "a distance from the shore",
      "m",
      0,
      100000,
      Usual.of(0, 100_000, Dimension.LENGTH, "distance from a shore")),
  VOLTS("a battery on a small boat", "V", 3, 60, Usual.NONE),
  AMPERE_HOURS("a battery one person lifts", "ampere-hours", 1, 600, Usual.NONE),
  RATED_HOURS("the time of a label", "hours", 1, 100, Usual.NONE),
  EXPONENT("an exponent of Peukert", "as a number", 1, 1.6, Usual.NONE),
  AMPERES("a current on a small boat", "A", 0.01, 400, Usual.NONE),
  FUSE_AMPERES("a fuse on a small boat", "A", 0, 500, Usual.NONE),
  THRUST("the thrust of a small electric motor", "N", 20, 2000, Usual.NONE),
  CLAIMED_HOURS("a running time", "hours", 0.01, 200, Usual.NONE),
  DAILY_HOURS("part of a day", "hours", 0, 24, Usual.NONE),
  RUN_METRES(
      "a stretch to time a boat on",
      "m",
      20,
      5000,
      Usual.of(20, 5000, Dimension.LENGTH, "length of a stretch to time a boat on")),
  RUN_SECONDS("a timed run", "seconds", 5, 20000, Usual.NONE),
  PANEL_WATTS("a panel on a small boat", "W", 1, 1000, Usual.NONE),
  PANEL_SIDE("a panel seen from the side", "m2", 0, 5, Usual.NONE),
  MOTOR_REACH(
      "how far a motor reaches below a boat",
      "m",
      -1,
      2,
      Usual.of(-1, 2, Dimension.LENGTH, "length of a motor on such a boat"),
      UnitSlip.CENTIMETRES,
      UnitSlip.MILLIMETRES),
  LATITUDE("a latitude", "degrees", -66, 66, Usual.NONE),
  HEEL("the heel of a boat", "degrees", -90, 90, Usual.NONE),
  PENDULUM("a plumb line in a boat", "m", 0.1, 5, Usual.NONE, UnitSlip.CENTIMETRES),
  SWINGS("swings of a boat", "in number", 1, 1000, Usual.NONE),
  ROLL_SECONDS("some swings of a boat", "seconds", 0.1, 10000, Usual.NONE),
  WIRE_METRES(
      "a wire in a small boat",
      "m",
      0,
      30,
      Usual.of(0.01, 30, Dimension.LENGTH, "length of such a wire"),
      UnitSlip.CENTIMETRES,
      UnitSlip.MILLIMETRES),
  WIRE_TO_FUSE(
      "a wire in a small boat",
      "m",
      0,
      30,
      Usual.of(0, 30, Dimension.LENGTH, "length of such a wire"),
      UnitSlip.CENTIMETRES,
      UnitSlip.MILLIMETRES),
  SQUARE_MILLIMETRES("a wire in a small boat", "mm2", 0.1, 120, Usual.NONE),
  GAUGE("an American gauge of wire", "AWG", 0, 30, Usual.NONE),
  INSULATION("the insulation of a wire", "degrees Celsius", 60, 260, Usual.NONE),
  PEOPLE("one place", "people", 1, 20, Usual.NONE),
  COUNT("a count", "in number", -1e6, 1e6, Usual.NONE),
  ANY("a number", "in all", -Double.MAX_VALUE, Double.MAX_VALUE, Usual.NONE);

  /** Whole degrees keep their digits after conversion to radians and back. */
  private static final double WHOLE_DEGREE = 1e9;

  private final String noun;
  private final String unit;
  private final double least;
  private final double most;
  private final Optional<Usual> usual;
  private final UnitSlip[] slips;

  BoatQuantity(
      String noun,
      String unit,
      double least,
      double most,
      Optional<Usual> usual,
      UnitSlip... slips) {
    this.noun = noun;
    this.unit = unit;
    this.least = least;
    this.most = most;
    this.usual = usual;
    this.slips = slips;
  }

  /**
   * The usual range, as the walk asks for it.
   *
   * @param ofWhat completes "outside … to …, the"
   */
  private record Usual(double least, double most, Dimension dimension, String ofWhat) {
    static final Optional<Usual> NONE = Optional.empty();

    static Optional<Usual> of(double least, double most, Dimension dimension, String ofWhat) {
      return Optional.of(new Usual(least, most, dimension, ofWhat));
    }
  }

  private Usual usual() {
    return usual.orElseThrow(() -> new IllegalStateException(name() + " has no usual range"));
  }

  /** Whether the walk asks for it, and so has a usual range. */
  public boolean isAsked() {
    return usual.isPresent();
  }

  /** The walk's words for the usual range. */
  public String ofWhat() {
    return usual().ofWhat();
  }

  public Dimension dimension() {
    return usual().dimension();
  }

  /** The least usual value, SI. */
  public double usualLeast() {
    return si(usual().least());
  }

  /** The greatest usual value, SI. */
  public double usualMost() {
    return si(usual().most());
  }

  /** The least value a boat file may hold, SI. */
  public double least() {
    return si(least);
  }

  /** The greatest value a boat file may hold, SI. */
  public double most() {
    return si(most);
  }

  /** A value of the file in SI; digits stay as they were typed. */
  public double si(double inFile) {
    return isAngle() ? Math.toRadians(inFile) : NumberText.scaled(inFile * seconds(), tens());
  }

  /** A value in SI as the file has it. */
  public double inFile(double si) {
    return isAngle()
        ? Math.rint(Math.toDegrees(si) * WHOLE_DEGREE) / WHOLE_DEGREE
        : NumberText.scaled(si / seconds(), -tens());
  }

  private boolean isAngle() {
    return this == LATITUDE || this == HEEL;
  }

  private int seconds() {
    return switch (unit) {
      case "minutes" -> 60;
      case "hours", "ampere-hours" -> 3600;
      default -> 1;
    };
  }

  private int tens() {
    return switch (unit) {
      case "litres" -> -3;
      case "kW" -> 3;
      case "mm2" -> -6;
      default -> 0;
    };
  }

  /** A value in SI as it was measured, in the units of the reader. */
  public String shown(double si, UnitFormat units) {
    return switch (unit) {
      case "kg" -> units.scales(si);
      case "litres" -> units.jug(si);
      case "kW" -> units.motor(si);
      case "kg/m3" -> units.density(si);
      case "m" -> isThin() ? units.thickness(si) : units.tape(si);
      default -> NumberText.number(inFile(si)) + UnitFormat.TIED + unit;
    };
  }

  /** Whether it is measured with callipers and shown in millimetres. */
  private boolean isThin() {
    return this == THICKNESS || this == SKEG_THICKNESS || this == DIAMETER;
  }

  /** The range in words, as in "1 to 2000 kg". */
  public String range() {
    return NumberText.number(least) + " to " + NumberText.number(most) + " " + unit;
  }

  public String unit() {
    return unit;
  }

  public boolean believes(double value) {
    return value >= least && value <= most;
  }

  /** Why a value is not believed, and what to do. */
  public String doubt(double value, String remedy) {
    return String.format(
        Locale.ROOT,
        "%s %s, outside the believable %s to %s %s for %s. %s",
        NumberText.number(value),
        unit,
        NumberText.number(least),
        NumberText.number(most),
        unit,
        noun,
        likelySlip(value).orElse(remedy));
  }

  private Optional<String> likelySlip(double value) {
    for (UnitSlip slip : slips) {
      double meant = NumberText.scaled(value, slip.tens());
      // A wrong unit never makes a value zero or negative.
      if (value > 0 && meant > 0 && believes(meant)) {
        return Optional.of(
            "If that was " + slip.unit() + ", write " + NumberText.number(meant) + ".");
      }
    }
    return Optional.empty();
  }
}
