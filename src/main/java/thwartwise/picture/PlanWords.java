package thwartwise.picture;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
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
    return Stream.of(who(), placeKey(), kitKey(), chamberKey())
        .filter(sentence -> !sentence.isEmpty())
        .collect(Collectors.joining(" "));
  }

  private String who() {
    return scene.crew().isEmpty()
        ? "Drawn with nobody aboard."
        : "Discs: "
            + scene.who()
            + ", in the seating that comes nearest to a limit. A thick bar or box is a place for"
            + " people, as far as the middle of a person gets.";
  }

  private String placeKey() {
    List<Place> places = scene.craft().boat().places();
    return Named.list(
        "Places: ", places.size(), i -> letter(i) + " " + Named.of(places.get(i).name()));
  }

  private String kitKey() {
    List<Kit> kit = scene.craft().boat().kit();
    String what = "Black squares are kit";
    return kit.size() > MOST_NUMBERS
        ? what + "; there is too much of it to number here."
        : Named.list(what + ": ", kit.size(), i -> (i + 1) + " " + Named.of(kit.get(i).name()));
  }

  private String chamberKey() {
    return byState().entrySet().stream()
        .map(
            e ->
                Named.list(
                    e.getKey().told() + ": ",
                    e.getValue().size(),
                    i -> Named.of(e.getValue().get(i).name())))
        .collect(Collectors.joining(" "));
  }
}
