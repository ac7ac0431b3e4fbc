package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.ConfirmedMeasurement;
import thwartwise.hull.Station;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

/** What was measured and cannot be is told at its question, with what was probably meant. */
class DoubtfulMeasurementsTest {
  private static final Sheet FULL = Sheet.full(true);

  /** A skiff of five plumb stations, half-breadth of chine and rail at each. */
  private static Sheet skiff() {
    double[][] lines = {
      {0, 0.46, 0.57}, {0.9, 0.52, 0.65}, {1.8, 0.54, 0.68}, {2.7, 0.40, 0.54}, {3.6, 0.05, 0.10}
    };
    Map<String, String> typed = new LinkedHashMap<>(Sheet.small().typed());
    typed.keySet().removeIf(key -> key.startsWith("hull.station"));
    typed.put("hull.length", "3.6");
    typed.put("hull.stations", "5");
    typed.put("hull.points", "3");
    typed.put("hull.mass", "55");
    typed.put("hull.floor", "0.03");
    for (int i = 0; i < lines.length; i++) {
      String key = "hull.station." + (i + 1);
      typed.put(key + ".upright", "yes");
      typed.put(key + ".x", Double.toString(lines[i][0]));
      typed.put(key + ".point.1.z", "0.02");
      typed.put(key + ".point.2.y", Double.toString(lines[i][1]));
      typed.put(key + ".point.2.z", "0.04");
      typed.put(key + ".point.3.y", Double.toString(lines[i][2]));
      typed.put(key + ".point.3.z", "0.45");
    }
    return new Sheet(typed);
  }

  private static Reply.Refused refused(Sheet sheet, String key, String typed) {
    return (Reply.Refused) Sheet.WALK.take(sheet.upTo(key), typed);
  }

  @Test
  void the_full_breadth_is_doubted_where_the_stations_aft_lead_to_half_of_it() {
    Reply.Refused asked = refused(skiff(), "hull.station.4.point.3.y", "1.07");
    assertThat(asked.reason())
        .isEqualTo(
            "1.07 m is far beyond what the stations aft lead to (0.71 m). Was the full breadth"
                + " taped? Did you mean 0.535 m?");
    assertThat(asked.meant()).hasValue("0.535 m");
    assertThat(asked.insisted()).hasValue("1.07 indeed");
  }

  @Test
  void a_decimal_point_that_slipped_is_doubted_in_the_middle_and_not_at_the_stem() {
    Reply.Refused asked = refused(skiff(), "hull.station.3.point.3.y", "0.068");
    assertThat(asked.reason())
        .isEqualTo(
            "68 mm is far short of what the stations aft lead to (0.73 m). Did the decimal point"
                + " slip? Did you mean 0.68 m?");
    assertThat(asked.meant()).hasValue("0.68 m");
    assertThat(skiff().accepted("hull.station.5.point.3.y", "0.01")).endsWith("10 mm");
  }

  @Test
  void a_breadth_that_no_boat_so_short_has_is_doubted_at_the_first_station() {
    Reply.Refused asked = refused(skiff(), "hull.station.1.point.3.y", "1.2");
    assertThat(asked.reason())
        .isEqualTo(
            "1.20 m would make a boat too broad for its length (1.074 m). Was the full breadth"
                + " taped? Did you mean 0.60 m?");
  }

  /** At the second station nothing tells yet; the two after it do. */
  @Test
  void an_earlier_station_is_asked_about_as_soon_as_those_after_it_show_it() {
    Sheet doubled =
        skiff()
            .with("hull.station.2.point.2.y", "1.04")
            .with("hull.station.2.point.3.y", "1.30 indeed");
    String chine = "hull.outOfLine.2.2.y";
    List<Answer> answers = doubled.upTo(chine);
    Question question = Sheet.open(answers);
    assertThat(question.key()).startsWith(chine + "#");
    assertThat(question.prompt()).isEqualTo("Station 2, chine, half-breadth (mend, keep):");
    assertThat(question.how())
        .containsExactly(
            "1.04 m is about twice what its neighbours give: was the full breadth taped?",
            "mend: 0.52 m is taken.",
            "keep: it stays as typed, and its reason is asked for at the end.");
    assertThat(answers).extracting(Answer::question).contains("hull.station.4.point.3.z");
    assertThat(answers).extracting(Answer::question).doesNotContain("hull.station.5.name");
    Boat mended = doubled.with(chine, "mend").with("hull.outOfLine.2.3.y", "yes").boat();
    assertThat(mended.hull().stations()).isEqualTo(skiff().boat().hull().stations());
    assertThat(mended.confirmedMeasurements()).isEmpty();
  }

  @Test
  void a_reading_that_is_kept_needs_a_reason_at_the_end_and_without_one_stays_unkept() {
    Sheet doubled =
        skiff()
            .with("hull.station.2.point.2.y", "1.04")
            .with("hull.station.2.point.3.y", "1.30 indeed")
            .with("hull.outOfLine.2.2.y", "keep")
            .with("hull.outOfLine.2.3.y", "keep");
    Station second = doubled.boat().hull().stations().get(1);
    assertThat(second.portRail().y()).isEqualTo(1.30);
    assertThat(doubled.boat().confirmedMeasurements()).isEmpty();
    Question asked = Sheet.open(doubled.upTo("kept.station:station 2"));
    assertThat(asked.prompt()).isEqualTo("Kept, station \"station 2\", because [Enter: not kept]:");
    Boat kept = doubled.with("kept.station:station 2", "it has wings").boat();
    assertThat(kept.confirmedMeasurements())
        .contains(
            new ConfirmedMeasurement(
                "station:station 2",
                "it has wings",
                Optional.of("0.000 0.020, 1.040 0.040, 1.300 0.450")));
  }

  /** A reason given for one reading is none for another of the same station. */
  @Test
  void what_was_kept_is_asked_again_once_the_station_is_measured_otherwise() {
    Sheet kept =
        skiff()
            .with("hull.station.2.point.2.y", "1.04")
            .with("hull.station.2.point.3.y", "1.30 indeed")
            .with("hull.outOfLine.2.2.y", "keep")
            .with("hull.outOfLine.2.3.y", "keep")
            .with("kept.station:station 2", "it has wings");
    List<Answer> answers = new ArrayList<>(kept.toTheEnd());
    assertThat(Sheet.WALK.next(answers)).isInstanceOf(Step.Done.class);
    answers.replaceAll(
        a ->
            a.question().equals("hull.station.2.point.3.y")
                ? new Answer(a.question(), "1.25 indeed")
                : a);
    assertThat(Sheet.open(answers).key()).startsWith("hull.outOfLine.2.3.y#");
    List<Answer> again = Sheet.answer(answers, "keep");
    while (!Sheet.open(again).key().startsWith("kept.station:station 2#")) {
      again = Sheet.answer(again, "");
    }
    assertThat(Sheet.boat(Sheet.answer(again, "")).confirmedMeasurements()).isEmpty();
  }

  @Test
  void a_hull_lighter_than_its_skin_is_doubted_and_ten_times_of_it_offered() {
    Reply.Refused asked = refused(skiff(), "hull.mass", "8");
    assertThat(asked.reason())
        .matches(
            "8 kg is too light for such a hull: its skin alone, \\d\\.\\d m2, comes to about"
                + " \\d\\d\\.\\d\\d kg\\. Did you mean 80 kg\\?");
    assertThat(asked.meant()).hasValue("80 kg");
    assertThat(asked.insisted()).hasValue("8 indeed");
  }

  @Test
  void kilograms_a_litre_are_offered_as_a_density() {
    Reply.Refused asked = refused(FULL, "hull.density", "0.9");
    assertThat(asked.reason())
        .isEqualTo(
            "No material is so light; was it read as kilograms a litre? Did you mean 900 kg/m³?");
    assertThat(asked.meant()).hasValue("900");
    assertThat(asked.insisted()).isEmpty();
    assertThat(refused(FULL, "hull.density", "250").reason())
        .isEqualTo(
            "Hulls are hardly made of that: soaked cedar is 500, a foam sandwich with its"
                + " skins 300, steel 7850 kg/m³. Weigh it again.");
    assertThat(
            FULL.with("hull.density", "250 indeed").with("hull.mass", "30").boat().hull().density())
        .isEqualTo(250);
  }

  @Test
  void kit_under_the_keel_is_doubted_and_its_sign_turned() {
    Reply.Refused asked = refused(FULL, "kit.1.z", "-0.5");
    assertThat(asked.reason())
        .isEqualTo("-0.50 m is under the keel, where nothing is carried. Did you mean 0.50 m?");
    assertThat(asked.meant()).hasValue("0.5 m");
  }
}
