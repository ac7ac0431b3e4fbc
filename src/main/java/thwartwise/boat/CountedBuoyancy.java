package thwartwise.boat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullForm;

/**
 * The share of a chamber that counts when the boat is swamped, and why.
 *
 * @param share of its drawn volume that counts, 0 to 1
 * @param ifProven the same if what is only claimed were proven
 * @param why the reason for counting or not counting
 */
public record CountedBuoyancy(double share, double ifProven, BuoyancyReason why) {
  /** Closed-cell foam takes up a little water and never fills its space (judgement). */
  public static final double FOAM_SHARE = 0.9;

  /**
   * The density of things in a locker, kg/m³, where nobody measured their volume: between anchors
   * and clothes (judgement).
   */
  private static final double STOWED_DENSITY = 1000;

  private static final Vector3 UP = Vector3.of(0, 0, 1);

  /**
   * The volume of a chamber as it is drawn.
   *
   * @param faired inside the shell, m³
   * @param straight the same with straight lines between the stations, m³
   * @param depth from its lowest point to its highest, m
   * @param head of water above its lowest point when the boat is swamped, m: up to the highest
   *     point of the hull, because a boat that is all under water holds nobody up
   */
  record Drawn(double faired, double straight, double depth, double head) {
    static Drawn of(HullForm form, Box box, Solid solid) {
      Span heights = solid.extent(UP);
      return new Drawn(
          solid.volume(),
          form.straightVolume(box),
          heights.length(),
          form.outside().extent(UP).to() - heights.from());
    }

    /**
     * The share of the faired volume that counts: the least of drawn, straight and measured volume.
     */
    double smaller(Optional<Double> measured) {
      return Math.min(1, Math.min(straight, measured.orElse(straight)) / faired);
    }
  }

  /** The rule for counting a chamber. */
  public static MethodAssumption rule() {
    return new MethodAssumption.ChamberRule(
        SealTest.LEAST_MINUTES, SealTest.MOST_LITRES, SealTest.FRESH_MONTHS, FOAM_SHARE);
  }

  /**
   * Assesses a chamber on a given day. A hole fills air whatever a test has shown; foam keeps its
   * lift next to a hole.
   *
   * @param heldUp the time for which people must be held up, s
   */
  static CountedBuoyancy of(
      ChamberPart chamber,
      Drawn drawn,
      List<Kit> kit,
      ElectricalSystem electrics,
      List<Opening> openings,
      LocalDate today,
      double heldUp) {
    double smaller = drawn.smaller(chamber.measuredVolume());
    if (chamber.filling() instanceof Filling.Foam foam) {
      return foam(foam, smaller);
    }
    double stowed = looselyStowed(chamber, kit, electrics);
    double air = Math.max(0, smaller - stowed / drawn.faired());
    List<Kit> vented = ventedFor(chamber, kit, electrics);
    if (!vented.isEmpty()) {
      return none(new BuoyancyReason.HoldsVentedKit(vented.get(0).name(), air * drawn.faired()));
    }
    Optional<Opening> open =
        openings.stream().filter(o -> o.closedBy().isEmpty() && leadsInto(o, chamber)).findFirst();
    return open.map(hole -> none(new BuoyancyReason.HasOpening(hole.name())))
        .orElseGet(
            () ->
                holdsWaterBack(chamber)
                    ? air(chamber, air, drawn, today, heldUp).besides(stowed)
                    : air(chamber, air, drawn, today, heldUp));
  }

  /**
   * A shut and tight chamber lifts by all of its volume, whatever lies in it. But its hatch is
   * opened to fetch what is stowed loose, and loose things get under the lid, so their volume does
   * not count (judgement). Fastened things leave the chamber its lift.
   */
  private static double looselyStowed(
      ChamberPart chamber, List<Kit> kit, ElectricalSystem electrics) {
    return kit.stream()
        .filter(k -> !k.fastened() && !k.needsVenting(electrics) && isToldToBeIn(k, chamber))
        .mapToDouble(k -> k.volume().orElse(k.mass() / STOWED_DENSITY))
        .sum();
  }

  private CountedBuoyancy besides(double stowed) {
    return stowed > 0
        ? new CountedBuoyancy(share, ifProven, new BuoyancyReason.LooseStowage(why, stowed))
        : this;
  }

  private static CountedBuoyancy none(BuoyancyReason why) {
    return new CountedBuoyancy(0, 0, why);
  }

  /**
   * The batteries and chargers in a chamber, because of which it is vented and never sealed. One
   * that stands next to it, however close, or on the other side, leaves it its air; and foam cannot
   * fill.
   */
  public static List<Kit> ventedFor(ChamberPart chamber, Boat boat) {
    return ventedFor(chamber, boat.kit(), boat.electrics());
  }

  private static List<Kit> ventedFor(
      ChamberPart chamber, List<Kit> kit, ElectricalSystem electrics) {
    return kit.stream().filter(k -> k.needsVenting(electrics) && stowed(k, chamber)).toList();
  }

  private static boolean leadsInto(Opening opening, ChamberPart chamber) {
    return opening.into().map(chamber::isNamedBy).orElse(false);
  }

  /** Whether part of what counts fills while people are held up. */
  public boolean leaks() {
    BuoyancyReason sealed = why instanceof BuoyancyReason.LooseStowage with ? with.reason() : why;
    return sealed instanceof BuoyancyReason.TakesWater
        || sealed instanceof BuoyancyReason.AssumedHead;
  }

  /**
   * Whether its walls keep bilge water on one side, tight or not; an open chamber lets it through.
   */
  public static boolean holdsWaterBack(ChamberPart chamber) {
    return !(chamber.filling() instanceof Filling.Air air && air.seal() == Seal.OPEN);
  }

  private static boolean stowed(Kit kit, ChamberPart chamber) {
    return chamber.filling() instanceof Filling.Air
        && (isToldToBeIn(kit, chamber) || chamber.box().contains(kit.at()));
  }

  /**
   * Whether kit is stated to be in it. The common name of twins may mean either, unless the kit
   * lies on the other side.
   */
  private static boolean isToldToBeIn(Kit kit, ChamberPart chamber) {
    double y = kit.at().y();
    boolean across =
        chamber.side().isPresent()
            && chamber.box().y().mirrored().contains(y)
            && !chamber.box().y().contains(y);
    return kit.in()
        .filter(in -> in.equals(chamber.name()) || !across && chamber.isNamedBy(in))
        .isPresent();
  }

  private static CountedBuoyancy foam(Filling.Foam foam, double smaller) {
    if (!foam.closedCell()) {
      return none(new BuoyancyReason.SoakingFoam());
    }
    if (!foam.fastened()) {
      return none(new BuoyancyReason.LooseFoam());
    }
    double share = FOAM_SHARE * smaller;
    return new CountedBuoyancy(share, share, new BuoyancyReason.FastenedFoam(FOAM_SHARE));
  }

  private static CountedBuoyancy air(
      ChamberPart chamber, double smaller, Drawn drawn, LocalDate today, double heldUp) {
    Filling.Air air = (Filling.Air) chamber.filling();
    return switch (air.seal()) {
      case OPEN -> none(new BuoyancyReason.OpenChamber());
      case CLAIMED -> unproven(smaller, new BuoyancyReason.OnlyClaimed());
      case PROVEN ->
          air.repairedSinceTest()
              .map(day -> unproven(smaller, repaired(day, air)))
              .orElseGet(() -> proven(chamber, smaller, drawn, today, heldUp));
    };
  }

  private static CountedBuoyancy unproven(double smaller, BuoyancyReason why) {
    return new CountedBuoyancy(0, smaller, why);
  }

  private static BuoyancyReason repaired(LocalDate day, Filling.Air air) {
    return air.test()
        .<BuoyancyReason>map(
            test -> new BuoyancyReason.RepairedSinceTest(day.toString(), test.date().toString()))
        .orElseGet(BuoyancyReason.NoLeakTest::new);
  }

  private static CountedBuoyancy proven(
      ChamberPart chamber, double smaller, Drawn drawn, LocalDate today, double heldUp) {
    if (chamber.test().isEmpty()) {
      return unproven(smaller, new BuoyancyReason.NoLeakTest());
    }
    SealTest test = chamber.test().get();
    String date = test.date().toString();
    if (test.date().isAfter(today)) {
      return unproven(smaller, new BuoyancyReason.FutureLeakTest(date));
    }
    if (test.isStale(today)) {
      return unproven(smaller, new BuoyancyReason.StaleLeakTest(date));
    }
    if (!(test.minutes() >= SealTest.LEAST_MINUTES)) {
      return unproven(smaller, new BuoyancyReason.ShortLeakTest(SealTest.LEAST_MINUTES));
    }
    if (!(test.litresIn() <= SealTest.MOST_LITRES)) {
      return none(new BuoyancyReason.FailedLeakTest(test.litresIn(), SealTest.MOST_LITRES));
    }
    return new CountedBuoyancy(
            smaller, smaller, BuoyancyReason.ProvenTight.by(test, chamber.sharesSeal()))
        .leaking(test, drawn, heldUp);
  }

  /** The share left after the time for which people must be held up. */
  private CountedBuoyancy leaking(SealTest test, Drawn drawn, double heldUp) {
    if (!(test.litresIn() > 0) || !(share > 0)) {
      return this;
    }
    SwampedLeak leak = SwampedLeak.of(test, drawn.depth(), drawn.head());
    double volume = share * drawn.faired();
    double left = leak.left(volume, heldUp);
    BuoyancyReason takesWater =
        new BuoyancyReason.TakesWater(
            why, test.litresIn(), test.minutes(), leak.halfGone(volume) / 60, heldUp / 60, left);
    return new CountedBuoyancy(
        share * left,
        share * left,
        test.head().isPresent()
            ? takesWater
            : new BuoyancyReason.AssumedHead(takesWater, SealTest.LEAST_HEAD));
  }
}
