package thwartwise.walk.questions;

import java.util.Optional;
import java.util.function.Function;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.measure.Reading;
import thwartwise.walk.engine.OrderedLengths;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.Replay;

/**
 * Questions for the limits of a chamber's box in terms of its place in the boat; a limit left out
 * reaches to the hull. A bow locker has three limits (bulkhead, bottom, top), a block all six.
 *
 * @param slips what the finished box must not be
 */
record LimitQuestions(
    Replay replay,
    QuantityQuestions quantities,
    Outline outline,
    String key,
    String subject,
    ChamberKind kind,
    Function<Box, Optional<String>> slips) {
  private static final String HULL = "hull";
  private static final String TO_THE_HULL = "to the hull";

  /**
   * Distances longer than this may be typed in feet with decimals, m; only along the boat do people
   * measure so.
   */
  private static final double LONG = 1.6;

  /**
   * The words of one limit.
   *
   * @param word what may be typed instead of a figure; empty where there has to be a figure
   */
  private record Limit(String name, String how, Optional<String> word) {
    private static Limit of(String name, String how) {
      return new Limit(name, how, Optional.empty());
    }

    private Limit or(String other) {
      return new Limit(name, how, Optional.of(other));
    }
  }

  Box box() {
    Span x = along();
    Span y = across();
    return up(x, y);
  }

  private Span along() {
    double[] within = {outline.aft(), outline.fore()};
    String taped = "Tape from the aft end, level, ";
    return switch (kind) {
      case BOW ->
          new Span(
              one(".x.from", Limit.of("its bulkhead", taped + "to the bulkhead's inside."), within),
              outline.fore());
      case STERN ->
          new Span(
              outline.aft(),
              one(".x.to", Limit.of("its bulkhead", taped + "to the bulkhead's inside."), within));
      case THWART ->
          span(
              ".x",
              Limit.of("its aft face", taped + "to the inside of the box, aft."),
              Limit.of("its fore face", taped + "to the inside of the box, forward."),
              within);
      case SIDE ->
          span(
              ".x",
              Limit.of("its aft end", taped + "to its inside; hull: it goes to the transom.")
                  .or(HULL),
              Limit.of("its fore end", taped + "to its inside; hull: it goes to the stem.")
                  .or(HULL),
              within);
      case BLOCK ->
          span(
              ".x",
              Limit.of("aft limit", taped + "to the bulkhead's inside.").or(HULL),
              Limit.of("fore limit", taped + "to the bulkhead's inside.").or(HULL),
              within);
    };
  }

  private Span across() {
    double beam = outline.halfBeam();
    return switch (kind) {
      case BOW, STERN, THWART -> Span.ALL;
      case SIDE ->
          new Span(
              one(
                  ".y.from",
                  Limit.of(
                      "its face, from the middle",
                      "From the middle line out to the inside of its upright face."),
                  new double[] {0, beam}),
              beam);
      case BLOCK -> {
        String how =
            "From the middle line, to port; starboard with a minus. Full width: hull twice.";
        yield span(
            ".y",
            Limit.of("starboard limit", how).or(HULL),
            Limit.of("port limit", how).or(HULL),
            new double[] {-beam, beam});
      }
    };
  }

  private Box up(Span x, Span y) {
    double[] within = {outline.lowest(), outline.highest()};
    Limit bottom =
        Limit.of(
                "down to",
                "Up from the baseline to the inside of its bottom; hull: it is the boat's own.")
            .or(HULL);
    QuestionDefinition<Optional<Double>> lower = limit(key + ".z.from", bottom, within);
    Optional<Double> from = replay.ask(lower);
    boolean mustLimit = from.isEmpty() && isUnlimited(x) && isUnlimited(y);
    QuestionDefinition<Optional<Double>> upper =
        limit(key + ".z.to", top(), within)
            .unless(end -> backward(from, end, within))
            .unless(end -> whole(mustLimit, end))
            .unless(end -> slips.apply(new Box(x, y, span(from, end, within))));
    return new Box(x, y, span(from, replay.ask(upper), within));
  }

  private Limit top() {
    return switch (kind) {
      case BOW ->
          Limit.of(
                  "underside of its top",
                  "Up from the baseline to the underside of deck or seat, where that is lowest.")
              .or("rail");
      case STERN, THWART, SIDE ->
          Limit.of(
                  "underside of its top",
                  "Up from the baseline to the underside of seat or deck, where that is lowest.")
              .or("rail");
      case BLOCK ->
          Limit.of("up to", "Up from the baseline to the underside of its top or lid.").or(HULL);
    };
  }

  private double one(String ofKey, Limit limit, double[] within) {
    return replay.ask(length(key + ofKey, limit, within));
  }

  private Span span(String ofKey, Limit first, Limit second, double[] within) {
    Optional<Double> from = replay.ask(limit(key + ofKey + ".from", first, within));
    Optional<Double> to =
        replay.ask(
            limit(key + ofKey + ".to", second, within).unless(end -> backward(from, end, within)));
    return span(from, to, within);
  }

  // A missing limit is filled in from the hull, because a boat file holds both limits or neither.
  private static Span span(Optional<Double> from, Optional<Double> to, double[] within) {
    return from.isEmpty() && to.isEmpty()
        ? Span.ALL
        : new Span(from.orElse(within[0]), to.orElse(within[1]));
  }

  private Optional<String> backward(Optional<Double> from, Optional<Double> to, double[] within) {
    return OrderedLengths.backward(
        subject, from.orElse(within[0]), to.orElse(within[1]), quantities);
  }

  private QuestionDefinition<Optional<Double>> limit(String ofKey, Limit limit, double[] within) {
    QuestionDefinition<Double> figure = length(ofKey, limit, within);
    return limit
        .word()
        .map(
            word ->
                figure
                    .orWord(word, word.equals(HULL) ? TO_THE_HULL : "up to the rails")
                    .or(typed -> hull(typed)))
        .orElseGet(() -> figure.optional("").withoutDefault());
  }

  /** Reads the word hull, which is also accepted where the prompt offers rail. */
  private static Optional<Reading<Optional<Double>>> hull(String typed) {
    return typed.strip().equalsIgnoreCase(HULL)
        ? Optional.of(Reading.understood(Optional.empty(), TO_THE_HULL))
        : Optional.empty();
  }

  private QuestionDefinition<Double> length(String ofKey, Limit limit, double[] within) {
    return quantities
        .length(ofKey, subject + ", " + limit.name())
        .unlessAmbiguous(
            within[1] > LONG
                ? quantities.feetOrInches(within[0], within[1])
                : x -> Optional.empty())
        .how(
            limit.word().filter(word -> !word.equals(HULL)).isPresent()
                ? new String[] {limit.how(), "rail: a deck from rail to rail closes it at the top."}
                : new String[] {limit.how()})
        .show(kind.sketch())
        .why(
            kind == ChamberKind.BLOCK
                ? "The chamber is what lies inside the hull between its limits; hull: no limit."
                : "The chamber is what lies inside the hull up to there.")
        .within(quantities.length(within[0], within[1], "hull in that direction"));
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
