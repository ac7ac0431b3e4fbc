package thwartwise.plausibility;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.Craft;
import thwartwise.boat.Space;
import thwartwise.checks.Unit;

/**
 * Chambers into which more was poured than there is room for: within their walls, or in the whole
 * boat. The smaller counts all the same, but then the walls may be those of another place.
 */
record ChamberDoubts(Craft craft, PlausibleLimits limits) {

  static List<PlausibilityFinding> of(Craft craft, PlausibleLimits limits) {
    ChamberDoubts doubts = new ChamberDoubts(craft, limits);
    return craft.spaces().stream().flatMap(space -> doubts.of(space).stream()).toList();
  }

  private Optional<PlausibilityFinding> of(Space space) {
    return space
        .part()
        .measuredVolume()
        .map(poured -> answer(space, poured))
        .filter(answer -> !answer.met())
        .map(answer -> answer.about(new DoubtId(Topic.CHAMBER, space.name()), craft.boat().kept()));
  }

  private Asked.Answer answer(Space space, double poured) {
    double drawn = space.solid().volume();
    double room = craft.form().inside().volume();
    String check = "chamber \"" + space.name() + "\", litres poured into it";
    return new Asked(check, Unit.LITRE, Asked.MEASURED)
        .atMost(
            poured,
            Math.min(limits.value("poured-over-drawn-most") * drawn, room),
            limits.source("poured-over-drawn-most"),
            "",
            "measure its walls, or pour again and count");
  }
}
