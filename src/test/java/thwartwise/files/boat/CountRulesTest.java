package thwartwise.files.boat;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import thwartwise.json.UnusableInput;

class CountRulesTest {
  private static String places(int count, int people) {
    String one =
        "{ \"name\": \"seat %d\", \"x\": 1.0, \"z\": 0.3, \"halfWidth\": 0.2, \"people\": %d }";
    String all =
        IntStream.range(0, count)
            .mapToObj(i -> one.formatted(i, people))
            .collect(Collectors.joining(",", "\"places\": [", "],"));
    return WrongBoats.goodFile()
        .replaceFirst("(?s)\"aboard\": \\[.*?\\]", "\"aboard\": []")
        .replaceFirst("(?s)\"places\": \\[.*?\\],", all);
  }

  // With five thousand a search by recursion ran out of stack.
  @Test
  void thousands_of_places_are_refused_in_one_line() {
    assertThatThrownBy(() -> BoatFile.parse(places(5000, 1), "soup.json"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(
            "soup.json: 5000 places, and a boat of this size has at most 40. Give each bench and"
                + " thwart once, with how many people it takes.");
  }

  @Test
  void more_people_than_any_such_boat_takes_are_refused_in_one_line() {
    assertThatThrownBy(() -> BoatFile.parse(places(5, 5), "soup.json"))
        .hasMessage(
            "soup.json: the places take 25 people together, and a boat of this size has room for at"
                + " most 24. Write how many can sit at each place at once, each on 0.45 m.");
  }
}
