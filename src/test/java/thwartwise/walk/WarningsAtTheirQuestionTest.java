package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Reply;

/** What looks wrong is told where it is typed, and not only at the end of the walk. */
class WarningsAtTheirQuestionTest {
  private static final Sheet FULL = Sheet.full(true);

  private static Reply.Refused refused(Sheet sheet, String key, String typed) {
    return (Reply.Refused) Sheet.WALK.take(sheet.upTo(key), typed);
  }

  @Test
  void a_battery_ten_times_too_heavy_is_doubted_with_what_was_meant() {
    Reply.Refused asked = refused(FULL, "kit.1.mass", "180");
    assertThat(asked.reason())
        .isEqualTo("180 kg is not what such a thing weighs (0.5 kg to 75 kg). Did you mean 18 kg?");
    assertThat(asked.meant()).hasValue("18 kg");
    assertThat(asked.insisted()).hasValue("180 indeed");
  }

  @Test
  void kit_far_outside_the_hull_is_doubted() {
    String outside = "That is 0.80 m outside the hull, where nothing is carried. Measure it again.";
    assertThat(refused(FULL, "kit.1.x", "-0.8").reason()).isEqualTo(outside);
    // Near the stem the rail is a hand from the middle line.
    assertThat(refused(FULL.with("kit.1.x", "3.5"), "kit.1.y", "1").reason())
        .matches(
            "That is 0\\.\\d+ m outside the hull, where nothing is carried\\. Measure it again\\.");
    assertThat(refused(FULL, "kit.1.z", "2.3").reason()).contains("outside the hull");
  }

  @Test
  void a_wide_lid_low_in_the_hull_is_doubted() {
    Reply.Refused asked = refused(FULL.with("opening.1.z", "0.1"), "opening.1.closedBy", "lid");
    assertThat(asked.reason())
        .isEqualTo(
            "A hole 0.305 m wide, 0.10 m up, lies under water; nobody relies on a lid wider than"
                + " 0.15 m there. Measure its edge again, or say no.");
    assertThat(asked.meant()).hasValue("no");
  }

  @Test
  void a_seat_inside_its_box_is_doubted() {
    Reply.Refused asked = refused(FULL, "place.1.z", "0.2");
    assertThat(asked.reason())
        .isEqualTo(
            "0.20 m is inside the chamber \"midships thwart\", whose top is 0.279 m up. Is that the"
                + " seat?");
    assertThat(asked.meant()).hasValue("0.2794 m");
  }

  @Test
  void a_seat_above_the_rail_is_doubted() {
    Reply.Refused asked = refused(FULL, "place.1.z", "0.7");
    assertThat(asked.reason())
        .isEqualTo(
            "0.70 m is too high to sit on (0.50 m). Centimetres for inches? Did you mean 0.276 m?");
  }

  @Test
  void two_scales_that_come_to_too_little_are_doubted_together() {
    Sheet scales =
        Sheet.small()
            .with("hull.weighed", "scales")
            .with("hull.scale.aft.x", "0.3")
            .with("hull.scale.aft.mass", "3")
            .with("hull.scale.fore.x", "2.0");
    assertThat(refused(scales, "hull.scale.fore.mass", "4").reason())
        .matches(
            "Both ends together: 7 kg is too light for such a hull: its skin alone, \\d\\.\\d m2,"
                + " comes to about \\d\\d\\.?\\d* kg\\. .*");
  }

  /** Heights in centimetres for inches: 0.44, 0.42 and 0.50 become 1.12, 1.07 and 1.27. */
  @Test
  void a_shape_out_of_proportion_is_told_when_the_last_station_is_measured() {
    Sheet high =
        Sheet.small()
            .with("hull.station.1.point.2.z", "1.12")
            .with("hull.station.2.point.2.z", "1.07")
            .with("hull.station.3.point.2.z", "1.27");
    Question asked = Sheet.open(high.upTo("hull.doubt.depth"));
    assertThat(asked.prompt())
        .isEqualTo("This looks wrong, depth of the hull for its breadth (keep) [Enter: keep]:");
    assertThat(String.join(" ", asked.how()))
        .isEqualTo(
            "depth of the hull amidships as a share of its breadth: 90 %, limit 60 %; was"
                + " the full breadth taped where half is asked for, or were heights and breadths"
                + " written in different units? keep: it stays as typed, and its reason is asked"
                + " for at the end. Else type back, or list and change with a number, and measure"
                + " it again.");
  }
}
