package thwartwise.walk.questions;

import java.util.Optional;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.walk.engine.Entry;
import thwartwise.walk.engine.OrderedLengths;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Tape;

/** The six limits of a chamber's box; one left out reaches to the hull. */
record LimitQuestions(Replay replay, Tape tape, Outline outline, String key, String subject) {
  private static final String TO_THE_HULL = "to the hull";

  /** Only along the boat do people count in feet with decimals, m. */
  private static final double LONG = 1.6;

  Box box() {
    Span x = along();
    Span y = across();
    return new Box(x, y, up(isUnlimited(x) && isUnlimited(y)));
  }

  private Span along() {
    double aft = outline.aft();
    double fore = outline.fore();
    return span(
        key + ".x",
        new String[] {"aft limit", "fore limit"},
        "Tape from the aft end, level, to the bulkhead's inside.",
        new double[] {aft, fore},
        false);
  }

  private Span across() {
    double beam = outline.halfBeam();
    return span(
        key + ".y",
        new String[] {"starboard limit", "port limit"},
        "From the middle line, to port; starboard with a minus. Full width: hull twice.",
        new double[] {-beam, beam},
        false);
  }

  private Span up(boolean mustLimit) {
    return span(
        key + ".z",
        new String[] {"lower limit", "upper limit"},
        "Up from the baseline to the inside of its bottom and of its lid.",
        new double[] {outline.lowest(), outline.highest()},
        mustLimit);
  }

  private Span span(
      String spanKey, String[] names, String how, double[] within, boolean mustLimit) {
    Optional<Double> from = replay.ask(limit(spanKey + ".from", names[0], how, within));
    double least = from.orElse(within[0]);
    Optional<Double> to =
        replay.ask(
            limit(spanKey + ".to", names[1], how, within)
                .unless(end -> OrderedLengths.backward(subject, least, end.orElse(within[1]), tape))
                .unless(end -> whole(mustLimit && from.isEmpty(), end)));
    // The hull's own bounds stand in for one limit left out: a boat file knows both or neither.
    return from.isEmpty() && to.isEmpty() ? Span.ALL : new Span(least, to.orElse(within[1]));
  }

  private Entry<Optional<Double>> limit(String limitKey, String name, String how, double[] within) {
    return tape.length(limitKey, subject + ", " + name)
        .unlessUnclear(
            within[1] > LONG ? tape.feetOrInches(within[0], within[1]) : x -> Optional.empty())
        .how(how)
        .show(Sketches.BOX)
        .why("The chamber is what lies inside the hull between its limits; hull: no limit.")
        .within(tape.length(within[0], within[1], "hull in that direction"))
        .orWord("hull", TO_THE_HULL);
  }

  private Optional<String> whole(boolean mustLimit, Optional<Double> end) {
    return mustLimit && end.isEmpty()
        ? Optional.of(
            subject
                + ": without any limit it would be the whole inside of the boat."
                + " Type a height here, or go back and give another limit.")
        : Optional.empty();
  }

  private static boolean isUnlimited(Span span) {
    return span.equals(Span.ALL);
  }
}
