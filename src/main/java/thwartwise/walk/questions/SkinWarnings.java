package thwartwise.walk.questions;

import java.util.List;
import java.util.Optional;
import thwartwise.geometry.Span;
import thwartwise.hull.HullForm;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Material;
import thwartwise.hull.Station;
import thwartwise.hull.UnusableBoat;
import thwartwise.measure.Dimension;
import thwartwise.measure.Rounding;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.Warning;

/** Unlikely masses of a bare hull, compared with the skin that its stations make. */
public record SkinWarnings(
    QuantityQuestions quantities,
    PlausibleLimits limits,
    List<Station> stations,
    ShellThickness shell,
    double density,
    Optional<Material> material) {

  public static SkinWarnings of(
      QuantityQuestions quantities, PlausibleLimits limits, HullMeasurements hull) {
    return new SkinWarnings(
        quantities,
        limits,
        hull.stations(),
        ShellThickness.everywhere(hull.thickness()),
        hull.density(),
        hull.material());
  }

  public Optional<Warning> of(double mass) {
    return area().flatMap(area -> of(mass, area));
  }

  private Optional<Warning> of(double mass, double area) {
    Span usual = limits.hullMass(area, shell.thicker(), density, material);
    if (usual.contains(mass)) {
      return Optional.empty();
    }
    Optional<Double> meant =
        quantities.otherMass(mass).filter(usual::contains).or(() -> tenTimes(mass, usual));
    String offer = meant.map(kg -> " Did you mean " + show(kg) + "?").orElse(" Weigh it again.");
    return Optional.of(
        new Warning(
            "%s is %s: its skin alone, %.1f m2, comes to about %s.%s"
                .formatted(
                    show(mass),
                    mass < usual.from()
                        ? "too light for such a hull"
                        : "very heavy for such a hull",
                    area,
                    show(area * shell.thicker() * density),
                    offer),
            meant.map(kg -> Rounding.plain(kg) + " kg"),
            true));
  }

  private static Optional<Double> tenTimes(double mass, Span usual) {
    return Optional.of(mass < usual.from() ? 10 * mass : mass / 10).filter(usual::contains);
  }

  private String show(double mass) {
    return quantities.system().show(mass, Dimension.MASS);
  }

  /**
   * The height of the centre of a bare hull, where nobody measured it. The centre of the skin alone
   * is too low, because rails, seats, decks and knees are missing in it. So all mass beyond the
   * skin, and at least a quarter of the whole (judgement), is taken to lie at the highest rail;
   * nothing in an open boat is built in above it. Where bottom and sides differ, only the smaller
   * thickness is certain everywhere, because the thicker part may be the sides.
   */
  Optional<Double> highCentre(double mass) {
    return form()
        .map(
            form -> {
              double skin = form.shellArea() * likelyThickness() * density;
              double share = Math.max(LEAST_AT_THE_RAIL, 1 - skin / mass);
              double low = form.centre().z();
              return low + share * (new Outline(stations).highest() - low);
            });
  }

  private static final double LEAST_AT_THE_RAIL = 0.25;

  /** The height of the centre of the skin alone. */
  Optional<Double> skinCentre() {
    return form().map(form -> form.centre().z());
  }

  /**
   * The thickness for this estimate. The assumption for an unmeasured skin is thick and would leave
   * too little mass for the rail.
   */
  private double likelyThickness() {
    return material
        .filter(m -> m.isUnmeasured(shell.thinner()))
        .map(Material::usualThickness)
        .orElse(shell.thinner());
  }

  /** Empty if the stations do not close into a hull; the build of the boat reports that. */
  private Optional<Double> area() {
    return form().map(HullForm::shellArea);
  }

  private Optional<HullForm> form() {
    HullMeasurements hull =
        new HullMeasurements(
            1,
            Optional.empty(),
            Optional.empty(),
            density,
            shell.thicker(),
            0,
            stations,
            List.of());
    Optional<HullForm> known = last.filter(l -> l.hull().equals(hull)).map(KnownForm::form);
    if (known.isPresent()) {
      return known;
    }
    try {
      HullForm form = HullForm.of(hull);
      last = Optional.of(new KnownForm(hull, form));
      return Optional.of(form);
    } catch (UnusableBoat e) {
      return Optional.empty();
    }
  }

  /** The cached hull, because a walk comes to the same one at every later question. */
  private record KnownForm(HullMeasurements hull, HullForm form) {}

  /** Replaced as a whole, so that threads may share it. */
  private static volatile Optional<KnownForm> last = Optional.empty();
}
