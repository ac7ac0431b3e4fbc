package thwartwise.shell;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.measured.Property;
import thwartwise.measured.PropertyGroup;
import thwartwise.page.LineWrap;

/** The single values of a boat file, object by object: key, range, and what is taken without it. */
final class BoatKeyTable {
  private static final int WIDTH = 80;
  private static final int KEY = 18;
  private static final String OPENING =
      """

      Single values, each with its range, and after "else" what is taken when it is
      left out. "help boat-schema" prints all of the file as a JSON Schema, for
      editors and programs.
      """;

  private BoatKeyTable() {}

  static String text() {
    return OPENING
        + PropertyGroup.ALL.stream().flatMap(BoatKeyTable::lines).collect(Collectors.joining());
  }

  private static Stream<String> lines(PropertyGroup group) {
    String place =
        group.place().isEmpty()
            ? "At the top"
            : "In \"" + group.place().replace(" ", "\", \"") + "\"";
    return Stream.concat(
        Stream.of("\n" + place + ":\n\n"),
        group.properties().stream().flatMap(each -> row(each).stream()).map(line -> line + "\n"));
  }

  private static List<String> row(Property<?, ?> property) {
    String otherwise = property.whenOmitted().isEmpty() ? "" : "; else " + property.whenOmitted();
    String key = "  " + property.key();
    return LineWrap.lines(
        property.type().described() + otherwise,
        key + " ".repeat(KEY - key.length()) + "  ",
        " ".repeat(KEY + 4),
        WIDTH);
  }
}
