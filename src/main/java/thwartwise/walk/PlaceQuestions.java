package thwartwise.walk;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.Place;

/** Where people sit, kneel or stand; at least one such place. */
final class PlaceQuestions {
  /** What a tape laid across two rails may be off. */
  private static final double LEEWAY = 0.01;

  private final Replay replay;
  private final Tape tape;
  private final Outline outline;
  private final double floor;

  PlaceQuestions(Replay replay, Tape tape, Outline outline, double floor) {
    this.replay = replay;
    this.tape = tape;
    this.outline = outline;
    this.floor = floor;
  }

  List<Place> places() {
    return new Several(replay, "place", "place", "").atLeastOne(this::place);
  }

  private Place place(String key, List<Place> before) {
    String name = name(key, before);
    String subject = "Place " + Words.quoted(name);
    double x = along(key, subject);
    return new Place(name, x, up(key, subject), out(key, subject, x), people(key, subject));
  }

  private String name(String key, List<Place> before) {
    return replay.ask(
        Words.name(key + ".name", "Place to sit, name", before.stream().map(Place::name).toList())
            .how("Such as midships thwart, stern seat, fore thwart.")
            .why("People are put at places, and the advice calls them by name."));
  }

  private double along(String key, String subject) {
    return replay.ask(
        tape.length(key + ".x", subject + ", forward of the aft end")
            .how("Tape from the aft end to the middle of the seat.")
            .why("People forward or aft trim the boat.")
            .within(tape.length(outline.aft(), outline.fore(), "length of the hull")));
  }

  private double up(String key, String subject) {
    return replay.ask(
        tape.length(key + ".z", subject + ", height of the seat")
            .how("From the baseline straight up to the top of the seat; kneeling: to the floor.")
            .show(Sketches.SEAT)
            .why("High seats make a boat tender.")
            .within(tape.length(floor, 1.5, "heights between the floor and any seat")));
  }

  private double out(String key, String subject, double x) {
    return replay.ask(
        tape.length(key + ".halfWidth", subject + ", reach to one side")
            .how(
                "From the middle line to the middle of a person who sits as far out as the",
                "place allows.")
            .show(Sketches.SEAT)
            .why("Hard against one side is where a frightened crew ends up.")
            .within(tape.length(0, outline.halfBeam(), "half-breadth of the hull"))
            .unless(y -> outside(subject, x, y)));
  }

  private Optional<String> outside(String subject, double x, double y) {
    double rail = outline.railAt(x);
    return y <= rail + LEEWAY
        ? Optional.empty()
        : Optional.of(
            "%s: %s out is outside the boat; the rail there is %s out. %s"
                .formatted(
                    subject,
                    tape.show(y),
                    tape.show(rail),
                    "Measure to the middle of the person, or go back and mend the place."));
  }

  private int people(String key, String subject) {
    return replay.ask(
        Words.whole(key + ".people", subject + ", how many people", 1, 8)
            .how("As many as sit there at once; 0.45 m of seat for each.")
            .why("Nobody is counted where nobody can sit."));
  }
}
