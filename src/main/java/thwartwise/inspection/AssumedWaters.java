package thwartwise.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import thwartwise.boat.MethodAssumption;
import thwartwise.boat.MethodAssumption.ShelteredWater;
import thwartwise.boat.MethodAssumption.WaterProperty;
import thwartwise.boat.Waters;
import thwartwise.rules.RuleSet;
import thwartwise.rules.ValidWaters;

/** The assumptions for waters that nobody described, and how waves enter the figures. */
final class AssumedWaters {
  private static final String WAVE_SHARE = "wave-share-heeled";

  private final RuleSet rules;
  private final Waters waters;

  private AssumedWaters(RuleSet rules, Waters waters) {
    this.rules = rules;
    this.waters = waters;
  }

  static List<MethodAssumption> of(RuleSet rules, Waters waters) {
    List<MethodAssumption> all = new ArrayList<>();
    List<ShelteredWater> missing = new AssumedWaters(rules, waters).missing();
    if (!missing.isEmpty()) {
      all.add(new MethodAssumption.UnstatedWaters(missing));
    }
    all.add(
        new MethodAssumption.WaveAsFreeboard(
            rules.value(WAVE_SHARE), rules.limit(WAVE_SHARE).basis().word()));
    return all;
  }

  private List<ShelteredWater> missing() {
    return Stream.of(WaterProperty.values())
        .filter(property -> !isStated(property))
        .map(this::sheltered)
        .toList();
  }

  private boolean isStated(WaterProperty property) {
    return switch (property) {
      case WAVES -> waters.waves().isPresent();
      case BREAKING -> waters.breaking().isPresent();
      case WIND -> waters.wind().isPresent();
      case CURRENT -> waters.current().isPresent();
      case WEIR -> waters.weir().isPresent();
      case WASH -> waters.wash().isPresent();
      case TEMPERATURE -> waters.temperature().isPresent();
      case OFFSHORE -> waters.offshore().isPresent();
    };
  }

  private ShelteredWater sheltered(WaterProperty property) {
    return switch (property) {
      case WAVES -> limited(property, "wave");
      case WIND -> limited(property, "wind");
      case CURRENT -> limited(property, "current");
      case TEMPERATURE -> limited(property, "cold-water");
      case OFFSHORE -> limited(property, "offshore-most", ValidWaters.offshore(rules, waters));
      case BREAKING, WEIR, WASH -> new ShelteredWater(property, OptionalDouble.empty(), "");
    };
  }

  private ShelteredWater limited(WaterProperty property, String limit) {
    return limited(property, limit, rules.value(limit));
  }

  private ShelteredWater limited(WaterProperty property, String limit, double value) {
    return new ShelteredWater(
        property, OptionalDouble.of(value), rules.limit(limit).basis().word());
  }
}
