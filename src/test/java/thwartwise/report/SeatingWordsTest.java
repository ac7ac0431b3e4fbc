package thwartwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Place;
import thwartwise.boat.Posture;
import thwartwise.geometry.Span;
import thwartwise.inspection.Recommendation;
import thwartwise.inspection.Recommendation.CrewLimit;
import thwartwise.page.Page;
import thwartwise.page.TextForm;

class SeatingWordsTest {
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
    assertThat(words(List.of("port bench", "port bench")))
        .contains("Not like this: two on port bench with nobody on starboard bench.");
  }

  @Test
  void people_on_both_sides_or_on_none_are_told_of_as_they_sit() {
    assertThat(words(List.of("port bench", "starboard bench")))
        .contains("Not like this: one on port bench and one on starboard bench.");
    assertThat(words(List.of("thwart", "port bench")))
        .contains(
            "Not like this: one on thwart and one on port bench with nobody on"
                + " starboard bench.");
  }

  // The way of sitting that leaves most besides need not be the one that carries the heaviest.
  @Test
  void what_may_be_besides_is_told_with_the_way_they_sit_then() {
    List<String> thwart = List.of("port bench", "thwart");
    List<String> benches = List.of("port bench", "starboard bench");
    assertThat(
            limits(
                new CrewLimit(
                    2,
                    120,
                    30,
                    benches,
                    List.of(benches),
                    List.of(new Recommendation.Lighter(benches, 110)))))
        .contains(
            "Two people: up to 120 kg each, and 30 kg besides while nobody is over 95 kg. With that"
                + " besides only like this: one on port bench and one on starboard"
                + " bench.")
        .contains(
            "Lighter people also like this: one on port bench and one on starboard"
                + " bench up to 110 kg each.");
    List<List<String>> others =
        Seatings.of(2, PLACES).stream().filter(s -> !s.equals(thwart)).toList();
    assertThat(
            limits(
                new CrewLimit(
                    2, 120, 30, thwart, others, List.of(new Recommendation.Lighter(benches, 110)))))
        .contains(
            "With that besides only like this: one on port bench and one on thwart."
                + " So heavy, too, only like this. Lighter people");
  }

  private static String words(List<String> excluded) {
    return limits(new CrewLimit(2, 90, List.of(excluded)));
  }

  private static String limits(CrewLimit limit) {
    Recommendation crew = recommended(limit);
    Page page = new Page();
    SeatingWords.limits(page, PLACES, crew);
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
        List.of());
  }
}
