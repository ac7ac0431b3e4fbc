package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Place;
import thwartwise.boat.Place.Posture;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.geometry.Span;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitSystem;
import thwartwise.page.Page;
import thwartwise.page.TextForm;

class SeatTableTest {
  private static final UnitFormat METRIC = new UnitFormat(UnitSystem.METRIC);

  private static final List<Place> PLACES =
      List.of(
          bench("port bench", new Span(0.3, 0.4)),
          bench("starboard bench", new Span(-0.4, -0.3)),
          new Place("thwart", 2.2, 0.25, 0.4, 1));

  private static Place bench(String name, Span across) {
    return new Place(name, new Span(1, 1.9), across, 0.25, 2, Posture.SITTING);
  }

  // Counts alone leave a stranger to guess what is wrong with two on a bench for two.
  @Test
  void people_on_one_side_are_told_of_with_the_side_that_is_empty() {
    assertThat(table(List.of("port bench", "port bench")))
        .contains("Never like this: port bench (2) with nobody on starboard bench.");
  }

  @Test
  void people_on_both_sides_or_on_none_are_told_of_as_they_sit() {
    assertThat(table(List.of("port bench", "starboard bench")))
        .contains("Never like this: port bench, starboard bench.");
    assertThat(table(List.of("thwart", "port bench")))
        .contains("Never like this: thwart, port bench with nobody on starboard bench.");
  }

  // The way of sitting that leaves most besides need not be the one that carries the heaviest.
  @Test
  void what_may_be_besides_is_told_with_the_way_they_sit_then() {
    List<String> benches = List.of("port bench", "starboard bench");
    CrewLimit limit =
        new CrewLimit(
            2,
            120,
            30,
            benches,
            List.of(benches),
            List.of(new Recommendation.Lighter(benches, 110)));
    assertThat(table(limit))
        .contains("2 people 120 kg 30 kg")
        .contains("with that extra weight only port bench, starboard bench")
        .contains("only while nobody is over 95 kg");
    assertThat(others(limit)).contains("Two people: port bench, starboard bench up to 110 kg.");
  }

  // Three up to 60 kg each, and on the same page the same three in a poorer seating up to 70 kg.
  @Test
  void no_seating_carries_more_than_its_row_in_an_older_record_either() {
    List<String> benches = List.of("port bench", "starboard bench");
    CrewLimit limit =
        new CrewLimit(
            2,
            60,
            0,
            List.of(),
            List.of(benches),
            List.of(new Recommendation.Lighter(benches, 70)));
    assertThat(others(limit)).contains("port bench, starboard bench up to 60 kg.");
  }

  @Test
  void the_way_that_leaves_most_is_not_named_twice_where_it_is_the_only_one() {
    List<String> thwart = List.of("port bench", "thwart");
    List<String> benches = List.of("port bench", "starboard bench");
    List<List<String>> not =
        Seatings.of(2, PLACES).stream().filter(s -> !s.equals(thwart)).toList();
    assertThat(
            table(
                new CrewLimit(
                    2, 120, 30, thwart, not, List.of(new Recommendation.Lighter(benches, 110)))))
        .contains("port bench, thwart")
        .doesNotContain("with that extra weight only");
  }

  @Test
  void every_way_and_none_are_said_in_a_word() {
    assertThat(table(new CrewLimit(2, 90, List.of()))).contains("any of the places");
    assertThat(table(new CrewLimit(2, 90, Seatings.of(2, PLACES)))).contains("no seating will do");
  }

  private static String table(List<String> excluded) {
    return table(new CrewLimit(2, 90, List.of(excluded)));
  }

  private static String others(CrewLimit limit) {
    return plain(SeatTable.others(PLACES, recommended(limit), METRIC));
  }

  private static String table(CrewLimit limit) {
    Page page = new Page();
    SeatTable.write(page, PLACES, recommended(limit), METRIC);
    return plain(page);
  }

  private static String plain(Page page) {
    return TextForm.of(page).replaceAll("[\\s\u00a0]+", " ");
  }

  private static Recommendation recommended(CrewLimit limit) {
    return new Recommendation(
        2,
        180,
        180,
        0,
        95,
        2,
        2,
        2,
        Optional.empty(),
        List.of(),
        limit.excludedSeatings(),
        List.of(limit),
        false,
        List.of(),
        List.of(),
        false);
  }

  // A boat of eight places has more than a hundred of them.
  @Test
  void no_more_seatings_that_nobody_may_have_are_named_than_are_read() {
    List<List<String>> many = IntStream.range(0, 13).mapToObj(i -> List.of("thwart " + i)).toList();
    assertThat(table(new CrewLimit(1, 120, many)))
        .contains("alone on thwart 11; or in any way not listed here.")
        .doesNotContain("thwart 12");
    assertThat(table(new CrewLimit(1, 120, many.subList(0, 12))))
        .contains("alone on thwart 11.")
        .doesNotContain("not listed");
  }
}
