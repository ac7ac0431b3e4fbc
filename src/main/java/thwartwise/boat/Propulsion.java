package thwartwise.boat;

import java.util.Optional;

/** The drive of the boat, as far as the published formulas need it. */
public sealed interface Propulsion {

  /** Not stated; taken as rowed or paddled, and reported as an assumption. */
  record NotStated() implements Propulsion {}

  /** Oars or paddles only. */
  record Manual() implements Propulsion {}

  /** A motor on the transom, petrol or electric; its power in watts. */
  record Outboard(double power) implements Propulsion {}

  /** Sails are set, which the program does not cover. */
  record Sail() implements Propulsion {}

  /** It tows or is towed faster than a walk, which the program does not cover. */
  record Tow() implements Propulsion {}

  /** The drive; empty where nobody stated it. */
  default Optional<Kind> kind() {
    if (this instanceof Outboard) {
      return Optional.of(Kind.OUTBOARD);
    }
    if (this instanceof Manual) {
      return Optional.of(Kind.MANUAL);
    }
    if (this instanceof Sail) {
      return Optional.of(Kind.SAIL);
    }
    return this instanceof Tow ? Optional.of(Kind.TOW) : Optional.empty();
  }

  /** The power of the motor, W; empty without one. */
  default Optional<Double> watts() {
    return this instanceof Outboard motor ? Optional.of(motor.power()) : Optional.empty();
  }

  /** The values in a file. */
  enum Kind {
    MANUAL("manual"),
    OUTBOARD("outboard"),
    SAIL("sail"),
    TOW("tow");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }
}
