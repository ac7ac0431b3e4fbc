package thwartwise.walk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import thwartwise.boat.Boat;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

/**
 * What a person has noted down and types, by question. A line {@code key | metric | feet}; a
 * missing third column is typed in both. Questions not on the sheet are answered with the usual
 * word where Enter is refused, and else with Enter alone.
 */
public record Sheet(Map<String, String> typed) {
  static final LocalDate TODAY = LocalDate.of(2026, 5, 9);
  public static final Walk WALK = walk();

  /** One that remembers nothing yet. */
  static Walk walk() {
    return walk(TODAY, PreviousBoats.NONE);
  }

  static Walk walk(LocalDate today, PreviousBoats known) {
    return Walk.on(today, known, RuleSetFile.cautiousDefault());
  }

  private static final String FULL =
      """
      name                    | Gravy Boat
      measuredBy              | the builder
      units                   | metric     | feet
      water                   | salt
      propulsion              | outboard
      propulsion.power        | 500 W
      hull.material           | other
      hull.density            | 900
      hull.thickness          | 6.35 mm    | 1/4
      hull.length             | 3.6576     | 12'
      hull.stations           | 3
      hull.alike              | no
      hull.station.1.name     | transom
      hull.station.1.upright  | no
      hull.station.1.point.1.x | 5.08 cm   | 2
      hull.station.1.point.1.z | 0.0508    | 2
      hull.station.1.point.2.x | 2,54 cm   | 1
      hull.station.1.point.2.y | 0.4572    | 1' 6"
      hull.station.1.point.2.z | 63.5 mm   | 2 1/2
      hull.station.1.point.3.x | 0         | 0
      hull.station.1.point.3.y | 0.5842    | 23
      hull.station.1.point.3.z | 0.4318    | 17
      hull.station.1.starboard.2.y | 0.4572 | 18
      hull.station.1.starboard.2.z | 0.0635 | 2.5
      hull.station.1.starboard.3.y | 0.5715 | 22 1/2
      hull.station.1.starboard.3.z | 0.4318 | 1' 5"
      hull.station.2.name     | middle
      hull.station.2.x        | 1.8288     | 6'
      hull.station.2.point.1.z | 0         | 0
      hull.station.2.point.2.y | 0.5588    | 22
      hull.station.2.point.2.z | 0.0127    | 1/2
      hull.station.2.point.3.y | 0.6985    | 27 1/2
      hull.station.2.point.3.z | 0.4191    | 16 1/2
      hull.station.2.starboard.2.y | 0.5588 | 22
      hull.station.2.starboard.2.z | 0.0127 | .5
      hull.station.2.starboard.3.y | 0.6858 | 27
      hull.station.2.starboard.3.z | 0.4191 | 16,5
      hull.station.3.upright  | no
      hull.station.3.point.1.x | 3.3528    | 11 feet
      hull.station.3.point.1.z | 0.2032    | 8
      hull.station.3.point.2.x | 3.4544    | 11' 4"
      hull.station.3.point.2.y | 0.0254    | 1
      hull.station.3.point.2.z | 0.254     | 10
      hull.station.3.point.3.x | 3.6576    | 12 ft
      hull.station.3.point.3.y | 0.0381    | 1 1/2
      hull.station.3.point.3.z | 0.5842    | 23
      hull.station.3.starboard.2.y | 0.0254 | 1
      hull.station.3.starboard.2.z | 0.254 | 10
      hull.station.3.starboard.3.y | 0.0381 | 1 1/2
      hull.station.3.starboard.3.z | 0.5842 | 23
      hull.mass               | 68.0388555 | 150
      hull.centre             | yes
      hull.centre.x           | 1.7018     | 67
      hull.centre.z           | 0.2032     | 8
      hull.floor              | 0.0254     | 1
      hull.decked.1.any       | yes
      hull.decked.1.from      | 2.8448     | 112
      hull.decked.1.to        | 3.6576     | 144
      opening.1.any           | yes
      opening.1.name          | motor notch
      opening.1.x             | 0
      opening.1.y             | -0.1016    | -4
      opening.1.z             | 0.381      | 15
      opening.1.width         | 0.3048     | 1'
      opening.1.closedBy      | no
      opening.1.edge          | across
      opening.2.any           | yes
      opening.2.name          | drain
      opening.2.x             | 0.0508     | 2
      opening.2.y             | 0.2032     | 8
      opening.2.z             | 0.0635     | 2 1/2
      opening.2.width         | 0.0254     | 1
      opening.2.closedBy      | rubber bung
      opening.2.edge          | across
      chamber.1.any           | yes
      chamber.1.name          | fore locker
      chamber.1.x.from        | 2.8448     | 112
      chamber.1.z.to          | 0.3556     | 14
      chamber.1.filling       | air
      chamber.1.seal          | proven
      chamber.1.test.date     | 2026-05-02
      chamber.1.test.how      | water poured in
      chamber.1.test.minutes  | 20
      chamber.1.test.litresIn | 0.5
      chamber.1.test.by       | the builder
      chamber.1.test.head     | 0.3556     | 14
      chamber.2.any           | yes
      chamber.2.name          | midships thwart
      chamber.2.x.from        | 1.6002     | 63
      chamber.2.x.to          | 1.8796     | 74
      chamber.2.z.to          | 0.2794     | 11
      chamber.2.filling       | air
      chamber.2.seal          | claimed
      chamber.2.litres        | 86
      chamber.3.any           | yes
      chamber.3.name          | side foam
      chamber.3.x.from        | 0.6096     | 2'
      chamber.3.x.to          | 1.4224     | 4' 8"
      chamber.3.y.from        | 0.4064     | 16
      chamber.3.y.to          | 0.6604     | 26
      chamber.3.z.from        | 0.1016     | 4
      chamber.3.z.to          | 0.3048     | 12
      chamber.3.mirrored      | yes
      chamber.3.filling       | foam
      chamber.3.closed        | yes
      chamber.3.fastened      | yes
      place.1.name            | midships thwart
      place.1.lies            | across
      place.1.x               | 1.7018     | 67
      place.1.z               | 0.2794     | 11
      place.1.halfWidth       | 0.4572     | 18
      place.1.people          | 2
      place.2.any             | yes
      place.2.name            | stern seat
      place.2.lies            | across
      place.2.x               | 0.4572     | 18
      place.2.z               | 0.2667     | 10 1/2
      place.2.halfWidth       | 0.4064     | 16
      place.2.people          | 1
      kit.1.any               | yes
      kit.1.name              | battery
      kit.1.mass              | 18.1436948 | 40
      kit.1.x                 | 0.9652     | 38
      kit.1.z                 | 0.127      | 5
      kit.1.litres            | 9
      kit.1.fastened          | yes
      kit.1.in                | midships thwart
      kit.2.any               | yes
      kit.2.name              | motor
      kit.2.mass              | 10.43262451 | 23
      kit.2.x                 | -0.0762    | -3
      kit.2.y                 | -0.1016    | -4
      kit.2.z                 | 0.3556     | 14
      kit.2.fastened          | no
      bailer                  | 7.5
      person.1.any            | yes
      person.1.name           | helm
      person.1.mass           | 80.73944186 | 178
      person.1.place          | stern seat
      person.1.y              | 0
      person.2.any            | yes
      person.2.name           | bow
      person.2.mass           | 78.01788764 | 12 st 4
      person.2.place          | midships thwart
      person.2.y              | -0.1524    | -6
      whenSwamped             | sit in it
      """;

  /** Of every kind of chamber and opening one, in a pram weighed and balanced at home. */
  private static final String EVERY_KIND =
      """
      units                    | metric     | feet
      hull.weighed             | ends
      hull.scale.aft.x         | 0.3        | 1'
      hull.scale.aft.mass      | 15         | 33
      hull.scale.fore.x        | 2.1        | 7'
      hull.scale.fore.mass     | 15         | 33
      hull.centre.z            | tilt
      hull.tilt.x              | 1.3        | 4' 4"
      hull.tilt.rise           | 18 deg
      chamber.1.any            | yes
      chamber.1.kind           | bow
      chamber.1.x.from         | 2.0        | 6' 6"
      chamber.1.z.to           | rail
      chamber.1.filling        | air
      chamber.1.seal           | claimed
      chamber.2.any            | yes
      chamber.2.kind           | stern
      chamber.2.x.to           | 0.3        | 12
      chamber.2.z.to           | 0.25       | 10
      chamber.2.filling        | air
      chamber.2.seal           | claimed
      chamber.3.any            | yes
      chamber.3.kind           | thwart
      chamber.3.x.from         | 1.1        | 44
      chamber.3.x.to           | 1.3        | 52
      chamber.3.z.to           | 0.24       | 9
      chamber.3.filling        | air
      chamber.3.seal           | claimed
      chamber.4.any            | yes
      chamber.4.kind           | side
      chamber.4.side           | both
      chamber.4.x.from         | 0.4        | 16
      chamber.4.x.to           | 1.0        | 40
      chamber.4.y.from         | 0.3        | 12
      chamber.4.z.to           | 0.24       | 9
      chamber.4.filling        | foam
      chamber.4.closed         | yes
      chamber.4.fastened       | yes
      opening.1.any            | yes
      opening.1.kind           | notch
      opening.1.y              | 0
      opening.1.z              | 0.38       | 15
      opening.1.width          | 0.2        | 8
      opening.2.any            | yes
      opening.2.kind           | oar notch
      opening.2.x              | 1.2        | 48
      opening.2.side           | port
      opening.2.z              | 0.40       | 16
      opening.2.width          | 0.05       | 2
      opening.3.any            | yes
      opening.3.kind           | drain
      opening.3.into           | stern locker
      opening.3.x              | transom
      opening.3.y              | 0
      opening.3.z              | 0.09       | 4
      opening.3.diameter       | 22 mm      | 7/8
      opening.3.closedBy       | bung
      opening.4.any            | yes
      opening.4.kind           | deck hatch
      opening.4.into           | bow locker
      opening.4.x              | 2.2        | 7'
      opening.4.y              | 0
      opening.4.z              | 0.5        | 20
      opening.4.width          | 0.3        | 12
      opening.4.closedBy       | hatch lid
      opening.5.any            | yes
      opening.5.kind           | face hatch
      opening.5.into           | thwart box
      opening.5.x              | 1.1        | 44
      opening.5.y              | 0
      opening.5.z              | 0.12       | 5
      opening.5.width          | 0.1        | 4
      opening.6.any            | yes
      opening.6.kind           | cable hole
      opening.6.into           | bow locker
      opening.6.x              | 2.0        | 6' 6"
      opening.6.y              | 0.1        | 4
      opening.6.z              | 0.3        | 12
      opening.6.diameter       | 12 mm      | 1/2
      kit.1.any                | yes
      kit.1.name               | oars
      kit.1.mass               | 4 kg
      kit.1.x                  | 1.2        | 4'
      kit.1.z                  | 0.4        | 16
      kit.1.fastened           | no
      kit.2.any                | yes
      kit.2.name               | motor
      kit.2.mass               | 10 kg
      kit.2.x                  | 0          | 0
      kit.2.z                  | 0.4        | 16
      kit.2.fastened           | yes
      place.2.any              | yes
      place.2.name             | stern seat
      place.2.lies             | across
      place.2.x                | 0.4        | 16
      place.2.z                | 0.26       | 10
      place.2.halfWidth        | 0.2        | 8
      place.2.people           | 1
      """;

  static Sheet everyKind(boolean metric) {
    Map<String, String> typed = new LinkedHashMap<>(of(SMALL, 1).typed());
    if (!metric) {
      typed.replaceAll(
          (key, value) ->
              value.matches("[0-9.]+")
                      && key.matches("hull\\.(length|station).*|place.*(x|z|halfWidth)")
                      && !key.equals("hull.stations")
                  ? value + " m"
                  : value);
    }
    typed.putAll(of(EVERY_KIND, metric ? 1 : 2).typed());
    return new Sheet(typed);
  }

  private static final String SMALL =
      """
      name                     | Bath Mat
      units                    | metric
      water                    | fresh
      propulsion               | manual
      hull.material            | plywood
      hull.length              | 2.4
      hull.stations            | 3
      hull.points              | 2
      hull.station.1.point.1.z | 0.06
      hull.station.1.point.2.y | 0.5
      hull.station.1.point.2.z | 0.44
      hull.station.2.x         | 1.2
      hull.station.2.point.1.z | 0
      hull.station.2.point.2.y | 0.6
      hull.station.2.point.2.z | 0.42
      hull.station.3.x         | 2.4
      hull.station.3.point.1.z | 0.1
      hull.station.3.point.2.y | 0.3
      hull.station.3.point.2.z | 0.5
      hull.mass                | 30
      hull.centre              | no
      hull.decked.1.any        | no
      opening.1.any            | no
      chamber.1.any            | no
      place.1.name             | thwart
      place.1.lies             | across
      place.1.x                | 1.2
      place.1.z                | 0.25
      place.1.halfWidth        | 0.4
      place.1.people           | 1
      kit.1.any                | no
      person.1.any             | no
      """;

  /** The short look at the boat of the full sheet. */
  private static final String BORROWED =
      """
      way                     | borrowed
      name                    | Gravy Boat
      units                   | metric     | feet
      short.length            | 3.6576     | 12'
      short.form              | flat
      short.beam              | 1.3843     | 54 1/2
      short.bottom            | 1.1176     | 44
      short.depth             | 0.4064     | 16
      short.stern             | 1.1557     | 45 1/2
      short.notch             | 0.381      | 15
      short.mass              | 68.0388555 | 150
      short.seats             | 3
      short.seat.aft          | 0.4572     | 18
      short.seat.fore         | 2.54       | 100
      short.seat.high         | 0.2794     | 11
      short.motor             | 500 W
      short.kit               | 18.1436948 | 40
      short.tested            | yes
      short.chamber.where     | bow
      short.chamber.length    | 0.8128     | 32
      short.chamber.top       | 0.3556     | 14
      short.test.date         | 2026-04-01
      short.test.by           | the bosun
      finish                  | yes
      """;

  public static Sheet borrowed(boolean metric) {
    return of(BORROWED, metric ? 1 : 2);
  }

  /** With no leak test to show, and two people seen in it full of water. */
  public static Sheet borrowedAndTried() {
    return borrowed(true)
        .with("short.tested", "trial")
        .with("trial.people", "2")
        .with("trial.children", "none")
        .with("trial.seat.1", "1")
        .with("trial.seat.2", "1")
        .with("trial.mass", "150")
        .with("trial.minutes", "12 min")
        .with("trial.level", "yes")
        .with("trial.heads", "yes")
        .with("trial.by", "Ann Lee");
  }

  public static Sheet full(boolean metric) {
    return of(FULL, metric ? 1 : 2);
  }

  /** The full sheet, of which somebody says how things were measured. */
  static Sheet saidHow() {
    return full(true)
        .with("measuredHow.any", "yes")
        .with("measuredHow.half-breadths", "steel tape")
        .with("measuredHow.edge heights", "taut line")
        .with("measuredHow.hull weight", "bathroom scales")
        .with("measuredHow.kit weights", "luggage scale")
        .with("measuredHow.chamber litres", "jug")
        .with("measuredHow.other.1.any", "yes")
        .with("measuredHow.other.1.kind", "kit weights")
        .with("measuredHow.other.1.name", "battery")
        .with("measuredHow.other.1.how", "guess");
  }

  public static Sheet small() {
    return of(SMALL, 1);
  }

  static Sheet of(String lines, int column) {
    Map<String, String> typed = new LinkedHashMap<>();
    for (String line : lines.split("\n")) {
      String[] cells = line.split("\\|");
      typed.put(cells[0].strip(), cells[Math.min(column, cells.length - 1)].strip());
    }
    return new Sheet(typed);
  }

  /** The same sheet with something else at one question. */
  Sheet with(String key, String other) {
    Map<String, String> changed = new LinkedHashMap<>(typed);
    changed.put(key, other);
    return new Sheet(changed);
  }

  public String at(Question question) {
    String key = unbound(question);
    String noted = typed.get(key);
    return noted == null ? unnoted(key) : noted;
  }

  /** Without what binds a question about one measurement to its figure. */
  private static String unbound(Question question) {
    return question.key().replaceFirst("#[0-9a-f]+$", "");
  }

  /** What has to be said although it is the usual answer, since Enter for it would flatter. */
  static String unnoted(String key) {
    return SAID.entrySet().stream()
        .filter(said -> said.getKey().matcher(key).matches())
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("");
  }

  private static final Map<Pattern, String> SAID =
      Map.ofEntries(
          said("(opening|kit|person|changed\\.\\d+\\.person)\\.\\d+\\.any", "no"),
          said("hull\\.station\\.\\d+\\.upright", "yes"),
          said("hull\\.alike", "yes"),
          said("hull\\.floor", "0.006"),
          said("(opening|changed)\\.\\d+\\.kind", "other"),
          said("(opening|changed)\\.\\d+\\.into", "boat"),
          said("chamber\\.\\d+\\.kind", "block"),
          said("chamber\\.\\d+\\.[xyz]\\.(from|to)", "hull"),
          said("kit\\.\\d+\\.y", "0"),
          said("kit\\.\\d+\\.in", "none"),
          said("waters\\.sheltered", "yes"),
          said("waters\\.(?!sheltered).*", "sheltered"),
          said("short\\.(notch|motor)", "no"));

  private static Map.Entry<Pattern, String> said(String key, String typed) {
    return Map.entry(Pattern.compile(key), typed);
  }

  /** A line typed after these answers. */
  private record Line(List<Answer> before, String typed) {}

  /**
   * Where {@link #WALK} stands and what it takes, played once: sheets begin alike, and the walk is
   * a function of the answers alone.
   */
  private static final Map<List<Answer>, Step> STEPS = new ConcurrentHashMap<>();

  private static final Map<Line, List<Answer>> TAKEN = new ConcurrentHashMap<>();

  /** The step of {@link #WALK}, for whoever asks the same of many sheets. */
  static Step next(List<Answer> answers) {
    return STEPS.computeIfAbsent(answers, WALK::next);
  }

  private List<Answer> further(List<Answer> answers, Question question) {
    return TAKEN.computeIfAbsent(
        new Line(answers, at(question)), line -> answer(line.before(), line.typed()));
  }

  /** Answers from the sheet up to the named question, which stays open. */
  List<Answer> upTo(String key) {
    List<Answer> answers = List.of();
    while (next(answers) instanceof Step.Ask ask && !unbound(ask.question()).equals(key)) {
      answers = further(answers, ask.question());
    }
    return answers;
  }

  List<Answer> toTheEnd() {
    return toTheEnd(List.of());
  }

  /** These answers, and from the sheet those that are still asked for. */
  List<Answer> toTheEnd(List<Answer> begun) {
    List<Answer> answers = begun;
    while (next(answers) instanceof Step.Ask ask) {
      answers = further(answers, ask.question());
    }
    return answers;
  }

  Boat boat() {
    return boat(toTheEnd());
  }

  static Boat boat(List<Answer> answers) {
    return ((Step.Done) next(answers)).boat();
  }

  static List<Answer> answer(List<Answer> answers, String typed) {
    Reply reply = WALK.take(answers, typed);
    if (reply instanceof Reply.Accepted accepted) {
      return accepted.answers();
    }
    throw new AssertionError(open(answers).prompt() + " " + typed + ": " + reply);
  }

  static Question open(List<Answer> answers) {
    return ((Step.Ask) next(answers)).question();
  }

  /** What the walk says when this is typed at that question, as a refusal. */
  String refused(String key, String wrong) {
    return ((Reply.Refused) WALK.take(upTo(key), wrong)).reason();
  }

  /** What the walk repeats when this is typed at that question. */
  String accepted(String key, String right) {
    return ((Reply.Accepted) WALK.take(upTo(key), right)).understood();
  }

  /** Every list of answers on the way, from none to all. */
  public List<List<Answer>> stops() {
    List<List<Answer>> stops = new ArrayList<>(List.of(List.of()));
    while (next(last(stops)) instanceof Step.Ask ask) {
      stops.add(further(last(stops), ask.question()));
    }
    return stops;
  }

  private static List<Answer> last(List<List<Answer>> stops) {
    return stops.get(stops.size() - 1);
  }
}
