package thwartwise.walk.questions;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.electrics.Battery;
import thwartwise.electrics.Chemistry;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.ElectricMotor;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.electrics.MainWire;
import thwartwise.electrics.SolarPanel;
import thwartwise.electrics.TimedRun;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.measure.Reading;
import thwartwise.measure.UnitSystem;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.sampleboats.ElectricBoat;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Replay.UnansweredQuestion;

/** What is electric, asked of a boat whose kit is known. */
class ElectricalQuestionsTest {
  private static final double POUND_FORCE = 0.45359237 * 9.80665;
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 9);
  private static final PlausibleLimits LIMITS = new PlausibleLimits(RuleSetFile.cautiousDefault());

  private static final String TYPED =
      """
      electrics.any                         | yes
      electrics.battery.chemistry           | agm
      electrics.battery.ampHours            | 960 Wh
      electrics.battery.ratedHours          | C20
      electrics.battery.since               | 2024-04
      electrics.battery.starter             | no
      electrics.battery.terminalsCovered    | yes
      electrics.motor.electric              | yes
      electrics.motor.thrust                | 45
      electrics.motor.amps                  | 45 A
      electrics.motor.claimedHours          | 5 h
      electrics.motor.reach                 | 40 cm
      electrics.motor.tiltedReach           | -5 cm
      electrics.motor.tiltShift             | 0.6 m
      electrics.run.1.any                   | yes
      electrics.run.1.setting               | 3
      electrics.run.1.metres                | 200 m
      electrics.run.1.secondsThere          | 2:30
      electrics.run.1.secondsBack           | 200
      electrics.run.1.ampsThere             | 29
      electrics.run.1.ampsBack              | 31
      electrics.panel.watts                 | 50 W
      electrics.panel.panelFuse             | 5
      electrics.panel.batteryFuse           | 5 A
      electrics.panel.batteryStaysOn        | yes
      electrics.panel.sideArea              | 1.0 x 0.5
      electrics.latitude                    | 34 S
      electrics.circuit.1.any               | yes
      electrics.circuit.1.use               | motor
      electrics.circuit.1.there             | 2 m
      electrics.circuit.1.wire              | 10 mm2 90 C
      electrics.circuit.1.lies              | open
      electrics.circuit.1.fuse              | 60
      electrics.circuit.1.fuseAt            | 15 cm
      electrics.circuit.1.switch            | plug at the transom
      electrics.circuit.2.any               | yes
      electrics.circuit.2.use               | lamp
      electrics.circuit.2.amps              | 6 W
      electrics.circuit.2.there             | 3 m
      electrics.circuit.2.wire              | awg 14
      electrics.circuit.2.lies              | pipe
      electrics.circuit.2.fuse              | 2
      electrics.circuit.2.fuseAt            | 0.1 m
      electrics.circuit.2.switch            | rocker switch
      electrics.circuit.2.hoursADay         | 3
      electrics.mainSwitch                  | red key
      electrics.mainWire.fuse               | 60 A
      electrics.mainWire.fuseAt             | 10 cm
      electrics.mainWire.wire               | AWG 8 105 C
      electrics.mainWire.lies               | pipe
      electrics.mainWire.there              | 0.5 m
      """;

  private static final Asked WIRED = new Asked(UnitSystem.METRIC, boat(), typed());

  /** A battery, a motor, a solar panel and oars, and nothing said of them. */
  private static Boat boat() {
    String json = ElectricBoat.WITHOUT.replace("\"panel\"", "\"solar panel\"");
    return BoatFile.parse(json, "boat.json");
  }

  private static Map<String, String> typed() {
    Map<String, String> typed = new LinkedHashMap<>();
    TYPED
        .lines()
        .map(line -> line.split("\\|"))
        .forEach(cells -> typed.put(cells[0].strip(), cells[1].strip()));
    return typed;
  }

  /** What is typed at each question; nothing at one that is not named. */
  private record Asked(UnitSystem units, Boat boat, Map<String, String> typed) {
    Asked with(String key, String other) {
      Map<String, String> more = new LinkedHashMap<>(typed);
      more.put(key, other);
      return new Asked(units, boat, more);
    }

    Asked without(String kit) {
      List<Kit> left = boat.kit().stream().filter(k -> !k.name().equals(kit)).toList();
      return new Asked(units, boat.withKit(left), typed);
    }

    Asked nothingBut(String key, String only) {
      return new Asked(units, boat, Map.of("electrics.any", "yes", key, only));
    }

    private record Run(Boat boat, List<QuestionDefinition<?>> asked) {}

    private Run run() {
      List<Answer> answers = new ArrayList<>();
      List<QuestionDefinition<?>> asked = new ArrayList<>();
      QuantityQuestions quantities = new QuantityQuestions(units);
      while (true) {
        Replay replay = new Replay(answers);
        KitQuestions kit =
            new KitQuestions(
                replay,
                quantities,
                new Outline(boat.hull().stations()),
                boat.chambers(),
                boat.places(),
                LIMITS,
                boat.propulsion());
        try {
          return new Run(
              new ElectricalQuestions(replay, quantities, TODAY, kit).asked(boat), asked);
        } catch (UnansweredQuestion open) {
          String key = open.entry().key();
          if (open.misfit().isPresent()) {
            throw new AssertionError(key + ": " + open.misfit().get());
          }
          asked.add(open.entry());
          answers.add(new Answer(key, typed.getOrDefault(key, "")));
        }
      }
    }

    ElectricalSystem electrics() {
      return run().boat().electrics();
    }

    List<Question> questions() {
      return run().asked().stream().map(QuestionDefinition::question).toList();
    }

    List<String> keys() {
      return run().asked().stream().map(QuestionDefinition::key).toList();
    }

    Reading<?> read(String key, String line) {
      return run().asked().stream()
          .filter(entry -> entry.key().equals(key))
          .findFirst()
          .orElseThrow()
          .read(line);
    }
  }

  @Test
  void everything_stands_in_the_boat_file_as_its_key_says() {
    Boat boat = WIRED.run().boat();
    ElectricalSystem electrics = boat.electrics();
    assertThat(electrics.battery())
        .hasValue(
            new Battery(
                "battery",
                12,
                80 * 3600.0,
                Optional.of(Chemistry.AGM),
                Optional.of(20 * 3600.0),
                Optional.empty(),
                Optional.of(LocalDate.of(2024, 4, 1)),
                Optional.of(false),
                Optional.empty(),
                Optional.of(true)));
    ElectricMotor motor = electrics.motor().orElseThrow();
    assertThat(motor.kit()).hasValue("motor");
    assertThat(motor.thrust().orElseThrow()).isCloseTo(45 * POUND_FORCE, within(1e-3));
    assertThat(motor.fullCurrent()).hasValue(45.0);
    assertThat(motor.claimedTime()).hasValue(5 * 3600.0);
    assertThat(motor.reach()).hasValue(0.4);
    assertThat(motor.tiltedReach()).hasValue(-0.05);
    assertThat(motor.tiltShift()).hasValue(0.6);
    assertThat(electrics.runs())
        .containsExactly(new TimedRun("3", 200, 150, 200, Optional.of(29.0), Optional.of(31.0)));
    assertThat(electrics.panel())
        .hasValue(
            new SolarPanel(
                Optional.of("solar panel"),
                50,
                Optional.of(5.0),
                Optional.of(5.0),
                Optional.of(true),
                Optional.of(0.5)));
    assertThat(electrics.latitude().orElseThrow()).isCloseTo(Math.toRadians(-34), within(1e-12));
    assertThat(electrics.mainSwitch()).hasValue("red key");
    assertThat(electrics.mainWire())
        .hasValue(
            new MainWire(
                Optional.of(60.0),
                Optional.of(0.1),
                Optional.of(0.5),
                Optional.empty(),
                Optional.of(8),
                Optional.of(105.0),
                Optional.of(false),
                Optional.of(true)));
    assertThat(BoatFile.parse(BoatFile.write(boat), "boat.json")).isEqualTo(boat);
  }

  @Test
  void wires_are_told_by_what_they_feed_and_the_motors_current_is_not_asked_again() {
    List<Circuit> circuits = WIRED.electrics().circuits();
    assertThat(circuits.get(0))
        .isEqualTo(
            new Circuit(
                "motor",
                Circuit.Use.MOTOR,
                45,
                2,
                Optional.of(10e-6),
                Optional.empty(),
                Optional.of(90.0),
                Optional.of(true),
                Optional.of(60.0),
                Optional.of(0.15),
                Optional.of(false),
                Optional.of("plug at the transom"),
                Optional.empty()));
    Circuit lamp = circuits.get(1);
    assertThat(lamp.name()).isEqualTo("lamp");
    assertThat(lamp.current()).isEqualTo(0.5);
    assertThat(lamp.gauge()).hasValue(14);
    assertThat(lamp.sheathed()).hasValue(true);
    assertThat(lamp.alone()).hasValue(false);
    assertThat(lamp.timeADay()).hasValue(3 * 3600.0);
    assertThat(WIRED.keys()).doesNotContain("electrics.circuit.1.amps");
  }

  @Test
  void one_question_is_asked_of_a_boat_with_a_battery_and_none_of_one_without() {
    Asked silent = new Asked(UnitSystem.METRIC, boat(), Map.of());
    assertThat(silent.keys()).containsExactly("electrics.any");
    assertThat(silent.electrics()).isEqualTo(ElectricalSystem.NONE);
    Asked rowed = silent.without("battery").without("motor").without("solar panel");
    assertThat(rowed.keys()).isEmpty();
  }

  @Test
  void of_no_main_fuse_nothing_more_is_asked() {
    Asked none = WIRED.with("electrics.mainWire.fuse", "0");
    assertThat(none.electrics().mainWire()).hasValue(MainWire.of(0));
    assertThat(none.keys()).doesNotContain("electrics.mainWire.fuseAt");
    Asked silent = WIRED.with("electrics.mainWire.fuse", "");
    assertThat(silent.electrics().mainWire()).isEmpty();
    assertThat(silent.keys()).doesNotContain("electrics.mainWire.wire");
  }

  /** What Enter takes is what nobody said, which the sums count as what flatters least. */
  @Test
  void enter_at_each_question_says_nothing() {
    assertThat(WIRED.nothingBut("electrics.battery.volts", "12").electrics())
        .isEqualTo(ElectricalSystem.NONE);
    assertThat(WIRED.nothingBut("electrics.battery.ampHours", "80").electrics().battery())
        .hasValue(
            new Battery(
                "battery",
                12,
                80 * 3600.0,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
  }

  @Test
  void a_battery_forgotten_among_the_kit_is_weighed_once_and_joins_it() {
    Boat boat =
        WIRED
            .without("battery")
            .with("electrics.battery.any", "yes")
            .with("electrics.battery.kit.name", "big battery")
            .with("electrics.battery.kit.mass", "24 kg")
            .with("electrics.battery.kit.x", "1 m")
            .with("electrics.battery.kit.y", "0")
            .with("electrics.battery.kit.z", "0.1 m")
            .with("electrics.battery.kit.fastened", "yes")
            .run()
            .boat();
    assertThat(boat.kit()).extracting(Kit::name).contains("motor", "big battery");
    assertThat(boat.electrics().battery()).map(Battery::kit).hasValue("big battery");
  }

  @Test
  void of_two_batteries_the_one_that_is_meant_is_asked_for() {
    List<Kit> kit = new ArrayList<>(boat().kit());
    kit.add(Kit.named("starter battery"));
    Asked two =
        new Asked(UnitSystem.METRIC, boat().withKit(kit), typed())
            .with("electrics.battery.which", "starter");
    assertThat(two.electrics().battery()).map(Battery::kit).hasValue("starter battery");
  }

  /** The wiring page said "switched off by yes". */
  @Test
  void yes_is_no_name_of_what_switches_off() {
    assertThat(WIRED.read("electrics.circuit.1.switch", "yes").refusal())
        .hasValue("\"yes\" names nothing. Type what switches it off, such as plug; or no.");
    assertThat(WIRED.read("electrics.mainSwitch", "yes").refusal())
        .hasValue("\"yes\" names nothing. Type what does so, such as red key; or no.");
    assertThat(understood("electrics.circuit.2.use", "lamps")).isEqualTo("lamp");
  }

  @Test
  void a_lithium_battery_is_not_asked_whether_it_starts_engines() {
    assertThat(WIRED.with("electrics.battery.chemistry", "lfp").keys())
        .contains("electrics.battery.since")
        .doesNotContain("electrics.battery.starter");
  }

  private static String understood(String key, String typed) {
    return ((Reading.Understood<?>) WIRED.read(key, typed)).text();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "electrics.battery.ampHours|960 Wh|Battery, charge on its label: 960 Wh (80 Ah)",
        "electrics.battery.since|2024|Battery, first used: 2024-01-01",
        "electrics.battery.ratedHours|c5|Battery, hours next to the Ah: 5 hours",
        "electrics.motor.thrust|55 lbs|Motor, thrust on its plate: 55 lb (244.65 N)",
        "electrics.motor.thrust|200 N|Motor, thrust on its plate: 200 N",
        "electrics.motor.amps|660 W|Motor, current at full power: 660 W (55 A)",
        "electrics.run.1.secondsThere|1:05|Run at \"3\", time there: 65 s",
        "electrics.panel.sideArea|0.3|Panel, area seen from the side: 0.3 m2",
        "electrics.latitude|-34|Latitude where the boat is kept: 34 degrees south",
        "electrics.circuit.1.wire|16|Wires \"motor\", copper: 16 mm2",
        "electrics.circuit.1.wire|10 AWG 105 C|Wires \"motor\", copper: AWG 10, 105 C",
        "electrics.circuit.1.fuse|don't know|Wires \"motor\", fuse: not known, as none"
      })
  void what_was_understood_is_repeated(String key, String typed, String repeated) {
    assertThat(WIRED.questions())
        .filteredOn(question -> question.key().equals(key))
        .first()
        .extracting(question -> question.repeat(understood(key, typed)))
        .isEqualTo(repeated);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "electrics.battery.ampHours|80000|That is 80000 ampere-hours, outside the believable 1 to"
            + " 600 ampere-hours for a battery one person lifts. Read it again.",
        "electrics.battery.ampHours|big|\"big\" is not a figure of this kind. Type a number such as"
            + " 12.5; a bare one means Ah.",
        "electrics.battery.since|2027-01-01|2027-01-01 is still to come. Type the day it was first"
            + " used.",
        "electrics.battery.since|2024-13|\"2024-13\" is not a day. Type year-month-day such as"
            + " 2026-05-02, or today, yesterday, last Saturday, 2 May 2026.",
        "electrics.panel.sideArea|big|\"big\" is no area. Type square metres such as 0.3, or 1.0 x"
            + " 0.03.",
        "electrics.panel.sideArea|9|That is 9 m2, outside the believable 0 to 5 m2 for a panel seen"
            + " from the side. Measure it again, in metres.",
        "electrics.motor.reach|40 m|40.00 m is not between -1 and 2 m, the length of a motor on such a"
            + " boat. Did you mean 0.40 m?",
        "electrics.latitude|north|\"north\" is no latitude. Type degrees such as 52, or 34 S.",
        "electrics.latitude|80|That is beyond the polar circle. Type degrees up to 66.",
        "electrics.circuit.1.wire|thick|\"thick\" is no size of a wire. Type a size such as 4 mm2,"
            + " AWG 10, or 10 mm2 105 C.",
        "electrics.circuit.1.wire|10.5 awg|10.5 is no AWG of such a wire. Type a size such as 4 mm2,"
            + " AWG 10, or 10 mm2 105 C.",
        "electrics.circuit.1.wire|4 mm2 20 C|20 degrees are printed on no wire. Type a size such as 4"
            + " mm2, AWG 10, or 10 mm2 105 C."
      })
  void an_odd_answer_gets_one_clear_message(String key, String typed, String message) {
    assertThat(WIRED.read(key, typed).refusal()).hasValue(message);
  }

  /** Somebody with American wire types its gauge. */
  @Test
  void a_bare_wire_size_is_a_gauge_where_feet_are_in_force() {
    Asked feet = new Asked(UnitSystem.FEET_INCHES_POUNDS, boat(), typed());
    assertThat(feet.electrics().circuits().get(0).gauge()).isEmpty();
    assertThat(feet.with("electrics.circuit.1.wire", "14").electrics().circuits().get(0).gauge())
        .hasValue(14);
  }

  @Test
  void every_prompt_and_every_line_of_help_fits() {
    WIRED.questions().forEach(ElectricalQuestionsTest::fits);
    new Asked(UnitSystem.FEET_INCHES_POUNDS, boat(), typed())
        .with("electrics.run.1.setting", "as far over as the handle goes")
        .with("electrics.circuit.2.use", "navigation lights")
        .with("electrics.circuit.3.any", "yes")
        .with("electrics.circuit.3.use", "other")
        .with("electrics.circuit.3.name", "a pump that nobody ever needs")
        .with("electrics.circuit.3.amps", "1")
        .with("electrics.circuit.3.there", "1")
        .with("electrics.circuit.3.fuse", "1")
        .questions()
        .forEach(ElectricalQuestionsTest::fits);
  }

  private static void fits(Question question) {
    assertThat(question.prompt()).hasSizeLessThanOrEqualTo(78);
    assertThat(question.help()).allMatch(line -> line.length() <= 78);
    if (!question.subject().startsWith("Another ")) {
      assertThat(question.how()).isNotEmpty();
      assertThat(question.why()).isNotEmpty();
    }
  }
}
