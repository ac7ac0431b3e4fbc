package thwartwise.geometry;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * One row of an outside answer: what it is, where it was seen, what goes in, what must come out and
 * how near.
 *
 * @param kind which test feeds the row through the program
 * @param status READ, FROM MEMORY or DERIVED
 * @param tolerance for each expected value, with the reason in {@code why}
 */
public record Reference(
    String id,
    String kind,
    String what,
    String source,
    String status,
    Map<String, Double> inputs,
    Map<String, Double> expected,
    Map<String, Double> tolerance,
    String why) {

  /** Files of answers the program must meet. */
  public static final List<String> FILES =
      List.of(
          "hydrostatics.csv",
          "bilging.csv",
          "moments.csv",
          "loose-water.csv",
          "bays.csv",
          "lopsided.csv",
          "forces.csv",
          "swamped.csv",
          "people.csv",
          "weight-for-age.csv",
          "wind.csv",
          "electrics.csv",
          "loading-rules.csv",
          "persons-carried.csv",
          "uncertainty.csv",
          "proof-afloat.csv");

  /** Published answers that are wrong or rounded; kept so that nobody takes them for true. */
  public static final String KNOWN_WRONG = "known-wrong.csv";

  /** Entries of the list of outside answers that the program has nothing to answer with. */
  public static final String NOT_USED = "not-used.csv";

  /**
   * An entry no row feeds through the program.
   *
   * @param why what the program does not compute
   */
  public record NotUsed(String id, String what, String why) {}

  /** All rows of one kind, over all files. */
  public static Stream<Reference> of(String kind) {
    List<Reference> rows =
        FILES.stream().flatMap(f -> read(f).stream()).filter(r -> r.kind.equals(kind)).toList();
    if (rows.isEmpty()) {
      throw new IllegalArgumentException("No reference row is of the kind " + kind);
    }
    return rows.stream();
  }

  /** The one row with this name in any file. */
  public static Reference named(String id) {
    return FILES.stream()
        .flatMap(f -> read(f).stream())
        .filter(r -> r.id.equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("No reference row " + id));
  }

  public static List<Reference> read(String file) {
    return rows(file).map(line -> row(line, file)).toList();
  }

  public static List<NotUsed> notUsed() {
    return rows(NOT_USED).map(line -> cells(line, 3, NOT_USED)).map(Reference::notUsed).toList();
  }

  private static NotUsed notUsed(String[] cells) {
    return new NotUsed(cells[0], cells[1], cells[2]);
  }

  /** The lines below the header. */
  private static Stream<String> rows(String file) {
    return lines(file).stream().filter(l -> !l.isBlank() && !l.startsWith("#")).skip(1);
  }

  public double in(String name) {
    return value(inputs, name);
  }

  public double in(String name, double otherwise) {
    return inputs.getOrDefault(name, otherwise);
  }

  public double wanted(String name) {
    return value(expected, name);
  }

  public boolean wants(String name) {
    return expected.containsKey(name);
  }

  public double near(String name) {
    return value(tolerance, name);
  }

  @Override
  public String toString() {
    return id + " " + what;
  }

  private double value(Map<String, Double> values, String name) {
    if (!values.containsKey(name)) {
      throw new IllegalArgumentException("Reference row " + id + " has no " + name);
    }
    return values.get(name);
  }

  private static Reference row(String line, String file) {
    String[] cells = cells(line, 9, file);
    return new Reference(
        cells[0],
        cells[1],
        cells[2],
        cells[3],
        cells[4],
        numbers(cells[5]),
        numbers(cells[6]),
        numbers(cells[7]),
        cells[8]);
  }

  private static String[] cells(String line, int count, String file) {
    String[] cells = line.split(";", -1);
    if (cells.length != count) {
      throw new IllegalArgumentException(
          file + ": a row has " + cells.length + " cells instead of " + count + ": " + line);
    }
    return Arrays.stream(cells).map(String::strip).toArray(String[]::new);
  }

  private static Map<String, Double> numbers(String cell) {
    Map<String, Double> values = new TreeMap<>();
    Arrays.stream(cell.split("\\s+"))
        .filter(s -> !s.isEmpty())
        .map(s -> s.split("="))
        .forEach(pair -> values.put(pair[0], Double.valueOf(pair[1])));
    return values;
  }

  private static List<String> lines(String file) {
    try (InputStream in = Reference.class.getResourceAsStream("/reference/" + file);
        BufferedReader reader =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return reader.lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
