package thwartwise.sampleboats;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.Inspection;
import thwartwise.inspection.PlainHulls;
import thwartwise.inspection.Report;
import thwartwise.rules.RuleBook;

/**
 * Every number of the reports of the demo boat, with advice, and of the six plain hulls. Run by
 * hand before and after a change that may move none:
 *
 * <pre>
 * NumbersListing write numbers.txt
 * NumbersListing compare numbers.txt
 * </pre>
 *
 * Numbers are found by walking the report's records, whatever the components are called, so a
 * change of types needs no change here. Equal numbers count once. A number is missing when nothing
 * within one part in a million stands in the report of that boat.
 */
final class NumbersListing {
  private static final double NEAR = 1e-6;

  private NumbersListing() {}

  public static void main(String[] args) throws Exception {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    Path file = Path.of(args[1]);
    if (args[0].equals("write")) {
      Files.write(file, lines());
      return;
    }
    System.exit(compare(Files.readAllLines(file), lines(), out) ? 0 : 1);
  }

  private static List<String> lines() throws Exception {
    RuleBook book = RuleSetFile.bundledRuleBook();
    Map<String, Report> reports = new TreeMap<>();
    reports.put("demo", Inspection.of(demo(), book, PlainHulls.TODAY));
    for (Boat boat : hulls()) {
      reports.put(boat.name(), Inspection.withoutAdvice(boat, book, PlainHulls.TODAY));
    }
    List<String> lines = new ArrayList<>();
    for (Map.Entry<String, Report> report : reports.entrySet()) {
      NavigableSet<Double> found = new TreeSet<>();
      collect(report.getValue(), found);
      found.forEach(n -> lines.add(report.getKey() + '\t' + String.format(Locale.ROOT, "%.9e", n)));
    }
    return lines;
  }

  private static List<Boat> hulls() {
    return List.of(
        PlainHulls.pram(),
        PlainHulls.skiff(),
        PlainHulls.punt(),
        PlainHulls.kneltInCanoe(),
        PlainHulls.roundDinghy(),
        PlainHulls.dory());
  }

  private static Boat demo() throws IOException {
    try (var in = Report.class.getResourceAsStream("/thwartwise/demo-boat.json")) {
      return BoatFile.parse(
          new String(in.readAllBytes(), StandardCharsets.UTF_8), "demo-boat.json");
    }
  }

  private static void collect(Object value, Collection<Double> into) throws Exception {
    if (value instanceof Number number) {
      into.add(number.doubleValue());
    } else if (value instanceof OptionalDouble optional) {
      optional.ifPresent(into::add);
    } else if (value instanceof Optional<?> optional) {
      collect(optional.orElse(null), into);
    } else if (value instanceof Collection<?> list) {
      for (Object item : list) {
        collect(item, into);
      }
    } else if (value instanceof Map<?, ?> map) {
      collect(map.values(), into);
    } else if (value instanceof Record) {
      for (RecordComponent component : value.getClass().getRecordComponents()) {
        component.getAccessor().setAccessible(true);
        collect(component.getAccessor().invoke(value), into);
      }
    }
  }

  private static boolean compare(List<String> then, List<String> now, PrintStream out) {
    List<String> missing = without(then, now);
    missing.forEach(line -> out.println("gone: " + line));
    without(now, then).forEach(line -> out.println("new:  " + line));
    out.println(then.size() + " numbers then, " + missing.size() + " of them gone");
    return missing.isEmpty();
  }

  private static List<String> without(List<String> these, List<String> those) {
    return these.stream().filter(line -> !in(those, line)).toList();
  }

  private static boolean in(List<String> lines, String line) {
    return lines.stream().anyMatch(other -> same(other.split("\t"), line.split("\t")));
  }

  private static boolean same(String[] one, String[] other) {
    double a = Double.parseDouble(one[1]);
    double b = Double.parseDouble(other[1]);
    boolean near = a == b || Math.abs(a - b) <= NEAR * Math.max(1e-3, Math.abs(a));
    return one[0].equals(other[0]) && near;
  }
}
