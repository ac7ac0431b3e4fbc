package thwartwise.plausibility;

import java.util.Arrays;
import java.util.Optional;

/** What can look wrong. Some topics are about one named thing, others about the whole hull. */
public enum Topic {
  BLOCK("block", "fullness of the hull under water", false),
  PANEL_TWIST("panel-twist", "twist of the panels", false),
  OUTLINE("outline", "outline between the stations", false),
  PROPORTIONS("proportions", "breadth of the hull for its length", false),
  DEPTH("depth", "depth of the hull for its breadth", false),
  STATION("station", "station", true),
  LOWEST_POINT("lowest-point", "lowest point of the bottom", false),
  HULL_MASS("hull-mass", "mass of the bare hull", false),
  DENSITY("density", "swamped density of the hull", false),
  CHAMBER("chamber", "litres of chamber", true),
  LEAK_TEST("leak-test", "date of the leak test of chamber", true),
  CHAMBER_TOP("chamber-top", "top of chamber", true),
  KIT("kit", "kit", true),
  KIT_MASS("kit-mass", "mass of kit", true),
  CLEAT("cleat", "cleat", true),
  PLACE("place", "place", true),
  PLACE_ALONG("place-along", "how far forward place", true),
  PLACE_SIDE("place-side", "side of place", true),
  SEAT("seat", "height of the seat", true),
  OPENING("opening", "opening", true);

  private final String key;
  private final String words;
  private final boolean named;

  Topic(String key, String words, boolean named) {
    this.key = key;
    this.words = words;
    this.named = named;
  }

  /** As it stands in a file. */
  public String key() {
    return key;
  }

  /** As it stands in a sentence, before the name if it has one. */
  public String words() {
    return words;
  }

  /** Whether a doubt about it names one thing of the boat. */
  public boolean isNamed() {
    return named;
  }

  static Optional<Topic> of(String key) {
    return Arrays.stream(values()).filter(topic -> topic.key.equals(key)).findFirst();
  }
}
