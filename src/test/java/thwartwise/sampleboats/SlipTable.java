package thwartwise.sampleboats;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import thwartwise.boat.Boat;

/** For each kind of slip how often it is caught, lowers, changes nothing, or raises in silence. */
final class SlipTable {
  private final Map<SlipKind, Map<SlipOutcome, Integer>> counts = new LinkedHashMap<>();
  private final Map<SlipKind, List<String>> raised = new LinkedHashMap<>();

  static List<SlipKind> kinds() {
    return Stream.concat(TapeSlips.all().stream(), PencilSlips.all().stream()).toList();
  }

  /**
   * One way for each boat that gives occasion for it, another station or another thing from boat to
   * boat.
   */
  static List<SlippedBoat> oneEach(SlipKind kind, List<Boat> boats) {
    List<SlippedBoat> slips = new ArrayList<>();
    for (Boat boat : boats) {
      List<SlippedBoat> all = kind.made().apply(boat);
      if (!all.isEmpty()) {
        slips.add(all.get((slips.size() + kind.name().length()) % all.size()));
      }
    }
    return slips;
  }

  void add(SlipKind kind, SlippedBoat slip, SlipJudge.Verdict verdict) {
    counts
        .computeIfAbsent(kind, k -> new EnumMap<>(SlipOutcome.class))
        .merge(verdict.outcome(), 1, Integer::sum);
    if (verdict.outcome() == SlipOutcome.RAISED) {
      raised
          .computeIfAbsent(kind, k -> new ArrayList<>())
          .add(slip.truth().name() + ", " + slip.how() + ": " + verdict.note());
    }
  }

  /** What rose in silence, one line each. */
  List<String> raised(SlipKind kind) {
    return raised.getOrDefault(kind, List.of());
  }

  /** In the form of a page of notes. */
  String markdown() {
    StringBuilder rows = new StringBuilder();
    rows.append(
        "| slip | boats | caught | lowered | unchanged | raised in silence | why it may |\n");
    rows.append("|---|---|---|---|---|---|---|\n");
    counts.forEach((kind, by) -> rows.append(row(kind, by)));
    raised.forEach(
        (kind, lines) -> {
          rows.append("\n").append(kind.name()).append(":\n");
          lines.forEach(line -> rows.append("- ").append(line).append("\n"));
        });
    return rows.toString();
  }

  private static String row(SlipKind kind, Map<SlipOutcome, Integer> by) {
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %d | %d | %d | %s |%n",
        kind.name(),
        by.values().stream().mapToInt(Integer::intValue).sum(),
        by.getOrDefault(SlipOutcome.CAUGHT, 0),
        by.getOrDefault(SlipOutcome.LOWERED, 0),
        by.getOrDefault(SlipOutcome.UNCHANGED, 0),
        by.getOrDefault(SlipOutcome.RAISED, 0),
        kind.mayRaise().orElse(""));
  }

  /** By hand: the whole table for boats of these numbers, written as it grows. */
  public static void main(String[] args) throws IOException {
    List<Boat> all = OrdinaryBoats.twentyTwo();
    List<Boat> boats = Stream.of(args[0].split(",")).map(Integer::parseInt).map(all::get).toList();
    SlipJudge judge = new SlipJudge();
    SlipTable table = new SlipTable();
    for (SlipKind kind : kinds()) {
      oneEach(kind, boats).forEach(slip -> table.add(kind, slip, judge.of(slip)));
      Files.writeString(Path.of(args[1]), table.markdown());
    }
  }
}
