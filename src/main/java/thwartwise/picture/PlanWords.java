package thwartwise.picture;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.boat.Space;

/** The words of the boat from above, and how its chambers are told apart. */
record PlanWords(Scene scene) {
  /** More things than this have no numbers, which would run into each other. */
  static final int MOST_NUMBERS = 22;

  static Hatching state(Space space) {
    if (space.counting().share() > 0) {
      return Hatching.COUNTS;
    }
    return space.counting().ifProven() > 0 ? Hatching.CLAIMED : Hatching.OPEN;
  }

  static String letter(int place) {
    return place < 26 ? Character.toString('A' + place) : "";
  }

  Map<Hatching, List<Space>> byState() {
    return scene.craft().spaces().stream()
        .collect(
            Collectors.groupingBy(
                PlanWords::state, () -> new EnumMap<>(Hatching.class), Collectors.toList()));
  }

  String alternative() {
    String chambers =
        byState().entrySet().stream()
            .map(e -> e.getKey().word() + " " + e.getValue().size())
            .collect(Collectors.joining(", "));
    return "The boat from above, bow to the right, with "
        + scene.who()
        + ". Places to sit: "
        + scene.craft().boat().places().size()
        + ". Pieces of kit: "
        + scene.craft().boat().kit().size()
        + ". Chambers: "
        + (chambers.isEmpty() ? "none" : chambers);
  }

  String caption() {
    return Stream.of(who(), kitLeftOut())
        .filter(sentence -> !sentence.isEmpty())
        .collect(Collectors.joining(" "));
  }

  private String who() {
    return scene.crew().isEmpty()
        ? "Drawn with nobody aboard."
        : "Drawn with "
            + scene.who()
            + ", in the seating that comes nearest to a limit. A thick bar or box is a place for"
            + " people, as far as the middle of a person gets. A black square is kit.";
  }

  private String kitLeftOut() {
    return scene.craft().boat().kit().size() > MOST_NUMBERS
        ? "There is too much kit to name it here."
        : "";
  }

  /** What a state means, and the chambers that are in it. */
  static String named(Hatching state, List<Space> spaces) {
    return state.told() + ": " + spaces.stream().map(Space::name).collect(Collectors.joining(", "));
  }
}
