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

/** What is unlikely about the mass of a bare hull, given the skin that its stations make. */
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
   * How high the centre of a bare hull lies that nobody measured. Its skin's centre is too low a
   * guess, since rails, seats, decks and knees are not in it; so whatever the hull weighs beyond
   * its skin, and a quarter of it at least (judgement), is taken to lie at the highest rail, above
   * which nothing is built into an open boat. Where bottom and sides differ, only the thinner of
   * the two is certain to be skin everywhere: what is thicker may be the sides.
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

  /** How high the centre of the skin alone lies. */
  Optional<Double> skinCentre() {
    return form().map(form -> form.centre().z());
  }

  /** What stands for a skin nobody measured is thick, and would leave too little for the rail. */
  private double likelyThickness() {
    return material
        .filter(m -> m.isUnmeasured(shell.thinner()))
        .map(Material::usualThickness)
        .orElse(shell.thinner());
  }

  /** Nothing where the stations do not close into a hull; the build of the boat reports it. */
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

  /** The hull asked about last, since a walk comes to the same one at every question after it. */
  private record KnownForm(HullMeasurements hull, HullForm form) {}

  /** Replaced as a whole, so that threads may share it. */
  private static volatile Optional<KnownForm> last = Optional.empty();
}
