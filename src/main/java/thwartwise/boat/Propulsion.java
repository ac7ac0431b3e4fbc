package thwartwise.boat;

import java.util.Optional;

/** How the boat is driven, as far as the published formulas ask. */
public sealed interface Propulsion {

  /** Nobody said; taken as rowed or paddled, and said to be taken so. */
  record NotStated() implements Propulsion {}

  /** Oars or paddles only. */
  record Manual() implements Propulsion {}

  /** A motor on the transom, petrol or electric; its power in watts. */
  record Outboard(double power) implements Propulsion {}

  /** Sails are set; outside what is worked out here. */
  record Sail() implements Propulsion {}

  /** It tows or is towed faster than a walk; outside what is worked out here. */
  record Tow() implements Propulsion {}

  /** Empty where nobody said. */
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

  /** What a file may say. */
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
