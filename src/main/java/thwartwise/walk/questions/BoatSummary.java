package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Kit;
import thwartwise.boat.Opening;
import thwartwise.boat.Outfit;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.measure.Dimension;

/** A measured boat in at most ten lines, to be checked before the computation begins. */
final class BoatSummary {
  private static final int COLUMNS = 78;

  private BoatSummary() {}

  static List<String> of(Boat boat) {
    Outline outline = new Outline(boat.hull().stations());
    List<String> lines = new ArrayList<>();
    lines.add(
        "%s: %s long, %s wide, %s deep, %d stations."
            .formatted(
                boat.name(),
                length(boat, outline.fore() - outline.aft()),
                length(boat, outline.beam()),
                length(boat, outline.highest() - outline.lowest()),
                boat.hull().stations().size()));
    lines.add("Bare hull " + mass(boat, boat.hull().mass()) + ".");
    lines.add("Openings: " + named(boat.openings().stream().map(Opening::name).toList()) + ".");
    lines.add(
        "Chambers: " + named(boat.chambers().stream().map(BoatSummary::chamber).toList()) + ".");
    lines.add("Places: " + named(boat.places().stream().map(BoatSummary::place).toList()) + ".");
    double kit = boat.kit().stream().mapToDouble(Kit::mass).sum();
    lines.add(
        "Kit: "
            + (boat.kit().isEmpty() ? "none" : mass(boat, kit) + " in all, ")
            + boat.kit().stream().map(Kit::name).collect(Collectors.joining(", "))
            + ".");
    outfit(boat).ifPresent(lines::add);
    lines.add("Aboard: " + named(boat.aboard().stream().map(Person::name).toList()) + ".");
    if (!boat.assumptions().isEmpty()) {
      int things = boat.assumptions().size();
      lines.add(
          "Not measured, taken on the poor side: "
              + (things == 1 ? "one thing." : things + " things."));
    }
    return lines.stream().map(BoatSummary::fitted).toList();
  }

  private static Optional<String> outfit(Boat boat) {
    Outfit outfit = boat.outfit();
    List<String> words = new ArrayList<>();
    counted(words, outfit.rowlocks().size(), "pair of rowlocks", "pairs of rowlocks");
    counted(words, boat.cleats().size(), "cleat", "cleats");
    counted(words, outfit.anchorLine().isPresent() ? 1 : 0, "anchor line", "");
    counted(words, outfit.leaks().size(), "leak", "leaks");
    return words.isEmpty()
        ? Optional.empty()
        : Optional.of("Outfit: " + String.join(", ", words) + ".");
  }

  private static void counted(List<String> words, int count, String one, String several) {
    if (count > 0) {
      words.add(count + " " + (count == 1 ? one : several));
    }
  }

  /** One line for each, however many things there are. */
  private static String fitted(String line) {
    return line.length() <= COLUMNS
        ? line
        : line.substring(0, Math.max(1, line.lastIndexOf(' ', COLUMNS - 4))) + " ...";
  }

  private static String chamber(Chamber chamber) {
    String state =
        chamber.filling() instanceof Filling.Foam
            ? "foam"
            : isProven(chamber) ? "proven" : "not proven";
    return chamber.name() + " (" + state + ")";
  }

  private static boolean isProven(Chamber chamber) {
    return chamber.filling() instanceof Filling.Air air && air.seal() == Seal.PROVEN;
  }

  private static String place(Place place) {
    return place.name() + " (" + place.people() + ")";
  }

  private static String named(List<String> names) {
    return names.isEmpty() ? "none" : String.join(", ", names);
  }

  private static String length(Boat boat, double metres) {
    return boat.units().show(metres, Dimension.LENGTH);
  }

  private static String mass(Boat boat, double mass) {
    return boat.units().show(mass, Dimension.MASS);
  }
}
