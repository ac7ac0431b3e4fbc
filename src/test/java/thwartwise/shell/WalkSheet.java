package thwartwise.shell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import thwartwise.boat.Boat;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.walk.PreviousBoats;
import thwartwise.walk.Walk;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

/**
 * What somebody noted down about a small pram and types at the walk, question by question: a line
 * {@code key | metric | feet}; a missing third column is typed in both.
 */
final class WalkSheet {
  static final String NOTED =
      """
      name                     | Bath Mat
      measuredBy               | Ann Lee
      units                    | metric       | feet
      water                    | fresh
      propulsion               | manual
      hull.material            | plywood
      hull.length              | 2.4384       | 8'
      hull.stations            | 3
      hull.points              | 3
      hull.alike               | yes
      hull.station.1.upright   | yes
      hull.station.3.upright   | yes
      hull.station.1.point.1.z | 0.0635       | 2 1/2
      hull.station.1.point.2.y | 0.4064       | 16
      hull.station.1.point.2.z | 0.0762       | 3
      hull.station.1.point.3.y | 0.5207       | 20.5
      hull.station.1.point.3.z | 0.4445       | 17 1/2
      hull.station.2.x         | 1.2192       | 4'
      hull.station.2.point.1.z | 0
      hull.station.2.point.2.y | 0.4826       | 19
      hull.station.2.point.2.z | 0.0254       | 1
      hull.station.2.point.3.y | 0.6096       | 2'
      hull.station.2.point.3.z | 0.4191       | 1' 4 1/2"
      hull.station.3.x         | 2.4384       | 8 ft
      hull.station.3.point.1.z | 0.1016       | 4
      hull.station.3.point.2.y | 0.2286       | 9
      hull.station.3.point.2.z | 0.127        | 5
      hull.station.3.point.3.y | 0.3302       | 13
      hull.station.3.point.3.z | 0.508        | 20
      hull.mass                | 29.48350405  | 65
      hull.centre              | no
      hull.floor               | 0.0254       | 1
      hull.decked.1.any        | no
      opening.1.any            | no
      chamber.1.any            | no
      place.1.name             | thwart
      place.1.lies             | across
      place.1.x                | 1.2192       | 48
      place.1.z                | 0.254        | 10
      place.1.halfWidth        | 0.4064       | 16
      place.1.people           | 1
      place.2.any              | no
      kit.1.any                | no
      bailer                   | 5
      person.1.any             | no
      waters.sheltered         | yes
      whenSwamped              | sit in it
      """;

  /**
   * The same of a boat under sail, for which nothing is worked out and which is so read fastest.
   */
  static WalkSheet underSail() {
    WalkSheet sheet = new WalkSheet();
    sheet.noted.put("propulsion", "sail");
    return sheet;
  }

  /** What the walk asks, and what is typed there. */
  record Turn(String prompt, String typed) {}

  private final Map<String, String> noted = new HashMap<>();

  WalkSheet() {
    this(true);
  }

  WalkSheet(boolean metric) {
    for (String line : NOTED.split("\n")) {
      String[] cells = line.split("\\|");
      noted.put(cells[0].strip(), cells[metric ? 1 : cells.length - 1].strip());
    }
  }

  /** The same with something else at one question. */
  WalkSheet with(String key, String other) {
    noted.put(key, other);
    return this;
  }

  /** Every question with its answer, first to last; a question not noted is left at Enter. */
  List<Turn> turns() {
    Walk walk =
        Walk.on(LocalDate.of(2026, 6, 1), PreviousBoats.NONE, RuleSetFile.cautiousDefault());
    List<Turn> turns = new ArrayList<>();
    List<Answer> answers = List.of();
    while (walk.next(answers) instanceof Step.Ask ask) {
      String typed = noted.getOrDefault(ask.question().key(), "");
      turns.add(new Turn(ask.question().prompt(), typed));
      answers = ((Reply.Accepted) walk.take(answers, typed)).answers();
    }
    return turns;
  }

  Boat boat() {
    Walk walk =
        Walk.on(LocalDate.of(2026, 6, 1), PreviousBoats.NONE, RuleSetFile.cautiousDefault());
    List<Answer> answers = List.of();
    while (walk.next(answers) instanceof Step.Ask ask) {
      String typed = noted.getOrDefault(ask.question().key(), "");
      answers = ((Reply.Accepted) walk.take(answers, typed)).answers();
    }
    return ((Step.Done) walk.next(answers)).boat();
  }

  String[] lines() {
    return turns().stream().map(Turn::typed).toArray(String[]::new);
  }

  String[] firstLines(int count) {
    return turns().stream().limit(count).map(Turn::typed).toArray(String[]::new);
  }

  /** What is typed before the question of which the prompt begins so. */
  String[] linesBefore(String prompt) {
    return turns().stream()
        .takeWhile(turn -> !turn.prompt().startsWith(prompt))
        .map(Turn::typed)
        .toArray(String[]::new);
  }

  String[] linesFrom(int first) {
    return turns().stream().skip(first).map(Turn::typed).toArray(String[]::new);
  }
}
