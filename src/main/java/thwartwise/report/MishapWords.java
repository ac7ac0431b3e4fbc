package thwartwise.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.StiffOffTheMiddle;
import thwartwise.checks.Unit;
import thwartwise.page.FigureText;

/**
 * What happens to the people where a check that limits the crew falls short, each mishap once: a
 * boat that sinks does not roll over as well.
 */
final class MishapWords {
  private static final String SWAMPED = "swamped";
  private static final String LIFT = "swamped, lift to spare";
  private static final String LOST = " lost";
  private static final String LEFT = ", freeboard left";

  /** When people move or sit so, by the name of the check. */
  private static final Map<String, String> WHEN =
      Map.of(
          "three fifths to one side",
          "when everyone moves to one side",
          StiffOffTheMiddle.SUBJECT,
          "when people sit stiff a hand's breadth off the middle",
          "swamped, half the crew's weight to one side",
          "when people lean to one side",
          "swamped, everyone a little off the middle",
          "when people sit a little off the middle");

  /** What goes wrong first when one more steps in, by the name of the check. */
  private static final Map<String, String> STOPS =
      Map.ofEntries(
          Map.entry("freeboard at rest", "its edge comes too near the water"),
          Map.entry(LIFT, "full of water it lifts too little"),
          Map.entry("swamped, heel", "full of water it leans or rolls over"),
          Map.entry("swamped, higher end above the water", "full of water both ends go too deep"),
          Map.entry("swamped, lower end under the water", "full of water one end goes too deep"));

  private MishapWords() {}

  /** Without figures; the name itself where there are no words for it. */
  static String ofCheck(String check) {
    String when = WHEN.getOrDefault(check, WHEN.getOrDefault(Finding.subject(check), ""));
    if (!when.isEmpty()) {
      String start = check.startsWith(SWAMPED) ? "full of water it " : "it ";
      return check.endsWith(LEFT)
          ? "its side comes too near the water " + when
          : start + "leans too far " + when;
    }
    return check.startsWith(SWAMPED) && check.endsWith(LOST)
        ? "full of water, one chamber leaking, it lifts too little"
        : STOPS.getOrDefault(check, check);
  }

  static List<String> of(List<Finding> findings) {
    Map<String, Finding> worst = new LinkedHashMap<>();
    findings.stream()
        .filter(Finding::holdsBack)
        .forEach(f -> worst.merge(f.check(), f, Finding::worse));
    boolean sinks = sinks(worst.get(LIFT));
    List<Finding> all = List.copyOf(worst.values());
    return all.stream()
        .filter(f -> !(sinks && f.subject().equals(SWAMPED) && !f.check().equals(LIFT)))
        .filter(f -> !followsFrom(f, all))
        .map(MishapWords::told)
        .distinct()
        .toList();
  }

  private static boolean sinks(Finding lift) {
    return lift != null && lift.value().orElse(0) < 0;
  }

  /** Of a boat that rolls over nobody asks how much of its side is left, or which end is up. */
  private static boolean followsFrom(Finding finding, List<Finding> all) {
    return finding.unit() == Unit.METRE
        && all.stream()
            .anyMatch(
                f -> f.unit() == Unit.DEGREE && rolls(f) && f.subject().equals(finding.subject()));
  }

  private static boolean rolls(Finding finding) {
    return finding.outcome() == Outcome.FALLS_SHORT
        && (finding.value().isEmpty() || FindingWords.turnsOver(finding));
  }

  private static String told(Finding finding) {
    if (finding.outcome() == Outcome.NOT_ASSESSED) {
      return finding.check() + ": not worked out, so it counts against the boat";
    }
    String words = words(finding);
    return finding.outcome() == Outcome.BORDERLINE
        ? words + ", and tape and scales are not fine enough to tell"
        : words;
  }

  private static String words(Finding finding) {
    String check = finding.check();
    if (finding.unit() == Unit.KILOGRAM && finding.subject().equals(SWAMPED)) {
      return lift(finding);
    }
    if (finding.unit() == Unit.DEGREE) {
      return heel(finding, check.startsWith(SWAMPED));
    }
    return switch (check) {
      case "freeboard at rest" -> edge(finding, "Its lowest edge", "");
      case "swamped, higher end above the water" ->
          edge(finding, "Full of water its higher end", "");
      case "swamped, lower end under the water" ->
          finding.value().isEmpty()
              ? "Full of water it does not lie level"
              : "Full of water one end goes "
                  + FindingWords.value(finding)
                  + " under; limit "
                  + FindingWords.limit(finding);
      default ->
          check.endsWith(LEFT)
              ? edge(finding, "Its side", " " + when(finding))
              : FindingWords.told(finding, "");
    };
  }

  private static String lift(Finding finding) {
    String lost = finding.check().endsWith(LOST) ? " with one chamber leaking" : "";
    OptionalDouble has = finding.value();
    return has.orElse(-1) < 0
        ? "It sinks when full of water"
            + lost
            + (has.isEmpty()
                ? ""
                : ": " + FigureText.with(FigureText.up(-has.getAsDouble(), 0), "kg") + " too heavy")
        : "Full of water"
            + lost
            + " it lifts "
            + FindingWords.value(finding)
            + " more than its load; it needs "
            + FindingWords.limit(finding);
  }

  private static String heel(Finding finding, boolean swamped) {
    String when = when(finding);
    String start = swamped ? "Full of water it " : "It ";
    String end = when.isEmpty() ? "" : " " + when;
    return rolls(finding)
        ? start + "rolls over" + end
        : start
            + "leans "
            + FindingWords.value(finding)
            + end
            + "; limit "
            + FindingWords.limit(finding);
  }

  private static String edge(Finding finding, String what, String when) {
    double has = finding.value().orElse(-1);
    return has < 0
        ? what + " goes under the water" + when
        : what
            + " is "
            + FindingWords.value(finding)
            + " above the water"
            + when
            + "; it needs "
            + FindingWords.limit(finding);
  }

  private static String when(Finding finding) {
    return WHEN.getOrDefault(finding.check(), WHEN.getOrDefault(finding.subject(), ""));
  }
}
