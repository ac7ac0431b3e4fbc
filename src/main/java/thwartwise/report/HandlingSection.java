package thwartwise.report;

import java.util.List;
import java.util.Locale;
import thwartwise.afloat.Gravity;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.boat.Person;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.record.InspectionRecord;
import thwartwise.rules.LifeJacket;

/** Carrying and life jackets: how many people carry the boat, which jacket each needs. */
final class HandlingSection {
  /** The mass that one person carries, kg (trade practice, no source). */
  private static final double EACH = 25;

  private HandlingSection() {}

  static void write(Page page, InspectionRecord inspection) {
    UnitFormat units = ReaderUnits.of(inspection.boat());
    page.paragraph(carried(inspection.boat(), units));
    page.paragraph(jackets(inspection.boat(), units));
  }

  private static String carried(Boat boat, UnitFormat units) {
    double hull = boat.hull().mass();
    double battery =
        boat.kit().stream()
            .filter(kit -> kit.isBattery(boat.electrics()))
            .mapToDouble(Kit::mass)
            .sum();
    return "To carry it by hand, "
        + units.mass(EACH, Side.DOWN)
        + " each (trade practice, no source): "
        + hands(hull)
        + " for the bare hull of "
        + units.mass(hull, Side.UP)
        + (battery > 0 ? ", " + hands(hull + battery) + " with the battery in it" : "")
        + (boat.kit().isEmpty() ? "" : ", " + hands(hull + boat.kitMass()) + " with all its kit");
  }

  static String hands(double mass) {
    int people = (int) Math.max(1, Math.ceil(mass / EACH - 1e-9));
    return FigureText.with(String.valueOf(people), people == 1 ? "person" : "people");
  }

  private static String jackets(Boat boat, UnitFormat units) {
    List<String> each =
        boat.aboard().stream().map(person -> person.name() + " " + jacket(person, units)).toList();
    return "Life jackets, at least: "
        + (each.isEmpty()
            ? force(LifeJacket.newtons(Double.MAX_VALUE), units)
            : Sentence.list(each))
        + "; whoever cannot swim, and a child under "
        + units.mass(LifeJacket.CHILD, Side.UP)
        + ", "
        + force(LifeJacket.NON_SWIMMER, units)
        + " ("
        + LifeJacket.SOURCE
        + ")";
  }

  private static String jacket(Person person, UnitFormat units) {
    return force(LifeJacket.newtons(person.mass()), units);
  }

  private static String force(double newtons, UnitFormat units) {
    return units.either(
        String.format(Locale.ROOT, "%.0f N", newtons),
        () -> units.mass(newtons / Gravity.STANDARD, Side.UP));
  }
}
