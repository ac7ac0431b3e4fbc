package thwartwise.walk.questions;

import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.measure.Reading;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.Property;
import thwartwise.measured.Property.Settable;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.Replay;

/** Questions for what a boat may have besides kit, as the table of properties lists it. */
public record EquipmentQuestions(Replay replay, QuantityQuestions quantities) {
  /** The boat with the fittings that the table asks for; it may have none of them. */
  public Boat equipped(Boat boat) {
    Boat equipped = boat;
    for (Settable<Boat, Double> row : BoatProperties.EQUIPMENT) {
      equipped = row.concerns().test(equipped) ? equipped(row, equipped) : equipped;
    }
    return equipped;
  }

  private Boat equipped(Settable<Boat, Double> row, Boat boat) {
    Property<Boat, Double> property = row.property();
    return replay
        .ask(
            quantities
                .asked(property, property.key(), property.subject())
                .or(typed -> property == BoatProperties.BAILER ? bucket(typed) : Optional.empty())
                .orNone(property.whenOmitted()))
        .map(said -> row.setter().apply(boat, said))
        .orElse(boat);
  }

  /**
   * A bailer that nobody filled from a jug. Household buckets hold ten litres or more (judgement).
   */
  private Optional<Reading<Double>> bucket(String typed) {
    return typed.strip().equalsIgnoreCase("bucket") || typed.strip().equalsIgnoreCase("a bucket")
        ? Optional.of(
            quantities
                .litres(BoatProperties.BAILER.key(), "")
                .read("about " + BUCKET_LITRES + " l"))
        : Optional.empty();
  }

  private static final int BUCKET_LITRES = 10;
}
