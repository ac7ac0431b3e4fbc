package thwartwise.walk.questions;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import thwartwise.geometry.Box;
import thwartwise.hull.HullForm;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.UnusableBoat;
import thwartwise.inspection.ChamberVolumeComparison;
import thwartwise.measure.QuantityText;

/**
 * The volume that the box of a chamber cuts out of the hull's inside, to compare with the litres
 * poured in. A walk asks for the same volume at every later question, so the last one is cached.
 */
public final class ChamberBoxVolume {
  private static final int REMEMBERED = 64;

  private final Map<Drawn, Optional<Double>> known = new ConcurrentHashMap<>();

  private record Drawn(HullMeasurements hull, Box box) {}

  /** The comparison with litres poured in, m³; empty if the box cannot be drawn. */
  public Optional<String> comparison(double poured, HullMeasurements hull, Box box) {
    return volume(new Drawn(hull, box)).map(drawn -> words(poured, drawn));
  }

  private Optional<Double> volume(Drawn asked) {
    if (known.size() > REMEMBERED) {
      known.clear();
    }
    return known.computeIfAbsent(asked, ChamberBoxVolume::drawn);
  }

  private static Optional<Double> drawn(Drawn asked) {
    try {
      double volume = HullForm.of(asked.hull()).inside().within(asked.box()).volume();
      return Optional.of(volume).filter(v -> v > 0);
    } catch (UnusableBoat e) {
      return Optional.empty();
    }
  }

  private static String words(double poured, double drawn) {
    long percent = Math.round(100 * Math.abs(poured - drawn) / drawn);
    String comparison = "by its box " + QuantityText.litres(drawn);
    if (percent == 0) {
      return comparison;
    }
    String difference = comparison + ", so " + percent + " % " + (poured < drawn ? "less" : "more");
    String smaller = "; the smaller counts";
    return ChamberVolumeComparison.disagree(poured, drawn)
        ? difference + smaller + "; one of the two is wrong: measure the box and pour again"
        : difference + smaller;
  }
}
