package thwartwise.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.measure.UnitSystem;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

/**
 * How many lines and keystrokes a walk takes of whoever types the figures of a sheet. The table is
 * a {@code main}.
 */
final class CountedWalks {
  private CountedWalks() {}

  /**
   * @param lines typed, each ended with Enter
   * @param keys with Enter
   */
  record Count(int lines, int keys) {}

  public static void main(String[] arguments) {
    System.out.printf("%-44s %6s %6s %6s %6s%n", "", "lines", "keys", "in rows", "keys");
    print("demo boat, in metres", Sheet.WALK, demo());
    print("15 ft 8 in, three chambers, in feet", Sheet.WALK, longBench());
    print("borrowed", Sheet.WALK, Sheet.borrowed(true));
    print("borrowed and tried", Sheet.WALK, Sheet.borrowedAndTried());
    Boat boat = longBench().boat().in(UnitSystem.FEET_INCHES_POUNDS);
    Walk knowing = Sheet.walk(Sheet.TODAY, new PreviousBoats(List.of(boat)));
    print("refit: a battery more, weighed again", knowing, new Sheet(REFIT));
  }

  static Sheet demo() {
    return sheet(DEMO, 1);
  }

  static Sheet longBench() {
    return sheet(LONG_BENCH, 2);
  }

  private static void print(String what, Walk walk, Sheet sheet) {
    Count one = one(walk, sheet);
    Count rows = rows(walk, sheet);
    System.out.printf(
        "%-44s %6d %6d %6d %6d%n", what, one.lines(), one.keys(), rows.lines(), rows.keys());
  }

  private static Sheet sheet(String lines, int column) {
    return Sheet.of(lines, column);
  }

  /** One value a line; its name says that there is another thing. */
  static Count one(Walk walk, Sheet sheet) {
    return counted(walk, sheet, 1);
  }

  /** A row wherever the prompt asks for one. */
  static Count rows(Walk walk, Sheet sheet) {
    return counted(walk, sheet, Integer.MAX_VALUE);
  }

  /** The answers that come of a row are those typed one by one. */
  private static Count counted(Walk walk, Sheet sheet, int values) {
    List<Answer> answers = List.of();
    int lines = 0;
    int keys = 0;
    while (walk.next(answers) instanceof Step.Ask ask) {
      Row row = Row.at(walk, sheet, answers, ask.question(), values);
      Reply reply = walk.take(answers, row.typed());
      if (!(reply instanceof Reply.Accepted accepted)
          || !accepted.answers().equals(row.answers())) {
        throw new AssertionError(ask.question().prompt() + " " + row.typed() + ": " + reply);
      }
      answers = accepted.answers();
      lines++;
      keys += row.typed().length() + 1;
    }
    return new Count(lines, keys);
  }

  /** What can be typed at once, and the answers it stands for. */
  record Row(String typed, List<Answer> answers) {
    static Row at(Walk walk, Sheet sheet, List<Answer> before, Question first, int values) {
      List<String> typed = new ArrayList<>();
      List<Answer> answers = before;
      Optional<AnswerGroup> group =
          first.row().isPresent() ? AnswerGroup.of(first.key()) : Optional.empty();
      Question open = first;
      do {
        String value = sheet.at(open);
        answers = ((Reply.Accepted) walk.take(answers, value)).answers();
        boolean implied =
            group.isPresent()
                && (open.key().endsWith(".any") && value.equals("yes")
                    || open.key().matches("hull.station.*name") && value.isEmpty());
        if (!implied) {
          typed.add(value);
        }
        open = walk.next(answers) instanceof Step.Ask ask ? ask.question() : first;
      } while (typed.size() < values && goesOn(group, first, open, typed.isEmpty()));
      return new Row(String.join(";", typed), answers);
    }

    /** As far as the prompt tells: the next question asks for no row of its own, but the first. */
    private static boolean goesOn(
        Optional<AnswerGroup> group, Question first, Question open, boolean begins) {
      return open != first
          && group.filter(g -> g.holds(open.key())).isPresent()
          && (begins || open.row().isEmpty());
    }
  }

  static final Map<String, String> REFIT =
      Map.ofEntries(
          Map.entry("way", "changed"),
          Map.entry("changed.boat", "Long Bench"),
          Map.entry("units", "feet"),
          Map.entry("changed.1", "added"),
          Map.entry("changed.1.name", "battery 2"),
          Map.entry("changed.1.mass", "42 lb"),
          Map.entry("changed.1.x", "2' 6\""),
          Map.entry("changed.1.y", "0\""),
          Map.entry("changed.1.z", "5\""),
          Map.entry("changed.1.fastened", "yes"),
          Map.entry("changed.1.in", "none"),
          Map.entry("changed.2", "weight"),
          Map.entry("changed.2.mass", "221 lb"));

  static final String DEMO =
      """
      name                     | Custard Tart
      measuredBy               | Imelda Quarrie and her brother
      units                    | metric
      water                    | fresh
      propulsion               | outboard
      propulsion.power         | 0.5
      hull.material            | plywood
      hull.thickness           | 6 mm
      hull.length              | 4.02
      hull.stations            | 5
      hull.points              | 3
      hull.alike               | yes
      hull.station.1.name      | transom
      hull.station.1.upright   | no
      hull.station.1.point.1.x | 0.06
      hull.station.1.point.1.z | 0.09
      hull.station.1.point.2.x | 0.06
      hull.station.1.point.2.y | 0.5
      hull.station.1.point.2.z | 0.09
      hull.station.1.point.3.x | 0.0
      hull.station.1.point.3.y | 0.62
      hull.station.1.point.3.z | 0.48
      hull.station.2.name      | quarter
      hull.station.2.upright   | yes
      hull.station.2.x         | 1.06
      hull.station.2.point.1.z | 0.02
      hull.station.2.point.2.y | 0.58
      hull.station.2.point.2.z | 0.02
      hull.station.2.point.3.y | 0.73
      hull.station.2.point.3.z | 0.46
      hull.station.3.name      | middle
      hull.station.3.upright   | yes
      hull.station.3.x         | 2.06
      hull.station.3.point.1.z | 0.0
      hull.station.3.point.2.y | 0.57
      hull.station.3.point.2.z | 0.0
      hull.station.3.point.3.y | 0.74
      hull.station.3.point.3.z | 0.47
      hull.station.4.name      | shoulder
      hull.station.4.upright   | yes
      hull.station.4.x         | 3.11
      hull.station.4.point.1.z | 0.06
      hull.station.4.point.2.y | 0.38
      hull.station.4.point.2.z | 0.06
      hull.station.4.point.3.y | 0.57
      hull.station.4.point.3.z | 0.53
      hull.station.5.name      | stem
      hull.station.5.upright   | no
      hull.station.5.point.1.x | 3.84
      hull.station.5.point.1.z | 0.22
      hull.station.5.point.2.x | 3.86
      hull.station.5.point.2.y | 0.03
      hull.station.5.point.2.z | 0.24
      hull.station.5.point.3.x | 4.02
      hull.station.5.point.3.y | 0.05
      hull.station.5.point.3.z | 0.64
      hull.mass                | 68
      hull.centre              | no
      hull.floor               | 0.03
      hull.decked.1.any        | yes
      hull.decked.1.from       | 3.21
      hull.decked.1.to         | 4.02
      opening.1.any            | yes
      opening.1.kind           | notch
      opening.1.name           | motor notch in the transom
      opening.1.y              | 0.0
      opening.1.z              | 0.39
      opening.1.width          | 0.32
      opening.2.any            | yes
      opening.2.kind           | drain
      opening.2.name           | drain in the transom
      opening.2.x              | transom
      opening.2.y              | 0.2
      opening.2.z              | 0.11
      opening.2.diameter       | 0.022
      opening.2.closedBy       | bung
      opening.3.any            | yes
      opening.3.kind           | face hatch
      opening.3.into           | bow locker
      opening.3.name           | hatch of the bow locker
      opening.3.x              | 3.31
      opening.3.y              | 0.0
      opening.3.z              | 0.2
      opening.3.width          | 0.3
      opening.3.closedBy       | hatch lid
      chamber.1.any            | yes
      chamber.1.kind           | bow
      chamber.1.name           | bow locker
      chamber.1.x.from         | 3.31
      chamber.1.z.from         | 0.0
      chamber.1.z.to           | 0.45
      chamber.1.filling        | air
      chamber.1.seal           | proven
      chamber.1.test.date      | 2026-05-03
      chamber.1.test.how       | filled outward with a hose, lid strapped
      chamber.1.test.minutes   | 20
      chamber.1.test.litresIn  | 0.2
      chamber.1.test.by        | Imelda Quarrie
      chamber.1.test.head      | 0.45
      chamber.2.any            | yes
      chamber.2.kind           | thwart
      chamber.2.name           | middle thwart box
      chamber.2.x.from         | 1.92
      chamber.2.x.to           | 2.2
      chamber.2.z.from         | 0.0
      chamber.2.z.to           | 0.27
      chamber.2.filling        | air
      chamber.2.seal           | claimed
      chamber.2.litres         | 78
      chamber.3.any            | yes
      chamber.3.kind           | side
      chamber.3.name           | stern bench box
      chamber.3.side           | both
      chamber.3.x.from         | 0.16
      chamber.3.x.to           | 1.21
      chamber.3.y.from         | 0.34
      chamber.3.z.from         | 0.0
      chamber.3.z.to           | 0.29
      chamber.3.filling        | air
      chamber.3.seal           | proven
      chamber.3.test.date      | 2026-05-03
      chamber.3.test.how       | soapy water and a gentle puff, then filled outward
      chamber.3.test.minutes   | 15
      chamber.3.test.litresIn  | 0.0
      chamber.3.test.by        | Imelda Quarrie
      chamber.3.twin.seal      | proven
      chamber.3.twin.test.date | 2026-05-03
      chamber.3.twin.test.how  | soapy water and a gentle puff, then filled outward
      chamber.3.twin.test.minutes | 15
      chamber.3.twin.test.litresIn | 0.0
      chamber.3.twin.test.by   | Imelda Quarrie
      chamber.4.any            | yes
      chamber.4.kind           | block
      chamber.4.name           | battery box
      chamber.4.x.from         | 1.36
      chamber.4.x.to           | 1.66
      chamber.4.y.from         | -0.16
      chamber.4.y.to           | 0.16
      chamber.4.z.from         | 0.0
      chamber.4.z.to           | 0.28
      chamber.4.filling        | air
      chamber.4.seal           | claimed
      place.1.name             | middle thwart
      place.1.lies             | across
      place.1.x                | 2.06
      place.1.z                | 0.27
      place.1.halfWidth        | 0.45
      place.1.people           | 2
      place.2.any              | yes
      place.2.name             | stern bench
      place.2.lies             | across
      place.2.x                | 0.51
      place.2.z                | 0.29
      place.2.halfWidth        | 0.4
      place.2.people           | 2
      place.3.any              | yes
      place.3.name             | bow seat
      place.3.lies             | across
      place.3.x                | 2.91
      place.3.z                | 0.3
      place.3.halfWidth        | 0.25
      place.3.people           | 1
      kit.1.any                | yes
      kit.1.name               | battery
      kit.1.mass               | 22.0
      kit.1.x                  | 1.51
      kit.1.y                  | 0.0
      kit.1.z                  | 0.13
      kit.1.litres             | 9.5
      kit.1.fastened           | yes
      kit.1.in                 | battery box
      kit.2.any                | yes
      kit.2.name               | electric motor
      kit.2.mass               | 9.5
      kit.2.x                  | -0.06
      kit.2.y                  | 0.0
      kit.2.z                  | 0.35
      kit.2.litres             | 3.5
      kit.2.fastened           | yes
      kit.3.any                | yes
      kit.3.name               | oars, pair
      kit.3.mass               | 4.2
      kit.3.x                  | 1.96
      kit.3.y                  | 0.0
      kit.3.z                  | 0.44
      kit.3.litres             | 7.0
      kit.3.fastened           | yes
      kit.4.any                | yes
      kit.4.name               | anchor and line
      kit.4.mass               | 5.0
      kit.4.x                  | 3.01
      kit.4.y                  | 0.15
      kit.4.z                  | 0.08
      kit.4.fastened           | no
      kit.5.any                | yes
      kit.5.name               | solar panel
      kit.5.mass               | 2.6
      kit.5.x                  | 3.56
      kit.5.y                  | 0.0
      kit.5.z                  | 0.6
      kit.5.fastened           | yes
      bailer                   | 4
      person.1.any             | yes
      person.1.name            | helm
      person.1.mass            | 78
      person.1.place           | stern bench
      person.1.y               | 0.0
      person.2.any             | yes
      person.2.name            | passenger
      person.2.mass            | 64
      person.2.place           | middle thwart
      person.2.y               | 0.0
      waters.sheltered         | yes
      whenSwamped              | sit in it
      """;

  /** A flat-bottomed skiff with four seats and six pieces of kit. */
  static final String LONG_BENCH =
      """
      name                     | Long Bench
      measuredBy               | Ann Lee
      units                    | metric | feet
      water                    | fresh
      propulsion               | outboard
      propulsion.power         | 3 hp
      hull.material            | plywood
      hull.thickness           | 3/8 in
      hull.length              | 15' 8"
      hull.stations            | 5
      hull.points              | 3
      hull.alike               | yes
      hull.station.1.upright   | yes
      hull.station.1.point.1.z | 3 1/2"
      hull.station.1.point.2.y | 19"
      hull.station.1.point.2.z | 3 1/2"
      hull.station.1.point.3.y | 24"
      hull.station.1.point.3.z | 19"
      hull.station.2.x         | 3' 11"
      hull.station.2.point.1.z | 1/2"
      hull.station.2.point.2.y | 22"
      hull.station.2.point.2.z | 1/2"
      hull.station.2.point.3.y | 28"
      hull.station.2.point.3.z | 18"
      hull.station.3.x         | 7' 10"
      hull.station.3.point.1.z | 0"
      hull.station.3.point.2.y | 23"
      hull.station.3.point.2.z | 0"
      hull.station.3.point.3.y | 30"
      hull.station.3.point.3.z | 18 1/2"
      hull.station.4.x         | 11' 9"
      hull.station.4.point.1.z | 2"
      hull.station.4.point.2.y | 17"
      hull.station.4.point.2.z | 2"
      hull.station.4.point.3.y | 24"
      hull.station.4.point.3.z | 20 1/2"
      hull.station.5.upright   | no
      hull.station.5.point.1.x | 14' 8"
      hull.station.5.point.1.z | 7"
      hull.station.5.point.2.x | 14' 9"
      hull.station.5.point.2.y | 1"
      hull.station.5.point.2.z | 8"
      hull.station.5.point.3.x | 15' 8"
      hull.station.5.point.3.y | 1 1/2"
      hull.station.5.point.3.z | 25"
      hull.weighed             | scales
      hull.scale.aft.x         | 1'
      hull.scale.aft.mass      | 118 lb
      hull.scale.fore.x        | 13'
      hull.scale.fore.mass     | 97 lb
      hull.centre.z            | 10"
      hull.floor               | 1"
      hull.decked.1.any        | yes
      hull.decked.1.from       | 12' 6"
      hull.decked.1.to         | 15' 8"
      opening.1.any            | yes
      opening.1.kind           | notch
      opening.1.y              | 0"
      opening.1.z              | 15 1/2"
      opening.1.width          | 12"
      chamber.1.any            | yes
      chamber.1.kind           | bow
      chamber.1.name           | fore locker
      chamber.1.x.from         | 12' 6"
      chamber.1.z.to           | 20"
      chamber.1.filling        | air
      chamber.1.seal           | proven
      chamber.1.test.date      | 2026-05-02
      chamber.1.test.how       | water poured in
      chamber.1.test.minutes   | 20
      chamber.1.test.litresIn  | 0
      chamber.1.test.by        | Ann Lee
      chamber.1.litres         | 210
      chamber.2.any            | yes
      chamber.2.kind           | thwart
      chamber.2.name           | midships thwart
      chamber.2.x.from         | 7'
      chamber.2.x.to           | 8'
      chamber.2.z.to           | 11"
      chamber.2.filling        | air
      chamber.2.seal           | proven
      chamber.2.test.date      | 2026-05-02
      chamber.2.test.how       | water poured in
      chamber.2.test.minutes   | 20
      chamber.2.test.litresIn  | 0
      chamber.2.test.by        | Ann Lee
      chamber.2.litres         | 75
      chamber.3.any            | yes
      chamber.3.kind           | side
      chamber.3.name           | side benches
      chamber.3.side           | both
      chamber.3.x.from         | 2'
      chamber.3.x.to           | 6'
      chamber.3.y.from         | 14"
      chamber.3.z.to           | 11"
      chamber.3.filling        | air
      chamber.3.seal           | claimed
      chamber.3.twin.seal      | claimed
      place.1.name             | stern seat
      place.1.lies             | across
      place.1.x                | 1' 6"
      place.1.z                | 12"
      place.1.halfWidth        | 12"
      place.1.people           | 1
      place.2.any              | yes
      place.2.name             | midships thwart
      place.2.lies             | across
      place.2.x                | 7' 6"
      place.2.z                | 11"
      place.2.halfWidth        | 18"
      place.2.people           | 2
      place.3.any              | yes
      place.3.name             | fore thwart
      place.3.lies             | across
      place.3.x                | 10' 6"
      place.3.z                | 12"
      place.3.halfWidth        | 16"
      place.3.people           | 1
      place.4.any              | yes
      place.4.name             | aft thwart
      place.4.lies             | across
      place.4.x                | 4' 6"
      place.4.z                | 12"
      place.4.halfWidth        | 18"
      place.4.people           | 2
      kit.1.any                | yes
      kit.1.name               | motor
      kit.1.mass               | 38 lb
      kit.1.x                  | -4"
      kit.1.y                  | 0"
      kit.1.z                  | 15"
      kit.1.fastened           | yes
      kit.2.any                | yes
      kit.2.name               | battery
      kit.2.mass               | 42 lb
      kit.2.x                  | 1' 8"
      kit.2.y                  | 0"
      kit.2.z                  | 5"
      kit.2.litres             | 9
      kit.2.fastened           | yes
      kit.3.any                | yes
      kit.3.name               | anchor
      kit.3.mass               | 9 lb
      kit.3.x                  | 11' 6"
      kit.3.y                  | 0"
      kit.3.z                  | 4"
      kit.3.fastened           | no
      kit.4.any                | yes
      kit.4.name               | oars
      kit.4.mass               | 11 lb
      kit.4.x                  | 7'
      kit.4.y                  | 0"
      kit.4.z                  | 14"
      kit.4.fastened           | no
      kit.5.any                | yes
      kit.5.name               | water can
      kit.5.mass               | 22 lb
      kit.5.x                  | 3' 8"
      kit.5.y                  | 0"
      kit.5.z                  | 6"
      kit.5.fastened           | no
      kit.6.any                | yes
      kit.6.name               | toolbox
      kit.6.mass               | 15 lb
      kit.6.x                  | 3'
      kit.6.y                  | 0"
      kit.6.z                  | 5"
      kit.6.fastened           | yes
      bailer                   | 5 l
      person.1.any             | yes
      person.1.name            | Iris
      person.1.mass            | 150 lb
      person.1.place           | stern seat
      person.1.y               | 0"
      person.2.any             | yes
      person.2.name            | Tom
      person.2.mass            | 190 lb
      person.2.place           | midships thwart
      person.2.y               | 0"
      waters.sheltered         | yes
      whenSwamped              | sit in it
      """;
}
