package thwartwise.walk.questions;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Chamber;
import thwartwise.geometry.Box;

/** What a chamber cannot be, given those before it. */
record ChamberSlips(String name, Outline outline, List<Chamber> before) {
  /** Neighbours share a bulkhead; a millimetre of tape is no overlap. */
  private static final double TOUCHING = 0.001;

  Optional<String> twinAcrossTheMiddle(Box box, boolean mirrored) {
    return mirrored && box.overlaps(box.mirrored())
        ? Optional.of(
            "Chamber \"%s\": it reaches across the middle line, so a twin would lie inside it. %s"
                .formatted(name, "Answer no, or go back and limit it to one side."))
        : Optional.empty();
  }

  Optional<String> overlap(Box box, boolean mirrored) {
    return before.stream()
        .filter(other -> both(box, mirrored).anyMatch(b -> overlaps(b, other)))
        .findFirst()
        .map(
            other ->
                "Chamber \"%s\" overlaps chamber \"%s\"; the same space cannot count twice. %s"
                    .formatted(
                        name,
                        other.name(),
                        "Go back and mend its limits, or type list, then change and a number."));
  }

  private boolean overlaps(Box one, Chamber other) {
    return both(other.box(), other.mirrored()).anyMatch(b -> deeply(one, b));
  }

  private boolean deeply(Box a, Box b) {
    if (!a.overlaps(b) || !a.common(b).overlaps(outline.bounds())) {
      return false;
    }
    Box shared = a.common(b).common(outline.bounds());
    return shared.x().length() > TOUCHING
        && shared.y().length() > TOUCHING
        && shared.z().length() > TOUCHING;
  }

  private static Stream<Box> both(Box box, boolean mirrored) {
    return mirrored ? Stream.of(box, box.mirrored()) : Stream.of(box);
  }
}
