package thwartwise.plausibility;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.NamedEnd;
import thwartwise.boat.Place;
import thwartwise.boat.Place.Posture;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Span;
import thwartwise.measure.UnitFormat;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;
import thwartwise.report.PlausibilityWords;
import thwartwise.sampleboats.OrdinaryBoats;

/** A pram of 2.44 m whose middle thwart stands at 1.16 m, on the box from 1.02 to 1.30. */
class PlacePlausibilityTest {
  private static final Boat PRAM = OrdinaryBoats.all().get(0);

  private static List<PlausibilityFinding> of(Place... places) {
    BoatModel model = BoatModel.of(PRAM.withPlaces(List.of(places)), OrdinaryBoats.TODAY);
    return PlacePlausibility.of(model, new PlausibleLimits(RuleSetFile.cautiousDefault()));
  }

  private static Place at(String name, double x) {
    return new Place(name, x, 0.27, 0.3, 1);
  }

  private static String words(Place... places) {
    List<PlausibilityFinding> found = of(places);
    assertThat(found).hasSize(1).allMatch(PlausibilityFinding::withholds);
    assertThat(found.get(0).id())
        .isEqualTo(new PlausibilityId(PlausibilityTopic.PLACE_ALONG, found.get(0).id().name()));
    return PlausibilityWords.of(found.get(0), UnitFormat.METRIC);
  }

  /** 1.16 written as 0.116. */
  @Test
  void a_seat_in_the_transom_is_doubted() {
    assertThat(words(at("seat", 0.116)))
        .isEqualTo(
            "place \"seat\", from the nearer end of the hull to the middle of whoever sits there:"
                + " 0.11 m, limit 0.12 m; nobody has room there: measure it again from the"
                + " aft end of the hull, in the unit asked for");
    assertThat(of(at("seat", 0.2))).isEmpty();
  }

  /** 1.80 m written in feet and read as metres would be outside; 0.6 m comes to 1.97. */
  @Test
  void a_stern_seat_in_the_bow_is_doubted() {
    assertThat(words(at("stern seat", 1.97)))
        .isEqualTo(
            "place \"stern seat\", how far forward, as a share of the length: 81 %, limit"
                + " 60 %; it is named for the aft part: measure it again from the aft end of the"
                + " hull, in the unit asked for");
    assertThat(of(at("fore thwart", 0.6))).hasSize(1);
    assertThat(of(at("midships thwart", 0.4))).hasSize(1);
    assertThat(of(at("midships thwart", 2.1))).hasSize(1);
    assertThat(of(at("rowing thwart", 0.6))).isEmpty();
  }

  @Test
  void a_seat_off_the_box_of_its_name_is_doubted() {
    assertThat(words(at("middle thwart", 0.80)))
        .isEqualTo(
            "place \"middle thwart\", how far before or abaft the chamber of that name: 0.22 m,"
                + " limit 0.15 m; measure it again from the aft end of the hull, in the"
                + " unit asked for");
    assertThat(of(at("middle thwart", 0.90))).isEmpty();
  }

  @Test
  void two_thwarts_in_one_place_are_doubted_and_a_mat_before_one_is_not() {
    assertThat(words(at("thwart", 1.2), at("seat", 1.3)))
        .isEqualTo(
            "place \"seat\", between it and place \"thwart\" along the boat: 0.10 m, limit"
                + " 0.20 m; one lies on top of the other: measure it again from the aft end of the"
                + " hull, in the unit asked for");
    Span width = new Span(-0.3, 0.3);
    assertThat(
            of(
                at("thwart", 1.2),
                new Place("mat", new Span(1.3, 1.3), width, 0.05, 1, Posture.KNEELING),
                new Place("bench", new Span(0.4, 1.6), width, 0.3, 2, Posture.SITTING)))
        .isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"stern seat, middle", "fore and aft bench", "helm", "seat"})
  void a_name_of_more_parts_or_none_tells_nothing(String name) {
    assertThat(NamedEnd.of(name)).isEmpty();
  }
}
