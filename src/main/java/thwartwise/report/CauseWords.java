package thwartwise.report;

import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.crew.Recommendation;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.record.Comparison;
import thwartwise.record.Comparison.BoatChange;

/** The cost or gain of the one thing that changed; blank if more than one changed. */
final class CauseWords {
  private CauseWords() {}

  static String of(Comparison comparison, UnitFormat units) {
    return comparison
        .cause()
        .map(cause -> sentence(subject(cause, units), comparison, units))
        .orElse("");
  }

  private static String sentence(String subject, Comparison comparison, UnitFormat units) {
    Recommendation before = comparison.before().report().recommendation();
    Recommendation after = comparison.after().report().recommendation();
    if (before.withheld() || after.withheld()) {
      return "Nothing else changed: the cause is " + subject;
    }
    int people = after.people() - before.people();
    double crew = Rounding.wholeDown(after.crew()) - Rounding.wholeDown(before.crew());
    double load = Rounding.wholeDown(after.load()) - Rounding.wholeDown(before.load());
    if (people != 0) {
      return subject + verb(people) + FigureText.people(Math.abs(people));
    }
    if (crew != 0) {
      return subject + verb(crew) + kg(crew, units) + " of crew";
    }
    return load != 0
        ? subject + verb(load) + kg(load, units) + " of load"
        : subject + " changed neither how many nor how much";
  }

  private static String verb(double gain) {
    return gain < 0 ? " cost " : " gained ";
  }

  private static String kg(double difference, UnitFormat units) {
    return units.mass(Math.abs(difference), Side.UP);
  }

  private static String subject(BoatChange cause, UnitFormat units) {
    if (cause instanceof BoatChange.Carried kit) {
      return carried(kit);
    }
    if (cause instanceof BoatChange.Space chamber) {
      return space(chamber);
    }
    BoatChange.HullMass mass = (BoatChange.HullMass) cause;
    double more = mass.after() - mass.before();
    return "the " + kg(more, units) + " that the hull became " + (more > 0 ? "heavier" : "lighter");
  }

  private static String carried(BoatChange.Carried kit) {
    String name = "the " + kit.after().or(kit::before).orElseThrow().name();
    if (kit.after().isEmpty()) {
      return "leaving out " + name;
    }
    return kit.before().isEmpty()
        ? name
        : kit.before().get().at().equals(kit.after().get().at())
            ? "the change to " + name
            : "moving " + name;
  }

  private static String space(BoatChange.Space chamber) {
    String name = "the " + chamber.after().or(chamber::before).orElseThrow().name();
    if (chamber.before().isEmpty()) {
      return name;
    }
    if (chamber.after().isEmpty()) {
      return "taking out " + name;
    }
    boolean proved = proven(chamber.before().get()) < proven(chamber.after().get());
    return (proved ? "the leak test of " : "the change to ") + name;
  }

  /** The number of its parts that are proven airtight. */
  private static long proven(Chamber chamber) {
    return chamber.parts().stream()
        .filter(part -> part.filling() instanceof Filling.Air air && air.seal() == Seal.PROVEN)
        .count();
  }
}
