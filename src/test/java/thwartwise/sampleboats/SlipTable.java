package thwartwise.sampleboats;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
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
  private final Map<SlipKind, Integer> left = new LinkedHashMap<>();

  /** First those that may never raise the answer, then those that nothing can show. */
  static List<SlipKind> kinds() {
    return Stream.concat(TapeSlips.all().stream(), PencilSlips.all().stream())
        .sorted(Comparator.comparing(kind -> kind.mayRaise().isPresent()))
        .toList();
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

  /** One that is not caught, and whose answer nobody worked out. */
  void leave(SlipKind kind) {
    counts.computeIfAbsent(kind, k -> new EnumMap<>(SlipOutcome.class));
    left.merge(kind, 1, Integer::sum);
  }

  /** One of each boat is looked at; of those not caught the first few are answered in full. */
  void fill(SlipKind kind, List<Boat> boats, SlipJudge judge, int answered) {
    int more = answered;
    for (SlippedBoat slip : oneEach(kind, boats)) {
      if (judge.caught(slip).isPresent() || more-- > 0) {
        add(kind, slip, judge.of(slip));
      } else {
        leave(kind);
      }
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
        "| slip | boats | caught | lowered | unchanged | raised in silence | not answered | why it may |\n");
    rows.append("|---|---|---|---|---|---|---|---|\n");
    counts.forEach((kind, by) -> rows.append(row(kind, by)));
    raised.forEach(
        (kind, lines) -> {
          rows.append("\n").append(kind.name()).append(":\n");
          lines.forEach(line -> rows.append("- ").append(line).append("\n"));
        });
    return rows.toString();
  }

  private String row(SlipKind kind, Map<SlipOutcome, Integer> by) {
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %d | %d | %d | %d | %s |%n",
        kind.name(),
        by.values().stream().mapToInt(Integer::intValue).sum() + left.getOrDefault(kind, 0),
        by.getOrDefault(SlipOutcome.CAUGHT, 0),
        by.getOrDefault(SlipOutcome.LOWERED, 0),
        by.getOrDefault(SlipOutcome.UNCHANGED, 0),
        by.getOrDefault(SlipOutcome.RAISED, 0),
        left.getOrDefault(kind, 0),
        kind.mayRaise().orElse(""));
  }

  /**
   * By hand: the table of boats of these numbers, written as it grows. Told: numbers, how many to
   * answer of each kind, file.
   */
  public static void main(String[] told) throws IOException {
    List<Boat> all = OrdinaryBoats.twentyTwo();
    List<Boat> boats = Stream.of(told[0].split(",")).map(Integer::parseInt).map(all::get).toList();
    SlipJudge judge = new SlipJudge();
    SlipTable table = new SlipTable();
    for (SlipKind kind : kinds()) {
      table.fill(kind, boats, judge, Integer.parseInt(told[1]));
      Files.writeString(Path.of(told[2]), table.markdown());
    }
  }
}
