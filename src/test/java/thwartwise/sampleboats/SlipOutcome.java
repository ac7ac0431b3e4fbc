package thwartwise.sampleboats;

/** What became of a slip. */
enum SlipOutcome {
  /** Refused with a message, or doubted so that nothing is recommended. */
  CAUGHT,
  LOWERED,
  UNCHANGED,
  /** More people, more kilograms of them or more load, and not a word. */
  RAISED
}
