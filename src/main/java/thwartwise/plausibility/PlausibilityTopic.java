package thwartwise.plausibility;

import java.util.Arrays;
import java.util.Optional;

/**
 * The topics of what can look wrong. Some are about one named thing, others about the whole hull.
 */
public enum PlausibilityTopic {
  BLOCK("block", false),
  PANEL_TWIST("panel-twist", false),
  OUTLINE("outline", false),
  PROPORTIONS("proportions", false),
  DEPTH("depth", false),
  STATION("station", true),
  LOWEST_POINT("lowest-point", false),
  HULL_MASS("hull-mass", false),
  DENSITY("density", false),
  CHAMBER("chamber", true),
  LEAK_TEST("leak-test", true),
  CHAMBER_TOP("chamber-top", true),
  KIT("kit", true),
  KIT_MASS("kit-mass", true),
  CLEAT("cleat", true),
  PLACE("place", true),
  PLACE_ALONG("place-along", true),
  PLACE_SIDE("place-side", true),
  SEAT("seat", true),
  OPENING("opening", true);

  private final String key;
  private final boolean named;

  PlausibilityTopic(String key, boolean named) {
    this.key = key;
    this.named = named;
  }

  /** The word in a file. */
  public String key() {
    return key;
  }

  /** Whether a doubt about it names one thing of the boat. */
  public boolean isNamed() {
    return named;
  }

  static Optional<PlausibilityTopic> of(String key) {
    return Arrays.stream(values()).filter(topic -> topic.key.equals(key)).findFirst();
  }
}
