package thwartwise.report;

import static thwartwise.report.ElectricalFigures.amperes;
import static thwartwise.report.ElectricalFigures.label;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.electrics.Battery;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.CircuitSums;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.inspection.RestFigures;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.Block;
import thwartwise.page.Page;
import thwartwise.page.Table;

/** The wires, fuses and switches of a boat: faults, a drawing, the sums. */
public final class WiringPage {
  private final Boat boat;
  private final LocalDate today;
  private final ElectricalSystem electrics;
  private final UnitFormat units;
  private final List<CircuitSums> sums;
  private final Optional<CircuitSums> main;
  private final Page page = new Page();
  private final List<String[]> faults;

  private WiringPage(Boat stated, LocalDate today) {
    this.boat = stated.asFound();
    this.today = today;
    this.electrics = boat.electrics();
    this.units = ReaderUnits.of(boat);
    this.main = CircuitSums.ofMain(electrics);
    this.sums = CircuitSums.of(electrics);
    this.faults = WiringFaultList.of(boat, main, sums);
  }

  /**
   * @param text the page
   * @param faultless whether the wires have no fault
   */
  public record Result(String text, boolean faultless) {}

  /** The page of a boat as its file states it, after somebody looked it over. */
  public static Result of(Boat boat, LocalDate today) {
    WiringPage wiring = new WiringPage(boat, today);
    return new Result(
        wiring.page().toString(),
        wiring.faults.isEmpty() && !boat.electrics().circuits().isEmpty());
  }

  /** The number of faults, and where they are described. */
  static String inShort(Boat boat, LocalDate day) {
    int faults = new WiringPage(boat, day).faults.size();
    return faults == 0
        ? "Nothing found against the wires that are stated (wiring)"
        : toPutRight(faults) + ": type wiring";
  }

  private static String toPutRight(int faults) {
    return faults == 1
        ? "One thing is to be put right before the battery is connected"
        : faults + " things are to be put right before the battery is connected";
  }

  private Page page() {
    page.title(boat.name());
    if (electrics.isEmpty() || electrics.circuits().isEmpty()) {
      page.paragraph(
          "No circuit is stated, so no wire or fuse is worked out",
          "Each needs amperes, length, wire, fuse and switch",
          ElectricalFigures.entered("wires"));
    }
    if (!electrics.isEmpty()) {
      verdict();
      battery();
      drawing();
    }
    if (!sums.isEmpty()) {
      asItStands();
      needed();
      basis();
    }
    return cautions();
  }

  private void verdict() {
    if (faults.isEmpty()) {
      page.paragraph("Nothing found against these wires within the sums below");
      return;
    }
    page.paragraph(toPutRight(faults.size()));
    page.heading("Put right first");
    faults.forEach(page::point);
  }

  private void battery() {
    electrics.battery().ifPresent(this::weight);
  }

  private void weight(Battery battery) {
    boat.kit().stream()
        .filter(kit -> kit.name().equals(battery.kit()))
        .findFirst()
        .ifPresent(this::weight);
  }

  private void weight(Kit kit) {
    double under =
        kit.mass() - Math.min(kit.mass(), kit.volume().orElse(0.0) * boat.water().density());
    page.heading("The battery");
    page.paragraph(
        "It weighs "
            + units.scales(kit.mass())
            + ", and under water still "
            + units.mass(under, Side.UP)
            + (kit.volume().isEmpty() ? ", since nobody measured its volume" : ""),
        "Carried ashore it leaves another boat; for every figure of that one, type: suppose"
            + " without the "
            + kit.name());
    Optional<RestFigures> with = RestFigures.of(boat, today);
    Optional<RestFigures> ashore = RestFigures.of(without(kit), today);
    if (with.isPresent() && ashore.isPresent()) {
      page.point("With it: " + FloatingPositionWords.of(with.get(), units));
      page.point("Ashore: " + FloatingPositionWords.of(ashore.get(), units));
    }
  }

  private Boat without(Kit ashore) {
    return boat.withKit(boat.kit().stream().filter(kit -> kit != ashore).toList());
  }

  private void drawing() {
    page.heading("The circuits as they stand");
    WiringDrawing.of(electrics, units).forEach(line -> page.with(new Block.Picture(line)));
  }

  private void asItStands() {
    page.heading("What each wire does");
    page.table(
        Table.close(
            List.of(
                new Table.Column("Circuit", 18),
                new Table.Column("Draws", 8),
                new Table.Column("One way", 12),
                new Table.Column("Wire", 11),
                new Table.Column("Loses", 15),
                new Table.Column("May carry", 10)),
            sums.stream().map(this::asItStands).toList()));
    main.filter(wire -> electrics.mainWire().isPresent()).ifPresent(this::mainWire);
  }

  private void mainWire(CircuitSums wire) {
    page.gap()
        .paragraph(
            "The main wire ("
                + ElectricalFigures.wire(wire.circuit())
                + ") carries all of it, "
                + amperes(wire.circuit().current())
                + ", and may carry "
                + wire.carries().map(a -> Rounding.down(a, 1) + " A").orElse("nobody knows what")
                + " where it lies",
            "Its fuse is to be "
                + amperes(CircuitSums.OVER_DRAW * wire.circuit().current())
                + " or more, and no more than the wire may carry");
  }

  private List<String> asItStands(CircuitSums each) {
    Circuit circuit = each.circuit();
    return List.of(
        circuit.name(),
        amperes(circuit.current()),
        units.height(circuit.length(), Side.UP),
        ElectricalFigures.wire(circuit),
        each.drop().map(drop -> drop(drop, each.volts())).orElse("not known"),
        each.carries()
            .map(a -> Rounding.down(a, 1) + " A")
            .orElse(each.circuit().copper().isPresent() ? "nothing" : "not known"));
  }

  private static String drop(double drop, double volts) {
    return Rounding.up(drop, 2) + " V, " + Rounding.up(100 * drop / volts, 1) + " %";
  }

  private void needed() {
    page.heading("What each needs at least");
    page.table(
        Table.close(
            List.of(
                new Table.Column("Circuit", 15),
                new Table.Column("To lose 3 %", 14),
                new Table.Column("To lose 10 %", 14),
                new Table.Column("Fuse", 7),
                new Table.Column("Wire in all", 14),
                new Table.Column("Fuse within", 11)),
            sums.stream().map(this::needed).toList()));
  }

  private List<String> needed(CircuitSums each) {
    return List.of(
        each.circuit().name(),
        forDrop(each, each.areaFor(0.03)),
        forDrop(each, each.areaFor(0.10)),
        Double.isNaN(each.fuse()) ? "none sold" : label(each.fuse(), "A"),
        forDrop(each, each.wanted()),
        units.height(each.fuseWithin(), Side.DOWN));
  }

  private static String forDrop(CircuitSums each, double area) {
    return Double.isNaN(area) && each.main().volts() > 0
        ? "thicker main"
        : ElectricalFigures.wire(area);
  }

  private void basis() {
    page.heading("What this rests on");
    page.point(
        "All at once they draw "
            + amperes(electrics.drawn())
            + " at "
            + label(electrics.volts(), "V")
            + motorIn());
    page.point(
        "Loss: 1.787e-8 ohm metres, there and back (10.75 ohms a circular mil and foot, as the"
            + " trade has it); 3 % for motor, navigation lights and charging, 10 % for the rest. In the"
            + " main wire all lose by what everything draws at once");
    page.point(
        "What a wire may carry: 33 CFR 183.425, table 5, outside an engine space, for the"
            + " insulation stated, otherwise for the weakest. Of it seven tenths for two wires in a"
            + " pipe of their own, six tenths for four to six wires together, as where nobody said"
            + " how they lie, half for more (trade practice, FROM MEMORY). A wire between two gauges"
            + " counts as the thinner");
    page.point(
        "Fuse: at least 1.25 times the draw (common practice), never over what the wire may carry"
            + " (stricter than that rule, which lets half as much again)");
    page.point(
        "Its distance from the battery along the wire: 7 in, or 40 in in a sheath all the way (33"
            + " CFR 183.455). Behind a main fuse that guards its wire it counts from where the"
            + " circuit's own wire begins");
  }

  private String motorIn() {
    if (electrics.motorWithoutWires().flatMap(m -> m.currentAt(electrics.volts())).isPresent()) {
      return ", the motor with them";
    }
    return WiringFaultList.isMotorUnwired(boat)
        ? ", without the motor, since nobody said what it draws"
        : "";
  }

  private Page cautions() {
    page.heading("Before the battery is connected");
    page.point(
        sums.isEmpty() ? "" : "These are sums, nobody looked at the wires",
        "Tinned, stranded wire, crimped ends, no joint in the bilge; whoever is unsure asks an"
            + " electrician");
    page.point("A battery gives off gas and a charger heats: the space that holds one is vented");
    page.point(Disclaimer.LAST_WORD);
    return page;
  }
}
