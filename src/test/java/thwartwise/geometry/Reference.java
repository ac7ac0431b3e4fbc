package thwartwise.geometry;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
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
      List.of("hydrostatics.csv", "bilging.csv", "moments.csv", "loading-rules.csv");

  /** Published answers that are wrong or rounded; kept so that nobody takes them for true. */
  public static final String KNOWN_WRONG = "known-wrong.csv";

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
    List<Reference> rows = new ArrayList<>();
    for (String line : lines(file)) {
      if (!line.isBlank() && !line.startsWith("#")) {
        rows.add(row(line, file));
      }
    }
    return rows.subList(1, rows.size());
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
    String[] cells = line.split(";", -1);
    if (cells.length != 9) {
      throw new IllegalArgumentException(
          file + ": a row has " + cells.length + " cells instead of 9: " + line);
    }
    for (int i = 0; i < cells.length; i++) {
      cells[i] = cells[i].strip();
    }
    boolean header = cells[0].equals("id");
    return new Reference(
        cells[0],
        cells[1],
        cells[2],
        cells[3],
        cells[4],
        header ? Map.of() : numbers(cells[5]),
        header ? Map.of() : numbers(cells[6]),
        header ? Map.of() : numbers(cells[7]),
        cells[8]);
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
