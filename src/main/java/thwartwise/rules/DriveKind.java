package thwartwise.rules;

import thwartwise.boat.Propulsion;

/** How a boat is driven, as far as rule sets ask; rowed where nobody stated it. */
public enum DriveKind {
  MANUAL("manual"),
  OUTBOARD("outboard"),
  SAIL("sail"),
  TOW("tow");

  private final String word;

  DriveKind(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  static DriveKind of(Propulsion propulsion) {
    if (propulsion instanceof Propulsion.Sail) {
      return SAIL;
    }
    if (propulsion instanceof Propulsion.Tow) {
      return TOW;
    }
    return propulsion instanceof Propulsion.Outboard ? OUTBOARD : MANUAL;
  }

  /** Watts; none when there is no motor. */
  static double power(Propulsion propulsion) {
    return propulsion instanceof Propulsion.Outboard motor ? motor.power() : 0;
  }
}
