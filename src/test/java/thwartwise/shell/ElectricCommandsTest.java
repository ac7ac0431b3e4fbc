package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.boat.Boat;
import thwartwise.boat.PointAnswer.PointCondition;
import thwartwise.checklist.PointQuestion;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.ChecklistFile;
import thwartwise.sampleboats.ElectricBoat;

class ElectricCommandsTest {
  @TempDir Path temp;
  private final TestShell shell = TestShell.open();

  private String boat(String json) throws IOException {
    return Files.writeString(temp.resolve("boat.json"), json).toString();
  }

  private static void fitsTheTerminal(String text) {
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    assertThat(text)
        .contains("Local rules come first")
        .doesNotContainPattern("\\b(safe|approved|certified|pass|passes|NaN|null)\\b");
  }

  /**
   * DERIVED: 45.5 A from 80 Ah over 20 h with n 1.25 last 20 (80/910)^1.25 = 0.9574 h; half of it,
   * 0.8267 by age (2.1656 years), 0.80 by cold: 0.3166 h, 18.99 min, 14.4 Ah. Five hours so used
   * are 15.12 h of the whole: 4 (20/15.12)^(1/1.25) = 5.003 A.
   */
  @Test
  void a_claimed_running_time_the_battery_cannot_give_is_said_with_the_sum() throws IOException {
    assertThat(shell.run("range", "--boat", boat(ElectricBoat.JSON))).isEqualTo(1);

    assertThat(shell.out())
        .contains(
            """
            It is said to run 5 hours at full power: this battery cannot give that. 5 hours
            at 46 A take 228 Ah; the label says 80 Ah, and of it 14 Ah can be used at that
            current. At full power it lasts 18 min; it lasts 5 hours only at 5.0 A or less.
            """);
    fitsTheTerminal(shell.out());
  }

  @Test
  void a_table_says_when_to_turn_back_for_each_timed_setting() throws IOException {
    String met = ElectricBoat.JSON.replace(", \"claimedHours\": 5", "");
    assertThat(shell.run("range", "--boat", boat(met))).isZero();

    assertThat(shell.out())
        .doesNotContain("claimed")
        .contains(
            """
            Setting 3: the battery lasts 30 min
            -----------------------------------
            1.1 m/s through the water, timed both ways. The motor draws 31 A; lamps, sockets
            and the rest 0.5 A more.

            Headwind   Still water            Stream 0.5 m/s         Stream 1.0 m/s
            ---------- ---------------------- ---------------------- ----------------------
            """)
        .contains("\nSetting 1: the battery lasts 1 h 58 min")
        .contains("does not get home")
        .contains("January    ");
  }

  @Test
  void without_a_timed_run_speed_and_current_are_said_to_be_guesses() throws IOException {
    String untimed =
        ElectricBoat.JSON
            .replaceAll("(?s)\"runs\": \\[.*?\\],\\s+\"panel\"", "\"panel\"")
            .replace("\"amps\": 45, \"claimed", "\"claimed");
    shell.run("range", "--boat", boat(untimed));

    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains("Nobody timed this boat: its speed is a guess")
        .contains("1.0 m/s through the water, a guess (2 knots)")
        // DERIVED: 200 N are 44.96 lb.
        .contains("The motor draws 45 A, as at full power")
        .contains(
            "full power: a guess: about an ampere a pound of thrust at 12 V (common practice");
  }

  @Test
  void a_boat_without_a_word_of_it_says_what_to_read_and_write() throws IOException {
    assertThat(shell.run("range", "--boat", boat(ElectricBoat.WITHOUT))).isEqualTo(1);
    assertThat(shell.out())
        .startsWith(
            """
            Butter Dish
            ===========
            Running time is not worked out: something it needs is not known.
            * The battery. Read volts and ampere-hours (Ah) on its label. To enter it type
              refit, answer electrics, then battery (by hand in a boat file: help
              electrics).
            * What the motor draws. Read amperes or pounds of thrust on its plate, or time a
              run with an ammeter. To enter it type refit, answer electrics, then motor (by
              hand in a boat file: help electrics).
            """);
    TestShell wiring = TestShell.open();
    assertThat(wiring.run("wiring", "--boat", boat(ElectricBoat.WITHOUT))).isEqualTo(1);
    assertThat(wiring.out())
        .contains(
            """
            No circuit is stated, so no wire or fuse is worked out. Each needs amperes,
            length, wire, fuse and switch. To enter it type refit, answer electrics, then
            wires (by hand in a boat file: help electrics).
            """);
    fitsTheTerminal(wiring.out());
  }

  /**
   * DERIVED: 50 W under 0.3 of 7.9 MJ/m2 in January, half of it, are 16.4 Wh or 1.37 Ah; 0.5 A for
   * 3 hours take 1.5 Ah, shown as 2. In February 2.3 Ah come and 0.8 are over.
   */
  @Test
  void without_a_motor_the_panel_is_still_held_against_the_lamps() throws IOException {
    String lamps =
        ElectricBoat.JSON
            .replaceAll("(?s)\"motor\": \\{.*?\\},\\s+\"runs\": \\[.*?\\],", "")
            .replaceAll("\\{ \"name\": \"motor\", \"use\"(?s).*?\\},", "");
    assertThat(shell.run("range", "--boat", boat(lamps))).isEqualTo(1);
    assertThat(shell.out())
        .contains("Running time is not worked out")
        .contains("Lamps, sockets and the rest take 2 Ah a day")
        .contains("What the panel gives back in a dull month")
        .contains("\nJanuary    16 Wh, 1.3 Ah      nothing\n")
        .contains("\nFebruary   27 Wh, 2.3 Ah      0.8 Ah\n")
        .contains("\nNovember   19 Wh, 1.5 Ah      nothing\n");
    fitsTheTerminal(shell.out());
  }

  @Test
  void a_battery_carried_ashore_drives_nothing_and_is_named() throws IOException {
    String ashore =
        ElectricBoat.JSON.replace("{ \"name\": \"battery\",", "{ \"name\": \"ballast\",");
    assertThat(shell.run("range", "--boat", boat(ashore))).isEqualTo(1);
    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains(
            "* The battery is not aboard: nothing among the kit is called \"battery\". If it is"
                + " there, give both one name in the boat file.");
    TestShell wiring = TestShell.open();
    assertThat(wiring.run("wiring", "--boat", boat(ashore))).isEqualTo(1);
    assertThat(wiring.out()).contains("The battery is not aboard");
  }

  @Test
  void a_motor_carried_ashore_drives_nothing_and_is_named() throws IOException {
    String ashore =
        ElectricBoat.JSON.replace(
            "{ \"name\": \"motor\", \"mass\"", "{ \"name\": \"box\", \"mass\"");
    assertThat(shell.run("range", "--boat", boat(ashore))).isEqualTo(1);
    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains("Running time is not worked out")
        .contains("* The motor is not aboard: nothing among the kit is called \"motor\".")
        .doesNotContain("turn back");
  }

  /** Its battery lights the lamps; power over volts would be a running time of minutes. */
  @Test
  void a_battery_does_not_drive_a_boat_with_petrol_aboard() throws IOException {
    String petrol =
        ElectricBoat.JSON
            .replaceAll("(?s)\"motor\": \\{.*?\\},\\s+\"runs\": \\[.*?\\],", "")
            .replace("\"name\": \"oars\"", "\"name\": \"petrol can\"")
            .replace(
                "\"water\": \"fresh\",",
                "\"water\": \"fresh\", \"propulsion\": { \"kind\": \"outboard\", \"kilowatts\": 1.5 },");
    assertThat(shell.run("range", "--boat", boat(petrol))).isEqualTo(1);
    assertThat(shell.out()).contains("Running time is not worked out").doesNotContain("turn back");
  }

  /**
   * DERIVED: out at 1.467, home at 0.717 m/s, 20.05 of 30.08 min: turn after 6.58 min, 579 m away.
   * Oars make 0.75 - 0.3 - 0.15 = 0.3 m/s of it: 32.2 min; against 2 m/s of wind 0.15, too little.
   * In still air 0.75 - 0.55 is the least that counts, and 0.55 rounds down.
   */
  @Test
  void rowing_home_is_worked_out_against_the_wind_and_stream_that_are_stated() throws IOException {
    String met = ElectricBoat.JSON.replace(", \"claimedHours\": 5", "");
    assertThat(shell.run("range", "--boat", boat(in(met, 1, 0.3)))).isZero();
    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains("In the waters stated (wind 1.0 m/s, stream 0.3 m/s) turn back after 6 min")
        .contains("Against a stream of 0.5 m/s or more do not rely on it.")
        .containsPattern("from where it turns back there, 5[78]\\d m, rowing home takes 33 min\\.");

    TestShell windy = TestShell.open();
    assertThat(windy.run("range", "--boat", boat(in(met, 2, 0.3)))).isZero();
    assertThat(windy.out().replaceAll("\\s+", " "))
        .contains("In the waters stated do not rely on rowing home against wind and stream");
  }

  @Test
  void waters_from_which_it_does_not_get_home_are_no_good_news_for_a_script() throws IOException {
    String met = ElectricBoat.JSON.replace(", \"claimedHours\": 5", "");
    assertThat(shell.run("range", "--boat", boat(in(met, 4, 1)))).isEqualTo(1);
    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains("it does not get home against both: do not go out with the stream")
        .doesNotContain("In the waters stated, from where");
  }

  private static String in(String boat, double wind, double stream) {
    return boat.replace(
        "\"water\": \"fresh\",",
        "\"water\": \"fresh\", \"waters\": { \"wind\": "
            + wind
            + ", \"current\": "
            + stream
            + " },");
  }

  @Test
  void without_oars_there_is_no_second_way_home() throws IOException {
    String noOars =
        ElectricBoat.JSON.replace("\"oars\"", "\"cardboard\"").replace(", \"claimedHours\": 5", "");
    assertThat(shell.run("range", "--boat", boat(noOars))).isEqualTo(1);
    assertThat(shell.out()).contains("with the motor dead nothing brings it\nhome.");
  }

  @Test
  void a_timed_speed_over_the_hull_speed_is_cut_and_said() throws IOException {
    String fast =
        ElectricBoat.JSON.replace(
            "\"secondsThere\": 150, \"secondsBack\": 200",
            "\"secondsThere\": 50, \"secondsBack\": 60");
    shell.run("range", "--boat", boat(fast));
    // DERIVED: 1.34 sqrt(4 / 0.3048) knots are 2.497 m/s; 200 m in 50 and 60 s are 3.67 m/s.
    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains("2.4 m/s through the water, the speed at which its own wave is as long as the")
        .contains("the timed 3.6 m/s is faster than such a hull goes. Time it again.");
  }

  /** 9 kg of motor by 0.5 m are 44.1 Nm, shown as 45. */
  @Test
  void range_says_how_much_water_the_motor_wants_and_what_tilting_does() throws IOException {
    String hung =
        ElectricBoat.JSON.replace(
            "\"claimedHours\": 5",
            "\"reachesBelow\": 0.4, \"tiltedBelow\": -0.3, \"tiltsAft\": 0.5");
    shell.run("range", "--boat", boat(hung));
    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains("In shallow water, with nobody aboard")
        .contains("With the motor down it needs 0.4")
        .contains("Tilted, the motor is clear of the water.")
        .contains("Tilting it takes 45 Nm aft. Down: lowest edge 0.")
        .contains(". Tilted: lowest edge 0.")
        .contains(" stern down, upright.");
    fitsTheTerminal(shell.out());
  }

  /** The walk asks once whether the battery is fastened, as kit; the page must not ask again. */
  @Test
  void a_battery_fastened_as_kit_is_held_where_nobody_said_otherwise() throws IOException {
    String silent = ElectricBoat.JSON.replace("\"strapped\": true,", "");
    assertThat(shell.run("wiring", "--boat", boat(silent))).isZero();
    String loose = silent.replaceFirst("(\"litres\": 10,\\s+\"fastened\": )true", "$1false");
    assertThat(loose).isNotEqualTo(silent);
    TestShell other = TestShell.open();
    assertThat(other.run("wiring", "--boat", boat(loose))).isEqualTo(1);
    assertThat(other.out())
        .contains("The battery is not held by tray and strap, as far as anybody");
  }

  /** As somebody looked: the shipped point of the kind of battery, and the one of its strap. */
  @Test
  void what_was_found_at_look_counts_for_running_time_and_wires() throws IOException {
    String met = ElectricBoat.JSON.replace(", \"claimedHours\": 5", "");
    shell.run("range", "--boat", boat(met));
    assertThat(shell.out()).contains("At setting 3 the battery lasts 30 min");
    TestShell range = TestShell.open();
    range.run("range", "--boat", boat(looked(met, "battery-kind")));
    // DERIVED: a fifth instead of half of 30.08 min.
    assertThat(range.out())
        .contains("At setting 3 the battery lasts 12 min")
        .contains("since a battery made to start an");

    TestShell wiring = TestShell.open();
    assertThat(wiring.run("wiring", "--boat", boat(looked(met, "battery-kind")))).isEqualTo(1);
    assertThat(wiring.out()).contains("* The battery is made to start an engine, and drives the");
    TestShell loose = TestShell.open();
    assertThat(loose.run("wiring", "--boat", boat(looked(met, "battery-held")))).isEqualTo(1);
    assertThat(loose.out()).contains("* The battery is not held by tray and strap.");
  }

  private static String looked(String json, String id) {
    Boat boat = BoatFile.parse(json, "boat.json");
    return BoatFile.write(
        PointQuestion.of(ChecklistFile.bundledWith(List.of()), boat).stream()
            .filter(q -> q.point().id().equals(id))
            .findFirst()
            .map(
                q ->
                    q.answered(
                        PointCondition.NOT_AS_IT_SHOULD_BE, "", "Iris", TestShell.TODAY, boat))
            .map(answer -> PointQuestion.with(boat, answer))
            .orElseThrow());
  }

  /**
   * By hand: 100 kg on 4.8 m² of bottom draw 0.021 m, 76 kg 0.016 m; 2 m of stern at 0.4 and 0.2
   * degrees are 0.014 m and 0.007 m more, off 0.45 m of side.
   */
  @Test
  void wiring_sets_the_boat_with_its_battery_next_to_the_boat_without() throws IOException {
    shell.run("wiring", "--boat", boat(ElectricBoat.JSON));
    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains("It weighs 24 kg, and under water still 14 kg.")
        .contains("* With it: lowest edge 0.41 m above the water (rail, near aft), ")
        .contains("* Ashore: lowest edge 0.42 m above the water (rail, near aft), ");
  }

  @Test
  void good_wires_are_drawn_and_nothing_is_to_be_put_right() throws IOException {
    assertThat(shell.run("wiring", "--boat", boat(ElectricBoat.JSON))).isZero();

    assertThat(shell.out())
        .contains("Nothing found against these wires within the sums below.")
        .contains(
            """
            [ battery 12 V, 80 Ah ]
                |
                |  charging, before the main switch and fuse:
                |
                +--[fuse 5 A]--<< controller --[fuse 5 A]--<< panel, 50 W
                |
            [main fuse 60 A] 0.10 m from the battery
                |
                / main switch: red key next to the battery
                |
                +--[fuse 60 A]--/ plug at the transom --> motor, 45 A
                |       10 mm2, 2.00 m there and as much back
                |
                +--[fuse 2 A]--/ rocker switch --> cabin lamp, 0.5 A
                |       AWG 14, 3.00 m there and as much back
            """)
        .contains(
            """
            The main wire (AWG 8) carries all of it, 46 A, and may carry 80.0 A where it
            lies. Its fuse is to be 57 A or more, and no more than the wire may carry.
            """);
    fitsTheTerminal(shell.out());
  }

  /**
   * DERIVED: 45.5 A want 56.9 A or more, sold as 60, on 10 mm2 in a bundle: AWG 8 at 60 C carries
   * 55 A, six tenths of it 33; AWG 4 carries 105, 63 A of them.
   */
  @Test
  void a_main_fuse_is_held_against_its_wire_and_all_that_is_drawn() throws IOException {
    String good = ElectricBoat.JSON;
    for (String[] each :
        new String[][] {
          {"\"fuse\": 60 }", "\"fuse\": 0 }", "Main wire: no fuse. "},
          {
            "\"fuse\": 60 }",
            "\"fuse\": 50 }",
            "Main wire: the fuse of 50 A is less than 1.25 times the 46 A drawn"
          },
          {
            "\"fuse\": 60 }",
            "\"fuse\": 100 }",
            "Main wire: the fuse of 100 A lets more through than the 80.0 A this wire may carry"
          },
          {
            "\"alone\": true, \"fuseAt\": 0.1",
            "\"alone\": true, \"fuseAt\": 0.3",
            "Main wire: the fuse is 0.3 m from the battery"
          },
          {
            "\"alone\": true, \"fuseAt\": 0.1,",
            "\"alone\": true,",
            "Main wire: nobody said how far from the battery its fuse is"
          },
          {"\"awg\": 8, ", "", "Main wire: nobody said how thick the wire is"}
        }) {
      assertThat(good).contains(each[0]);
      TestShell wiring = TestShell.open();
      assertThat(
              wiring.run(
                  "wiring",
                  "--boat",
                  boat(good.replaceFirst(java.util.regex.Pattern.quote(each[0]), each[1]))))
          .isEqualTo(1);
      assertThat(wiring.out().replaceAll("\\s+", " "))
          .contains("One thing is to be put right before the battery is connected.")
          .contains("* " + each[2]);
      fitsTheTerminal(wiring.out());
    }
  }

  @Test
  void what_was_only_guessed_is_said_to_be_a_judgement() throws IOException {
    String silent =
        ElectricBoat.JSON
            .replace("\"since\": \"2024-04-01\", ", "")
            .replace(", \"hoursADay\": 3", "");
    shell.run("range", "--boat", boat(silent));
    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains("since when it is used. 6 years count (judgement).")
        .contains("how cold the battery is. 5 °C counts (judgement).")
        .contains("take 4 Ah a day, each for the hours stated or 8 (judgement).")
        .contains("at a guessed 0.7 m/s (judgement).");
  }

  /** 25 less 12 degrees, a hundredth each: 0.87. */
  @Test
  void a_battery_in_stated_waters_is_said_to_be_as_cold_as_they_are() throws IOException {
    String cold =
        ElectricBoat.JSON.replace(
            "\"water\": \"fresh\",", "\"water\": \"fresh\", \"waters\": { \"celsius\": 12 },");
    shell.run("range", "--boat", boat(cold));
    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains("and the cold 87 %, as cold as the water, 12 °C (common practice");
  }

  @Test
  void of_a_battery_of_ten_years_it_says_why_nothing_is_worked_out() throws IOException {
    String old = ElectricBoat.JSON.replace("2024-04-01", "2016-05-01");
    assertThat(shell.run("range", "--boat", boat(old))).isEqualTo(1);
    assertThat(shell.out())
        .startsWith(
            """
            Butter Dish
            ===========
            Running time is not worked out: the battery is 10 years old or more, and of one
            so old nothing counts (judgement).
            * Nobody can tell by its label what it still holds. Have its charge measured, or
              take a newer one, and enter that charge and that day. To enter it type refit,
              answer electrics, then battery (by hand in a boat file: help electrics).
            """)
        .doesNotContain("turn back");
    fitsTheTerminal(shell.out());
  }

  /** DERIVED: on the way out for a third of 3 minutes is no whole minute, and not none. */
  @Test
  void less_than_a_minute_is_told_in_seconds() throws IOException {
    String weak = ElectricBoat.JSON.replace("\"ampHours\": 80", "\"ampHours\": 10");
    shell.run("range", "--boat", boat(weak));
    assertThat(shell.out())
        .containsPattern("\\n4.0 m/s +\\d\\d s, \\d+ m ")
        .doesNotContain(" 0 min");
  }

  @Test
  void what_the_current_rests_on_is_said_for_each_way_it_is_known() throws IOException {
    String unread =
        ElectricBoat.JSON.replaceAll(",\\s+\"ampsThere\": \\d+, \"ampsBack\": \\d+", "");
    shell.run("range", "--boat", boat(unread));
    assertThat(shell.out()).contains("* The motor's current at full power: as its plate has it.");
    String shaft =
        unread
            .replace("\"thrust\": 200, \"amps\": 45, ", "")
            .replace(
                "\"water\": \"fresh\",",
                "\"water\": \"fresh\", \"propulsion\": { \"kind\": \"outboard\", \"kilowatts\": 0.4 },");
    TestShell guessed = TestShell.open();
    guessed.run("range", "--boat", boat(shaft));
    assertThat(guessed.out().replaceAll("\\s+", " "))
        .contains(
            "full power: a guess: six tenths of what it takes come out at its shaft (judgement)");
    TestShell read = TestShell.open();
    read.run("range", "--boat", boat(ElectricBoat.JSON));
    assertThat(read.out()).doesNotContain("The motor's current at full power");
  }

  /** DERIVED: 45 A of its plate and 0.5 A of the lamp want 56.9 A, though its wires are unknown. */
  @Test
  void a_motor_of_whose_wires_nobody_spoke_counts_for_the_main_fuse() throws IOException {
    String lamps =
        ElectricBoat.JSON.replaceAll("\\{ \"name\": \"motor\", \"use\"(?s).*?\\},\\s+", "");
    assertThat(shell.run("wiring", "--boat", boat(lamps))).isEqualTo(1);
    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains("One thing is to be put right before the battery is connected.")
        .contains(
            "* The motor's own wires are not stated, so nothing of them is worked out. To enter")
        .contains("* All at once they draw 46 A at 12 V, the motor with them.")
        .contains("carries all of it, 46 A,");
    TestShell small = TestShell.open();
    small.run("wiring", "--boat", boat(lamps.replace("\"fuse\": 60 }", "\"fuse\": 50 }")));
    assertThat(small.out())
        .contains("Main wire: the fuse of 50 A is less than 1.25 times the 46 A");
  }

  @Test
  void a_motor_without_plate_and_wires_is_not_said_to_be_among_what_is_drawn() throws IOException {
    String lamps =
        ElectricBoat.JSON
            .replaceAll("\\{ \"name\": \"motor\", \"use\"(?s).*?\\},\\s+", "")
            .replace("\"thrust\": 200, \"amps\": 45, ", "");
    shell.run("wiring", "--boat", boat(lamps));
    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains("they draw 0.5 A at 12 V, without the motor, since nobody said what it draws.");
  }

  /** DERIVED: 1.787e-8 x 2 x 2 m x 45.5 A / 8.366 mm2 = 0.389 V, more than 0.36. */
  @Test
  void a_main_wire_that_loses_too_much_is_named_with_each_circuit_behind_it() throws IOException {
    String far = ElectricBoat.JSON.replace("\"awg\": 8,", "\"awg\": 8, \"there\": 2,");
    assertThat(shell.run("wiring", "--boat", boat(far))).isEqualTo(1);
    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains(
            "* Motor: the wire loses 0.39 V of 12 V, 0.39 V of it in the main wire with everything"
                + " on, more than 3 %. It wants a fuse of 60 A within 2.17 m of the battery, a"
                + " thicker main wire, and a switch in reach.")
        .contains(" motor thicker main 0.75 mm2,");
    fitsTheTerminal(shell.out());
  }

  /** Its power is stated and no plate; a boat with petrol aboard has no such wires. */
  @Test
  void an_outboard_without_wires_is_named_unless_it_burns_petrol() throws IOException {
    String lamps =
        ElectricBoat.JSON
            .replaceAll("\\{ \"name\": \"motor\", \"use\"(?s).*?\\},\\s+", "")
            .replaceAll("(?s)\"motor\": \\{.*?\\},\\s+\"runs\": \\[.*?\\],", "")
            .replace(
                "\"water\": \"fresh\",",
                "\"water\": \"fresh\", \"propulsion\": { \"kind\": \"outboard\", \"kilowatts\": 0.5 },");
    assertThat(shell.run("wiring", "--boat", boat(lamps))).isEqualTo(1);
    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains("* The motor's own wires are not stated")
        .contains("they draw 0.5 A at 12 V, without the motor, since nobody said what it draws.");
    TestShell petrol = TestShell.open();
    assertThat(petrol.run("wiring", "--boat", boat(lamps.replace("\"oars\"", "\"petrol can\""))))
        .isZero();
    assertThat(petrol.out()).contains("they draw 0.5 A at 12 V.");
  }

  @Test
  void that_no_main_fuse_is_stated_is_said() throws IOException {
    String none = ElectricBoat.JSON.replaceAll("(?s)\"mainWire\": \\{.*?\\},\\s+", "");
    assertThat(shell.run("wiring", "--boat", boat(none))).isEqualTo(1);
    assertThat(shell.out())
        .contains(
            """
            * No main fuse is stated, so the wire that carries everything counts as
              unguarded. It wants a fuse of 60 A within 0.17 m of the battery, wire of
              25 mm2, AWG 4 or thicker, and a switch in reach.
            """)
        .contains("\n(main fuse ?)\n    |\n    / main switch: red key next to the battery\n")
        .doesNotContain("The main wire (");
    fitsTheTerminal(shell.out());
  }

  /** Behind a main fuse 0.5 m of main wire lead to the block where the lamp's fuse sits. */
  @Test
  void behind_a_good_main_fuse_a_fuse_counts_from_where_its_wire_begins() throws IOException {
    String block =
        ElectricBoat.JSON.replace("\"fuse\": 2, \"fuseAt\": 0.1", "\"fuse\": 2, \"fuseAt\": 0.6");
    assertThat(shell.run("wiring", "--boat", boat(block))).isEqualTo(1);
    assertThat(shell.out()).contains("* Cabin lamp: the fuse is 0.6 m from the battery");
    String led = block.replace("\"awg\": 8,", "\"awg\": 8, \"there\": 0.5,");
    TestShell main = TestShell.open();
    assertThat(main.run("wiring", "--boat", boat(led))).isZero();
    TestShell bad = TestShell.open();
    assertThat(bad.run("wiring", "--boat", boat(led.replace("\"fuse\": 60 }", "\"fuse\": 0 }"))))
        .isEqualTo(1);
    assertThat(bad.out()).contains("* Cabin lamp: the fuse is 0.6 m from the battery");
  }

  /** DERIVED: 45 A over 2 m each way and 0.36 V want 8.94 mm2, more than the 8.37 of AWG 8. */
  @Test
  void each_fault_of_the_system_is_named_with_what_it_wants() throws IOException {
    String bad =
        ElectricBoat.JSON
            .replace("\"strapped\": true", "\"strapped\": false")
            .replace("\"terminalsCovered\": true", "\"terminalsCovered\": false")
            .replace("\"starter\": false", "\"starter\": true")
            .replace("\"batteryFuse\": 5", "\"batteryFuse\": 0")
            .replace("\"panelFuse\": 5", "\"panelFuse\": 0")
            .replace("\"batteryStaysOn\": true", "\"batteryStaysOn\": false")
            .replace("\"awg\": 14", "\"mm2\": 0.75")
            .replace("\"mainSwitch\": \"red key next to the battery\",", "")
            .replace("\"fuse\": 60, \"fuseAt\": 0.15", "\"fuse\": 0");
    assertThat(shell.run("wiring", "--boat", boat(bad))).isEqualTo(1);

    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains("9 things are to be put right before the battery is connected.")
        .contains("* The battery's terminals are not covered.")
        .contains("* The battery is not held by tray and strap.")
        .contains("* The battery is made to start an engine, and drives the motor here.")
        .contains("* No main switch is named.")
        .contains("* Solar panel: no fuse between controller and battery. The battery feeds")
        .contains("* Solar panel: no fuse between panel and controller. ")
        .contains("* Solar panel: the battery is taken off the controller in sun. ")
        .containsPattern("cabin lamp +0.5 A 3.00 m 0.75 mm2 0.08 V, 0.6 % nothing")
        .contains(
            "* Motor: no fuse. A wire that chafes through burns until the battery is empty. It wants"
                + " a fuse of 60 A within 0.17 m of the battery, wire of 10 mm2, AWG 6 or thicker,"
                + " and a switch in reach.");
    fitsTheTerminal(shell.out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"panelFuse\": 5,|no fuse between panel and controller is stated",
        "\"batteryFuse\": 5,|no fuse between controller and battery is stated",
        "\"batteryStaysOn\": true|nobody said that the battery stays on the controller in sun"
      })
  void what_nobody_said_of_the_panel_counts_as_missing(String said, String words)
      throws IOException {
    String silent = ElectricBoat.JSON.replaceAll(said + "\\s*", "").replaceAll(",\\s*}", " }");
    assertThat(silent).isNotEqualTo(ElectricBoat.JSON);
    assertThat(shell.run("wiring", "--boat", boat(silent))).isEqualTo(1);
    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains("One thing is to be put right before the battery is connected.")
        .contains("* Solar panel: " + words);
  }

  @Test
  void a_panel_carried_ashore_gives_nothing_back() throws IOException {
    String ashore = ElectricBoat.JSON.replace("{ \"name\": \"panel\",", "{ \"name\": \"plank\",");
    shell.run("range", "--boat", boat(ashore));
    assertThat(shell.out()).doesNotContain("What the panel gives back");
  }

  @Test
  void both_speak_the_units_that_were_asked_for() throws IOException {
    String file = boat(ElectricBoat.JSON);
    shell.run("range", "--boat", file, "--units", "feet");
    assertThat(shell.out()).contains(" yards").contains(" mph").doesNotContain("m/s");
    fitsTheTerminal(shell.out());
    TestShell wiring = TestShell.open();
    wiring.run(
        "wiring",
        "--boat",
        boat(ElectricBoat.JSON.replace("\"there\": 3", "\"there\": 4.5")),
        "--units",
        "feet");
    assertThat(wiring.out())
        .contains("6 ft 7 in there and as much back")
        .contains("7 in")
        .contains("cabin lamp         0.5 A    14 ft 10 in  AWG 14 ");
    fitsTheTerminal(wiring.out());
  }
}
