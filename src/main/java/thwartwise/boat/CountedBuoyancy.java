package thwartwise.boat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.measure.UnitFormat;

/**
 * Whether a chamber counts when the boat is swamped, and why.
 *
 * @param share of its drawn volume that counts, 0 to 1
 * @param ifProven the same if what is only claimed were proven
 * @param why in words for the owner
 */
public record CountedBuoyancy(double share, double ifProven, String why) {
  /** Closed-cell foam takes up a little water and never fills its space (judgement). */
  private static final double FOAM_SHARE = 0.9;

  /** Between anchors and clothes, where nobody measured their volume, kg/m³ (judgement). */
  private static final double STOWED_DENSITY = 1000;

  /**
   * The volume of a chamber as it is drawn.
   *
   * @param faired inside the shell, m³
   * @param straight the same with straight lines between the stations, m³
   */
  record Drawn(double faired, double straight) {
    /** The share of the faired volume that counts: the least of drawn, straight and measured. */
    double smaller(Optional<Double> measured) {
      return Math.min(1, Math.min(straight, measured.orElse(straight)) / faired);
    }
  }

  private static final String FOR_BOTH =
      "; this one test stands for both sides, and each needs one of its own";

  /** The figures by which a chamber counts, with their sources. */
  public static String figures(UnitFormat units) {
    return String.format(
        Locale.ROOT,
        "A chamber of air counts when a test of at least %.0f minutes (judgement) let in at most"
            + " %s (a youth dinghy class, READ) within the last %d months; of fastened"
            + " closed-cell foam %.0f %% counts (judgement).",
        SealTest.LEAST_MINUTES,
        allowed(units),
        SealTest.FRESH_MONTHS,
        100 * FOAM_SHARE);
  }

  /**
   * Judges a chamber on a given day. A hole fills air whatever a test has shown; foam keeps its
   * lift with a hole beside it.
   */
  static CountedBuoyancy of(
      ChamberPart chamber,
      Drawn drawn,
      List<Kit> kit,
      ElectricalSystem electrics,
      List<Opening> openings,
      LocalDate today,
      UnitFormat units) {
    double smaller = drawn.smaller(chamber.measuredVolume());
    if (chamber.filling() instanceof Filling.Foam foam) {
      return foam(foam, smaller);
    }
    double stowed = looselyStowed(chamber, kit, electrics);
    double air = Math.max(0, smaller - stowed / drawn.faired());
    List<Kit> vented = ventedFor(chamber, kit, electrics);
    if (!vented.isEmpty()) {
      return vented(vented.get(0), air * drawn.faired(), units);
    }
    Optional<Opening> open =
        openings.stream().filter(o -> o.closedBy().isEmpty() && leadsInto(o, chamber)).findFirst();
    return open.map(CountedBuoyancy::fills)
        .orElseGet(
            () ->
                holdsWaterBack(chamber)
                    ? air(chamber, air, today, units).besides(stowed, units)
                    : air(chamber, air, today, units));
  }

  /**
   * While a chamber is shut and tight it lifts by all of its volume, whatever lies in it. Its hatch
   * is opened, though, to fetch what is stowed loose, and loose things get under the lid: their
   * litres do not count (judgement). What is fastened leaves the chamber its lift.
   */
  private static double looselyStowed(
      ChamberPart chamber, List<Kit> kit, ElectricalSystem electrics) {
    return kit.stream()
        .filter(k -> !k.fastened() && !k.needsVenting(electrics) && isToldToBeIn(k, chamber))
        .mapToDouble(k -> k.volume().orElse(k.mass() / STOWED_DENSITY))
        .sum();
  }

  private CountedBuoyancy besides(double stowed, UnitFormat units) {
    return stowed > 0
        ? new CountedBuoyancy(
            share,
            ifProven,
            why + "; what is stowed loose takes up " + units.litres(stowed, UnitFormat.Side.UP))
        : this;
  }

  private static CountedBuoyancy vented(Kit held, double air, UnitFormat units) {
    return new CountedBuoyancy(
        0,
        0,
        "holds the "
            + held.name()
            + ": such a space is vented, never sealed, and never counts; moved out, and the space"
            + " then sealed and proven, "
            + units.litres(air, UnitFormat.Side.DOWN)
            + " would count");
  }

  /** What a leak test must show, in words. */
  public static String wanted(UnitFormat units) {
    return String.format(
        Locale.ROOT,
        "at least %.0f minutes, and at most %s may come in",
        SealTest.LEAST_MINUTES,
        allowed(units));
  }

  private static String allowed(UnitFormat units) {
    return units.either(
        String.format(Locale.ROOT, "%.0f litre", SealTest.MOST_LITRES),
        () -> units.jug(SealTest.MOST_LITRES / 1000));
  }

  /**
   * The batteries and chargers a chamber holds: because of them it is vented and never sealed. One
   * that stands beside it, however close, or on the other side, leaves it its air; and foam cannot
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

  private static CountedBuoyancy fills(Opening open) {
    return new CountedBuoyancy(
        0, 0, "has an opening that nothing closes, the " + open.name() + ": it fills");
  }

  /** Whether its walls keep bilge water on one side, tight or not; an open one lets it through. */
  public static boolean holdsWaterBack(ChamberPart chamber) {
    return !(chamber.filling() instanceof Filling.Air air && air.seal() == Seal.OPEN);
  }

  private static boolean stowed(Kit kit, ChamberPart chamber) {
    return chamber.filling() instanceof Filling.Air
        && (isToldToBeIn(kit, chamber) || chamber.box().contains(kit.at()));
  }

  /** Of twins called by their common name it may be either, unless it lies across from one. */
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
      return new CountedBuoyancy(
          0, 0, "foam that is not known to be closed-cell soaks and does not count");
    }
    if (!foam.fastened()) {
      return new CountedBuoyancy(0, 0, "foam that is not fastened floats away and does not count");
    }
    double share = FOAM_SHARE * smaller;
    return new CountedBuoyancy(share, share, "closed-cell foam, fastened: nine tenths count");
  }

  private static CountedBuoyancy air(
      ChamberPart chamber, double smaller, LocalDate today, UnitFormat units) {
    Filling.Air air = (Filling.Air) chamber.filling();
    return switch (air.seal()) {
      case OPEN -> new CountedBuoyancy(0, 0, "open: it fills");
      case CLAIMED ->
          new CountedBuoyancy(
              0, smaller, "only claimed: it counts for nothing until a leak test is recorded");
      case PROVEN -> proven(chamber, smaller, today, units);
    };
  }

  private static CountedBuoyancy proven(
      ChamberPart chamber, double smaller, LocalDate today, UnitFormat units) {
    if (chamber.test().isEmpty()) {
      return new CountedBuoyancy(
          0, smaller, "called proven, but no leak test is recorded: it counts for nothing");
    }
    SealTest test = chamber.test().get();
    if (test.date().isAfter(today)) {
      return new CountedBuoyancy(
          0, smaller, "its leak test is dated in the future, " + test.date());
    }
    if (test.isStale(today)) {
      return new CountedBuoyancy(
          0, smaller, "its leak test of " + test.date() + " is over twelve months old: test again");
    }
    if (!(test.minutes() >= SealTest.LEAST_MINUTES)) {
      return new CountedBuoyancy(
          0,
          smaller,
          String.format(
              Locale.ROOT,
              "its leak test lasted under %.0f minutes: test longer",
              SealTest.LEAST_MINUTES));
    }
    if (!(test.litresIn() <= SealTest.MOST_LITRES)) {
      return new CountedBuoyancy(
          0,
          0,
          String.format(
              Locale.ROOT,
              "its leak test let in %s, over %s: find the leak and test again",
              units.either(
                  String.format(Locale.ROOT, "%.1f litres", test.litresIn()),
                  () -> units.jug(test.litresIn() / 1000)),
              units.either(
                  String.format(Locale.ROOT, "%.0f", SealTest.MOST_LITRES), () -> allowed(units))));
    }
    return new CountedBuoyancy(
        smaller,
        smaller,
        "proven " + test.date() + " by " + test.by() + (chamber.sharesSeal() ? FOR_BOTH : ""));
  }
}
