package thwartwise.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import thwartwise.walk.engine.Question;

/**
 * Answers that lead through every part of the walk for a boat that nobody knows yet. The sheet
 * shows the questions and never these answers. A new question that is not named here gets a usual
 * answer.
 */
final class SheetTemplate {
  /** Names of things that are never printed. */
  static final List<String> NAMES = List.of("first thing", "second thing", "third thing");

  private static final String LINES =
      """
      way                          | own
      name                         | boat
      units                        | metric
      water                        | fresh
      propulsion                   | outboard
      propulsion.power             | 500 W
      hull.material                | plywood
      hull.thickness               | 6 mm
      hull.length                  | 3.6 m
      hull.stations                | 3
      hull.alike                   | yes
      hull.station.1.upright       | no
      hull.station.1.point.\\d+.x  | 0 m
      hull.station.2.upright       | yes
      hull.station.2.x             | 1.8 m
      hull.station.3.upright       | no
      hull.station.3.x             | 3.6 m
      hull.station.3.point.\\d+.x  | 3.6 m
      hull.weighed                 | total
      hull.mass                    | 70 kg
      hull.scale.aft.x             | 0.5 m
      hull.scale.fore.x            | 3 m
      hull.scale.(aft|fore).mass   | 35 kg
      hull.centre                  | yes
      hull.centre.x                | 1.7 m
      hull.centre.z                | 0.2 m
      hull.tilt.x                  | 1.65 m
      hull.tilt.rise               | 0.45 m
      hull.floor                   | 0.03 m
      hull.decked.1.any            | yes
      hull.decked.1.from           | 3 m
      hull.decked.1.to             | 3.6 m
      opening.[1-4].any            | yes
      opening.1.kind               | notch
      opening.2.kind               | oar notch
      opening.3.kind               | drain
      opening.4.kind               | other
      opening.\\d+.into            | boat
      opening.4.name               | opening
      opening.3.x                  | transom
      opening.2.x                  | 1.8 m
      opening.\\d+.[xy]            | 0 m
      opening.\\d+.z               | 0.05 m
      opening.\\d+.diameter        | 22 mm
      opening.\\d+.width           | 0.3 m
      opening.\\d+.closedBy        | no
      chamber.[12].any             | yes
      chamber.1.kind               | block
      chamber.2.kind               | side
      chamber.2.side               | port
      chamber.2.y.from             | 0.3 m
      chamber.1.name               | first thing
      chamber.2.name               | second thing
      chamber.1.x.from             | 3 m
      chamber.2.x.from             | 0 m
      chamber.2.x.to               | 0.3 m
      chamber.\\d+.[xyz].(from|to) | hull
      chamber.1.filling            | air
      chamber.2.filling            | foam
      chamber.\\d+.seal            | proven
      chamber.\\d+.test.minutes    | 20
      chamber.\\d+.test.litresIn   | 0.5
      chamber.\\\\d+.test.head       | 0.3 m
      chamber.1.litres             | 30
      place.[123].any              | yes
      place.1.name                 | first thing
      place.2.name                 | second thing
      place.3.name                 | third thing
      place.1.lies                 | across
      place.2.lies                 | port
      place.3.lies                 | area
      place.\\d+.x                 | 1.8 m
      place.\\d+.x.from            | 1.5 m
      place.\\d+.x.to              | 2 m
      place.3.z                    | 0.05 m
      place.\\d+.z                 | 0.25 m
      place.\\d+.halfWidth         | 0.3 m
      place.\\d+.y.in              | 0.3 m
      place.\\d+.y.out             | 0.4 m
      kit.[123].any                | yes
      kit.1.name                   | battery
      kit.2.name                   | motor
      kit.3.name                   | solar panel
      kit.\\d+.mass                | 5 kg
      kit.\\d+.x                   | 1.8 m
      kit.\\d+.y                   | 0 m
      kit.\\d+.z                   | 0.1 m
      kit.\\d+.in                  | none
      outfit.[1-4].any             | yes
      outfit.1.what                | rowlocks
      outfit.1.pins                | 1.2 m
      outfit.2.what                | cleat
      outfit.2.name                | cleat
      outfit.2.x                   | 3 m
      outfit.2.y                   | 0 m
      outfit.2.z                   | 0.3 m
      outfit.3.what                | anchor
      outfit.3.line                | 20 m
      outfit.3.depth               | 3 m
      outfit.4.what                | leak
      outfit.4.seam                | keel
      outfit.4.litres              | 3
      outfit.4.minutes             | 30
      electrics.any                | yes
      electrics.battery.ampHours   | 80
      electrics.motor.electric     | yes
      electrics.panel.watts        | 50
      electrics.(run|circuit).1.any | yes
      electrics.run.1.setting      | 3
      electrics.run.1.metres       | 200 m
      electrics.run.1.seconds.*    | 200
      electrics.circuit.1.use      | other
      electrics.circuit.1.name     | pump
      electrics.circuit.1.there    | 2 m
      electrics.circuit.1.fuse     | 5
      person.1.any                 | yes
      person.\\d+.name             | person
      person.\\d+.mass             | 80 kg
      person.\\d+.place            | second thing
      measuredHow(\\.other\\.1)?\\.any | yes
      measuredHow.other.1.kind     | half-breadths
      measuredHow.other.1.how      | guess
      .*\\.\\d+\\.any              | no
      waters.sheltered             | no
      waters\\..*                  | sheltered
      """;

  private static final List<String> USUAL =
      List.of("no", "1", "0.3", "0", "2", "10", "100", "sheltered", "today", "some");

  private final Map<Pattern, String> answers = new LinkedHashMap<>();

  SheetTemplate(Map<String, String> first) {
    first.forEach((key, typed) -> answers.put(Pattern.compile(key), typed));
    LINES
        .lines()
        .map(line -> line.split("\\|(?=[^|]*$)"))
        .forEach(cells -> answers.put(Pattern.compile(cells[0].strip()), cells[1].strip()));
    section("hull.station.1", 0.05, 0.5);
    section("hull.station.2", 0, 0.6);
    section("hull.station.3", 0.2, 0.05);
  }

  /** A simple section: a flat bottom at some height, and a side to a rail somewhat farther out. */
  private void section(String station, double bottom, double half) {
    for (int point = 1; point <= 12; point++) {
      String key = station + ".point." + point;
      answers.put(Pattern.compile(key + ".y"), half + (point - 2) * 0.01 + " m");
      answers.put(Pattern.compile(key + ".z"), bottom + (point - 1) * 0.03 + " m");
    }
  }

  /** Usual answers to try, the likeliest first. */
  List<String> candidates(Question question) {
    Stream<String> named =
        answers.entrySet().stream()
            .filter(a -> a.getKey().matcher(question.key()).matches())
            .limit(1)
            .map(Map.Entry::getValue);
    List<String> tried = new ArrayList<>(named.toList());
    question.skipped().ifPresent(taken -> tried.add(""));
    tried.addAll(question.choices());
    tried.addAll(USUAL);
    return tried;
  }
}
