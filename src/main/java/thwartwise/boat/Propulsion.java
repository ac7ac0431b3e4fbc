package thwartwise.boat;

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
}
