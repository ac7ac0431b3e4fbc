package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.boat.Place.Posture;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitSystem;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.PartProperties;
import thwartwise.measured.Property.Settable;
import thwartwise.record.SampleBoats;

class PropertyWordsTest {
  private static final UnitFormat FEET = new UnitFormat(UnitSystem.FEET_INCHES_POUNDS);

  @Test
  void what_is_known_and_has_a_label_stands_behind_a_thing() {
    Kit kit = new Kit("motor", 10, Vector3.ZERO, Optional.of(0.004), true, Optional.of("locker"));
    assertThat(PropertyWords.behind(BoatProperties.OF_KIT, kit, UnitFormat.METRIC))
        .isEqualTo(", in locker");
    assertThat(
            PropertyWords.behind(
                BoatProperties.OF_KIT, kit.withWorkedFrom("stern seat"), UnitFormat.METRIC))
        .isEqualTo(", in locker, worked from the stern seat");
  }

  @Test
  void a_posture_is_told_where_it_is_not_the_usual_one() {
    Place seat = new Place("thwart", 1, 0.3, 0.4, 2);
    Place pad = new Place("pad", new Span(1, 1), new Span(-0.2, 0.2), 0.05, 1, Posture.KNEELING);
    assertThat(PropertyWords.behind(PartProperties.OF_PLACE, seat, UnitFormat.METRIC)).isEmpty();
    assertThat(PropertyWords.behind(PartProperties.OF_PLACE, pad, UnitFormat.METRIC))
        .isEqualTo(", people kneeling");
  }

  @Test
  void a_value_is_told_as_it_was_measured_in_the_units_of_the_reader() {
    var rows = BoatProperties.OF_BOAT.stream().map(Settable::property).toList();
    var boat = SampleBoats.with("\"kit\":", "\"bailer\": 8.75, \"trailer\": 300, \"kit\":");
    assertThat(told(PropertyWords.of(rows, boat, UnitFormat.METRIC).toList()))
        .containsExactly(
            "For bailing: a bailer of 8.75 litres",
            "On the road: a trailer or rack that may carry 300 kg");
    // 8.75 l / 3.785411784 l = 2.31 US gallons; 300 kg / 0.45359237 kg = 661.4 lb.
    assertThat(told(PropertyWords.of(rows, boat, FEET).toList()))
        .containsExactly(
            "For bailing: a bailer of 2.3 US gallons",
            "On the road: a trailer or rack that may carry 661.4 lb");
  }

  private static List<String> told(List<String> lines) {
    return lines.stream().map(line -> line.replace(UnitFormat.TIED, " ")).toList();
  }
}
