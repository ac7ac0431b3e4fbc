package thwartwise.report;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.inspection.Margin;
import thwartwise.inspection.Recommendation;
import thwartwise.page.FigureText;
import thwartwise.record.Comparison;
import thwartwise.record.InspectionRecord;

/**
 * Why less is recommended than before, though what was done may sound like a gain: more buoyancy,
 * ballast, a rail raised. Which check governs now, and what in it any weight or lift works against.
 */
final class FallWords {
  private static final String DEEPER =
      "all that is added weighs, ballast, foam and planks too, and sinks its lowest edge deeper";
  private static final String HEEL =
      "weight high up leans it over, and weight low down steadies it but sinks it, so that less side"
          + " is left when it leans";
  private static final String STIFF =
      "people who lean with the boat are weight high up, and more of it, higher seats or a boat that"
          + " floats on less breadth bring it upright less";
  private static final String LIFT =
      "all that is added weighs, and only what takes up more water than it weighs lifts";
  private static final String SWAMPED_HEEL =
      "full of water it stands on its buoyancy alone: lift low down or near the middle line raises"
          + " boat and people without steadying them, and raises what lies along the sides out of"
          + " the water, where it steadies nothing";
  private static final String ENDS =
      "lift at one end or weight at the other tips it, and puts the lower end deeper";

  /** By the name of the check. */
  private static final Map<String, String> PHYSICS =
      Map.ofEntries(
          Map.entry("freeboard at rest", DEEPER),
          Map.entry("three fifths to one side", HEEL),
          Map.entry("three fifths to one side, freeboard left", HEEL),
          Map.entry("sitting stiff a little off the middle", STIFF),
          Map.entry("sitting stiff a little off the middle, freeboard left", STIFF),
          Map.entry("swamped, lift to spare", LIFT),
          Map.entry("swamped, heel", SWAMPED_HEEL),
          Map.entry("swamped, half the crew's weight to one side", SWAMPED_HEEL),
          Map.entry("swamped, everyone a little off the middle", SWAMPED_HEEL),
          Map.entry("swamped, higher end above the water", ENDS),
          Map.entry("swamped, lower end under the water", ENDS));

  private FallWords() {}

  /** Blank where nothing fell, or where either recommends nothing. */
  static String of(Comparison comparison) {
    Recommendation after = comparison.after().report().recommendation();
    Recommendation before = comparison.before().report().recommendation();
    boolean fell =
        after.people() < before.people()
            || whole(after.crew()) < whole(before.crew())
            || whole(room(comparison.after())) < whole(room(comparison.before()));
    return fell && !before.withheld() && !after.withheld() ? told(after) : "";
  }

  /** What the load limit leaves besides the kit listed: less kit is no fall. */
  private static double room(InspectionRecord record) {
    return record.report().recommendation().load() - record.boat().kitMass();
  }

  /** As it is shown. */
  private static double whole(double kilograms) {
    return Double.parseDouble(FigureText.down(kilograms, 0));
  }

  private static String told(Recommendation after) {
    return governs(after)
        .map(check -> "It is less because now " + check + " governs: " + physics(check))
        .orElse("");
  }

  /** What stops the next person, or, where only places are lacking, what is nearest its limit. */
  private static Optional<String> governs(Recommendation after) {
    return Stream.concat(Stream.of(after.governedBy()), after.margins().stream().map(Margin::check))
        .filter(check -> !physics(check).isEmpty())
        .findFirst();
  }

  /** Whichever chamber is lost, it is lift that lacks. */
  static String physics(String check) {
    boolean lost = check.endsWith(" lost");
    return lost ? LIFT : PHYSICS.getOrDefault(check, "");
  }
}
