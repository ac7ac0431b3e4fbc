package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.MeasurementKind;
import thwartwise.boat.MeasuringMethod;
import thwartwise.boat.MeasuringWay;
import thwartwise.boat.MethodEvidence;
import thwartwise.measure.ChoiceReader;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitSystem;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.report.MethodWords;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/**
 * Questions for the methods of measuring: one gate question, then one for each kind that was
 * measured on this boat, then single things that were measured by another method. Enter leaves a
 * kind unstated, and it counts as badly measured as the limits allow for.
 */
public record MethodQuestions(Replay replay, PlausibleLimits limits, UnitSystem units) {
  private static final String KEY = "measuredHow";
  private static final String NOT_SAID = "not said";
  private static final String AS_THE_REST = "as the rest";

  /**
   * One thing with another method than its kind.
   *
   * @param way empty for the method of its kind
   */
  private record SingleThing(MeasurementKind kind, String name, Optional<MeasuringWay> way) {}

  /** The boat with its methods, in the full walk, once everything is measured. */
  public Boat asked(Boat boat) {
    boolean said =
        replay.ask(
            WordQuestions.yesNo(KEY + RepeatedQuestion.ANY, "Say how things were measured?")
                .how(
                    "yes: by tape, scales or jug, kind by kind, a few words each. What was taken",
                    "with care counts as more exact, and a guess as less.")
                .why("Not said, each counts as badly measured as the limits allow for.")
                .orElse(false, "no"));
    return said ? with(KEY, boat, kinds(boat)) : boat;
  }

  /** The same in the walk of changes, with the earlier answers in the prompts. */
  public Boat changed(String key, Boat boat) {
    return with(key + "." + KEY, boat, new MethodEvidence(boat).kinds());
  }

  /** The kinds to ask about. A kind with a guess among its answers is marked as such. */
  private List<MeasurementKind> kinds(Boat boat) {
    return new MethodEvidence(boat)
        .kinds().stream()
            .filter(kind -> !replay.isGuessed(key -> key.matches(answers(kind))))
            .toList();
  }

  /** The keys of the answers in which the measurements of a kind are given. */
  private static String answers(MeasurementKind kind) {
    return switch (kind) {
      case HALF_BREADTHS -> "hull\\.station\\..*\\.y";
      case BOTTOM_HEIGHTS -> "hull\\.station\\..*\\.z";
      case EDGE_HEIGHTS -> "(hull\\.station\\..*|opening\\.\\d+)\\.z";
      case SHELL_THICKNESS -> "hull\\.thickness";
      case SOAKED_DENSITY -> "hull\\.density";
      case HULL_WEIGHT -> "hull\\.(mass|scale\\..*\\.mass)";
      case HULL_BALANCE -> "hull\\.(centre|scale\\..*)\\.x";
      case HULL_INCLINED -> "hull\\.(centre\\.z|tilt\\..*)";
      case CHAMBER_LITRES -> "chamber\\.\\d+\\.(twin\\.)?litres";
      case SEAT_HEIGHTS -> "place\\.\\d+\\.z";
      case PEOPLE_WEIGHTS -> "person\\.\\d+\\.mass";
      // Each piece of kit has a method of its own, because a guess concerns that piece alone.
      case KIT_WEIGHTS -> "";
    };
  }

  private Boat with(String key, Boat boat, List<MeasurementKind> kinds) {
    List<MeasuringMethod> said = new ArrayList<>(boat.methods());
    for (MeasurementKind kind : kinds) {
      replace(
          said,
          kind,
          Optional.empty(),
          replay.ask(ofKind(key + "." + kind.word(), kind, boat.methods())));
    }
    Boat known = boat.withMethods(said);
    for (SingleThing other : others(key, known, kinds)) {
      replace(said, other.kind(), Optional.of(other.name()), other.way());
    }
    return boat.withMethods(said);
  }

  private static void replace(
      List<MeasuringMethod> said,
      MeasurementKind kind,
      Optional<String> item,
      Optional<MeasuringWay> way) {
    said.removeIf(before -> before.kind() == kind && before.item().equals(item));
    way.map(w -> new MeasuringMethod(kind, item, w)).ifPresent(said::add);
  }

  private QuestionDefinition<Optional<MeasuringWay>> ofKind(
      String key, MeasurementKind kind, List<MeasuringMethod> before) {
    Optional<MeasuringWay> kept = MeasuringMethod.lastWay(before, kind, Optional.empty());
    ChoiceReader<Optional<MeasuringWay>> choices =
        ChoiceReader.of(Optional.empty(), NOT_SAID, "no", "unsaid", "none");
    return WordQuestions.choice(key, subject(kind), ways(kind, choices))
        .how(how(kind), "usual value: not measured, taken as it usually is. guess: just that.")
        .why("The ranges of the answer, and what to measure again, follow from it.")
        .ifUnknown(Optional.empty(), NOT_SAID)
        .orElse(kept, kept.map(MeasuringWay::word).orElse(NOT_SAID))
        .remark(way -> way.map(this::accuracy));
  }

  private static ChoiceReader<Optional<MeasuringWay>> ways(
      MeasurementKind kind, ChoiceReader<Optional<MeasuringWay>> first) {
    ChoiceReader<Optional<MeasuringWay>> choices = first;
    for (MeasuringWay way : kind.ways()) {
      choices = choices.or(Optional.of(way), way.word());
    }
    return choices;
  }

  /** The words for the accuracy of a method. */
  private String accuracy(MeasuringWay way) {
    return MethodWords.accuracy(way, limits.rules().value(way.limit()), new UnitFormat(units));
  }

  private List<SingleThing> others(String key, Boat boat, List<MeasurementKind> kinds) {
    MethodEvidence evidence = new MethodEvidence(boat);
    List<MeasurementKind> named =
        kinds.stream().filter(kind -> !evidence.measuredNames(kind).isEmpty()).toList();
    if (named.isEmpty()) {
      return List.of();
    }
    List<String> kept =
        MethodWords.of(boat.methods().stream().filter(m -> m.item().isPresent()).toList());
    return new RepeatedQuestion(
            replay,
            key + ".other",
            "thing measured otherwise",
            "Anything measured otherwise than its kind?")
        .inRows("Otherwise", "kind", "name", "how")
        .orNone(
            entry ->
                entry
                    .how(otherwise(kept))
                    .why("One guess among things that were weighed is not hidden by them.")
                    .orElse(false, "no"),
            (at, before) -> other(at, boat, named));
  }

  private static String[] otherwise(List<String> kept) {
    List<String> lines = new ArrayList<>();
    if (!kept.isEmpty()) {
      lines.addAll(Question.wrapped("So far: " + String.join("; ", kept) + "."));
    }
    lines.add("On one line each: kind; name; how. Such as: kit weights; battery; guess.");
    return lines.toArray(String[]::new);
  }

  private SingleThing other(String key, Boat boat, List<MeasurementKind> kinds) {
    MeasurementKind kind = replay.ask(whichKind(key, kinds));
    String name =
        replay.ask(
            WordQuestions.oneOf(
                    key + ".name", "Otherwise, name", new MethodEvidence(boat).measuredNames(kind))
                .how("Its name, or a beginning of it.")
                .why("The others of its kind stay as they were said."));
    return new SingleThing(kind, name, replay.ask(ofThing(key, boat, kind, name)));
  }

  private static QuestionDefinition<MeasurementKind> whichKind(
      String key, List<MeasurementKind> kinds) {
    ChoiceReader<MeasurementKind> choices = ChoiceReader.of(kinds.get(0), kinds.get(0).word());
    for (MeasurementKind kind : kinds.subList(1, kinds.size())) {
      choices = choices.or(kind, kind.word());
    }
    return WordQuestions.choice(key + ".kind", "Otherwise, of which kind", choices)
        .how("What it was measured for, or a beginning of it.")
        .why("One station can have good half-breadths and poor heights.");
  }

  private QuestionDefinition<Optional<MeasuringWay>> ofThing(
      String key, Boat boat, MeasurementKind kind, String name) {
    Optional<MeasuringWay> kept = MeasuringMethod.lastWay(boat.methods(), kind, Optional.of(name));
    QuestionDefinition<Optional<MeasuringWay>> asked =
        WordQuestions.choice(
                key + ".how",
                "Otherwise, how",
                ways(kind, ChoiceReader.of(Optional.empty(), AS_THE_REST, "rest")))
            .how(how(kind), "as the rest: nothing is said of it by itself.")
            .why("The ranges of the answer follow from it.")
            .remark(way -> way.map(this::accuracy));
    return kept.map(way -> asked.orElse(kept, way.word())).orElse(asked);
  }

  private static String subject(MeasurementKind kind) {
    return switch (kind) {
      case HALF_BREADTHS -> "Half-breadths, how measured";
      case BOTTOM_HEIGHTS -> "Heights of the bottom, how measured";
      case EDGE_HEIGHTS -> "Heights of rail and openings, how measured";
      case SHELL_THICKNESS -> "Thickness of the shell, how measured";
      case SOAKED_DENSITY -> "Soaked density, how found";
      case HULL_WEIGHT -> "Bare hull, how weighed";
      case HULL_BALANCE -> "Balance point, how found";
      case HULL_INCLINED -> "Height of the hull's centre, how found";
      case CHAMBER_LITRES -> "Litres of chambers, how measured";
      case SEAT_HEIGHTS -> "Heights of seats, how measured";
      case KIT_WEIGHTS -> "Kit, how weighed";
      case PEOPLE_WEIGHTS -> "People, how weighed";
    };
  }

  private static String how(MeasurementKind kind) {
    return switch (kind) {
      case HALF_BREADTHS -> "steel tape: straight out to a flat side. tape round a curve: bent.";
      case BOTTOM_HEIGHTS, EDGE_HEIGHTS ->
          "taut line: straight up or down from a level line. tape round a curve: bent.";
      case SHELL_THICKNESS -> "callipers: at a cut edge, to tenths of a millimetre.";
      case SOAKED_DENSITY -> "soaked offcut: one kept under water, weighed and measured.";
      case HULL_WEIGHT, KIT_WEIGHTS ->
          "bathroom scales: on hard ground. luggage scale: hung from a hook.";
      case HULL_BALANCE -> "roller: rolled over a pipe or trestle until it tipped.";
      case HULL_INCLINED -> "inclined afloat: a known weight was moved across and the heel read.";
      case CHAMBER_LITRES -> "jug: filled by the litre and counted.";
      case SEAT_HEIGHTS -> "steel tape: up from the bottom. taut line: from a level line.";
      case PEOPLE_WEIGHTS -> "bathroom scales: on hard ground, dressed as they go.";
    };
  }
}
