package thwartwise.walk;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Questions about one thing, such as a station, a chamber or a piece of kit, whose answers can be
 * typed in one row.
 *
 * @param list what there can be several of, such as {@code kit}; ends with a dot
 * @param number which of them; 0 where there is only one
 */
record AnswerGroup(String list, int number) {
  private static final Pattern ONE_OF_SEVERAL =
      Pattern.compile(
          "((?:hull\\.(?:station|decked|part)|(?:changed\\.\\d+\\.|proof\\.)?person"
              + "|(?:changed\\.\\d+\\.)?measuredHow\\.other|opening|chamber|place|kit"
              + "|outfit|electrics\\.(?:run|circuit)|changed)\\.)(\\d+)(?:\\..*)?");

  /** The things of which a boat has only one, by the keys of their questions. */
  private static final Map<String, Pattern> ALONE =
      Map.ofEntries(
          Map.entry("boat", Pattern.compile("name|measuredBy|units|water|propulsion(?:\\.power)?")),
          Map.entry("battery", Pattern.compile("electrics\\.battery\\..+")),
          Map.entry("motor", Pattern.compile("electrics\\.motor\\..+")),
          Map.entry("panel", Pattern.compile("electrics\\.panel\\..+")),
          Map.entry("main wire", Pattern.compile("electrics\\.mainWire\\..+")),
          Map.entry("how measured", Pattern.compile("measuredHow\\.(?!any$).+")),
          Map.entry("rails, nobody aboard", Pattern.compile("proof\\.empty\\..+")),
          Map.entry("rails, people seated", Pattern.compile("proof\\.seated\\..+")),
          Map.entry("weight moved", Pattern.compile("proof\\.weight\\..+")),
          Map.entry("weight to port", Pattern.compile("proof\\.toPort\\..+")),
          Map.entry("weight to starboard", Pattern.compile("proof\\.toStarboard\\..+")),
          Map.entry("roll", Pattern.compile("proof\\.roll\\..+")),
          Map.entry("shape", Pattern.compile("hull\\.(?:length|stations|points|alike)")),
          Map.entry("weight", Pattern.compile("hull\\.(?:weighed|mass|scale\\..+)")),
          Map.entry("balance", Pattern.compile("hull\\.(?:centre|tilt)\\..+")),
          Map.entry(
              "borrowed hull",
              Pattern.compile(
                  "short\\.(?:length|form|beam|bottom|depth|stern|notch|mass|material)")),
          Map.entry("borrowed seats", Pattern.compile("short\\.(?:seats|seat\\..+|motor|kit)")),
          Map.entry("borrowed chamber", Pattern.compile("short\\.(?:chamber|test)\\..+")));

  /** The answer to these may hold a semicolon itself. */
  private static final Pattern FREE_WORDS = Pattern.compile("measuredBy|.*\\.(?:how|by|closedBy)");

  /** Measured or tested on one chamber; the answers say nothing about another chamber. */
  private static final Pattern OF_ITS_OWN =
      Pattern.compile("chamber\\.\\d+\\.(?:twin\\.)?(?:litres|test\\.(?:minutes|litresIn|head))");

  /** The position of a thing; two things do not lie in one spot. */
  private static final Pattern WHERE_IT_LIES =
      Pattern.compile(
          "kit\\.\\d+\\.[xyz]|place\\.\\d+\\.x(?:\\.(?:from|to))?|(?:opening|person)\\.\\d+\\.[xy]");

  static boolean isWhereItLies(String question) {
    return WHERE_IT_LIES.matcher(question).matches();
  }

  static boolean isMeasuredOfItself(String question) {
    return OF_ITS_OWN.matcher(question).matches();
  }

  static Optional<AnswerGroup> of(String question) {
    Matcher several = ONE_OF_SEVERAL.matcher(question);
    if (several.matches()) {
      return Optional.of(new AnswerGroup(several.group(1), Integer.parseInt(several.group(2))));
    }
    return ALONE.entrySet().stream()
        .filter(alone -> alone.getValue().matcher(question).matches())
        .map(alone -> new AnswerGroup(alone.getKey(), 0))
        .findFirst();
  }

  static boolean isFreeWords(String question) {
    return FREE_WORDS.matcher(question).matches();
  }

  boolean isNameOfStation(String question) {
    return list.equals("hull.station.") && question.endsWith(".name");
  }

  boolean holds(String question) {
    return of(question).filter(this::equals).isPresent();
  }

  /** The same question about another item of the list. */
  String of(int other, String question) {
    return list + other + question.substring((list + number).length());
  }
}
