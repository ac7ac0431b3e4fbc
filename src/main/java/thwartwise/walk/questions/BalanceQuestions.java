package thwartwise.walk.questions;

import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thwartwise.geometry.Vector3;
import thwartwise.hull.TrestleBalance;
import thwartwise.measure.Reading;
import thwartwise.measure.Reading.AnswerBasis;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Warning;
import thwartwise.walk.engine.WordQuestions;

/** Questions for the centre of mass of the bare hull, if the weighing has not told it. */
record BalanceQuestions(
    Replay replay, QuantityQuestions quantities, Outline outline, SkinWarnings skin) {
  private static final String TILT = "tilt";

  /** A trestle nearer than this to the balance point was hardly moved, m (judgement). */
  private static final double MOVED = 0.03;

  private static final Pattern DEGREES =
      Pattern.compile("(\\d{1,2}(?:[.,]\\d{1,2})?) ?(?:°|deg.*)");

  /** The centre; empty where nobody knows it and it is estimated. */
  Optional<Vector3> centre(WeighingQuestions.Weighed weighed) {
    return weighed.centre().or(() -> weighed.along().or(this::along).map(x -> at(x, weighed)));
  }

  private Optional<Double> along() {
    boolean known =
        replay.ask(
            WordQuestions.yesNo("hull.centre", "Do you know where the bare hull balances?")
                .how(
                    "Lay it across a trestle or a pipe and shift it until it balances level. No:",
                    "it is estimated from the shell's area.")
                .why("It sets how the boat trims. An estimate is said to be one.")
                .ifUnknown(false, "no"));
    return known ? Optional.of(balance()) : Optional.empty();
  }

  private double balance() {
    return replay.ask(
        quantities
            .length("hull.centre.x", "Balance point, forward of the aft end")
            .how("Tape from the aft end, level, to where it balances.")
            .why("It sets how the boat trims.")
            .within(quantities.length(outline.aft(), outline.fore(), "length of the hull")));
  }

  private Vector3 at(double x, WeighingQuestions.Weighed weighed) {
    Optional<Double> high = replay.ask(high(weighed.mass()));
    return Vector3.of(x, 0, high.orElseGet(() -> tilted(x)));
  }

  /** The answer is empty if the centre is found by tilting the hull. */
  private QuestionDefinition<Optional<Double>> high(double mass) {
    QuestionDefinition<Optional<Double>> asked =
        quantities
            .length("hull.centre.z", "Height of its centre")
            .how(
                "Enter takes the centre of its skin, with what it weighs beyond that, at least",
                "a quarter, at the rail. tilt: you measured it, tilting it on one trestle.")
            .show(Sketches.TILT)
            .why("A figure that is too low flatters the boat; that of Enter is cautious.")
            .within(quantities.length(outline.lowest(), outline.highest(), "height of the hull"))
            .orWord(TILT, "by its tilt on a trestle");
    return skin.highCentre(mass)
        .map(
            z ->
                asked.orElse(
                    Optional.of(z), quantities.show(z) + ", from its skin", AnswerBasis.GUESSED))
        .orElse(asked);
  }

  private double tilted(double balance) {
    double moved = replay.ask(moved(balance));
    double angle = replay.ask(angle(balance, moved));
    return trestle(balance, moved, angle).centreHeight();
  }

  private TrestleBalance trestle(double balance, double moved, double angle) {
    return new TrestleBalance(balance, moved, outline.keelAt(moved), angle);
  }

  private QuestionDefinition<Double> moved(double balance) {
    return quantities
        .length("hull.tilt.x", "Trestle moved to, forward of the aft end")
        .how(
            "The bare hull lies across a trestle with a narrow edge and balances level; now",
            "shift the trestle by " + quantities.either("10 cm", "4 in") + " toward either end.")
        .show(Sketches.TILT)
        .why("How far it must then be tilted to balance again tells how high its centre is.")
        .within(quantities.length(outline.aft(), outline.fore(), "length of the hull"))
        .unless(x -> hardlyMoved(balance, x));
  }

  private Optional<String> hardlyMoved(double balance, double x) {
    return Math.abs(x - balance) >= MOVED
        ? Optional.empty()
        : Optional.of(
            "%s is where it balances level (%s). Shift the trestle by %s and tape again."
                .formatted(
                    quantities.show(x),
                    quantities.show(balance),
                    quantities.either("10 cm", "4 in")));
  }

  private QuestionDefinition<Double> angle(double balance, double moved) {
    return board("hull.tilt.rise", "Tilted until it balances, the board's end is up by")
        .how(
            "Lift the heavy end until the hull balances again. A board of "
                + quantities.either("1 m", "3 ft")
                + " in it,",
            "level when the boat was: how much higher is one end of it now than the other?",
            "Or degrees, as a phone shows them: 14 deg.")
        .show(Sketches.TILT)
        .why("Its centre stands right over the trestle then.")
        .within(angle -> unlikely(trestle(balance, moved, angle).centreHeight()))
        .remark(
            angle ->
                Optional.of(
                    "so its centre is "
                        + quantities.show(trestle(balance, moved, angle).centreHeight())
                        + " up"));
  }

  /** An angle, in degrees or as the height of one end of a board of known length. */
  private QuestionDefinition<Double> board(String key, String subject) {
    double board = quantities.system().isMetric() ? 1 : 36 * 0.0254;
    QuestionDefinition<Double> rise = quantities.length(key, subject);
    Function<Double, Reading<Double>> angle =
        up ->
            up > 0 && up < board
                ? Reading.understood(Math.asin(up / board), quantities.show(up))
                : Reading.refused(
                    quantities.show(up)
                        + " is no rise of such a board. Type how much higher one end is, such as "
                        + quantities.either("25 cm.", "9 in."));
    return QuestionDefinition.<Double>of(
            key,
            subject,
            quantities.system().isMetric() ? "m" : "inches",
            quantities.either(
                "a length such as 25 cm, or degrees such as 14 deg",
                "a length such as 9 in, or degrees such as 14 deg"),
            typed -> rise.read(typed).then(angle))
        .or(BalanceQuestions::degrees);
  }

  private static Optional<Reading<Double>> degrees(String typed) {
    Matcher degrees = DEGREES.matcher(typed.strip());
    return degrees.matches()
        ? Optional.of(angle(Double.parseDouble(degrees.group(1).replace(',', '.'))))
        : Optional.empty();
  }

  private static Reading<Double> angle(double degrees) {
    return degrees > 0 && degrees < 90
        ? Reading.understood(Math.toRadians(degrees), degrees + " deg")
        : Reading.refused("No hull balances so. Type an angle such as 14 deg.");
  }

  /**
   * Refuses a centre outside the hull and doubts one below that of the bare skin: everything that
   * is built in raises it.
   */
  private Optional<Warning> unlikely(double z) {
    Optional<Double> skinOnly = skin.skinCentre();
    if (!(z >= outline.lowest() && z <= outline.highest())) {
      return Optional.of(
          new Warning(
              "By that its centre would be %s up, outside the hull. Balance and tape it again."
                  .formatted(quantities.show(z)),
              Optional.empty(),
              false));
    }
    return skinOnly
        .filter(low -> z < low)
        .map(
            low ->
                new Warning(
                    "By that its centre is %s up, lower than that of its bare skin (%s)."
                            .formatted(quantities.show(z), quantities.show(low))
                        + " Balance and tape it again.",
                    Optional.empty(),
                    true));
  }
}
