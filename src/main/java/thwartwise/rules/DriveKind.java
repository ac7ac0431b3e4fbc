package thwartwise.rules;

import thwartwise.boat.Propulsion;

/** How a boat is driven, as far as rule sets ask; rowed where nobody stated it. */
public enum DriveKind {
  MANUAL("manual", "rowed or paddled"),
  OUTBOARD("outboard", "driven by an outboard"),
  SAIL("sail", "under sail"),
  TOW("tow", "towing or towed");

  private final String word;
  private final String told;

  DriveKind(String word, String told) {
    this.word = word;
    this.told = told;
  }

  public String word() {
    return word;
  }

  String words() {
    return told;
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
