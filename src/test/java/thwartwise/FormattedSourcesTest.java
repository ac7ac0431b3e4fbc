package thwartwise;

import static thwartwise.Assertions.assertThat;

import com.google.googlejavaformat.java.Formatter;
import com.google.googlejavaformat.java.FormatterException;
import com.google.googlejavaformat.java.ImportOrderer;
import com.google.googlejavaformat.java.JavaFormatterOptions;
import com.google.googlejavaformat.java.RemoveUnusedImports;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every source is as {@code mvn spotless:apply} leaves it. The plugin's own check does the same on
 * one thread while nothing else runs; here it runs next to the other tests.
 */
class FormattedSourcesTest {
  private static final String ALL_ASSERTIONS = "org.assertj.core.api.Assertions.assertThat;";
  private static final Formatter FORMATTER = new Formatter();

  @ParameterizedTest
  @ValueSource(strings = {"src/main/java", "src/test/java"})
  void sources_are_formatted(String folder) throws IOException {
    assertThat(sources(Path.of(folder)))
        .hasSizeGreaterThan(100)
        .filteredOn(source -> !isFormatted(source))
        .as("format them with: mvn spotless:apply")
        .isEmpty();
  }

  @Test
  void no_test_makes_the_compiler_weigh_every_assertion_there_is() throws IOException {
    assertThat(sources(Path.of("src/test/java")))
        .filteredOn(source -> text(source).contains("import static " + ALL_ASSERTIONS))
        .as("import thwartwise.Assertions.assertThat, and add there what it lacks")
        .isEmpty();
  }

  @Test
  void a_broken_line_and_an_unused_import_are_seen() {
    String formatted = "import java.util.List;\n\nclass A {\n  List<String> b;\n}\n";
    assertThat(formatted(formatted)).isEqualTo(formatted);
    assertThat(formatted("import java.util.List;\nclass A {List<\nString> b;}"))
        .isEqualTo(formatted);
    assertThat(formatted("import java.util.Set;\n" + formatted)).isEqualTo(formatted);
  }

  private static List<Path> sources(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".java")).toList();
    }
  }

  private static boolean isFormatted(Path source) {
    String text = text(source);
    return formatted(text).equals(text);
  }

  private static String text(Path source) {
    try {
      return Files.readString(source);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The plugin's steps, in its order. */
  private static String formatted(String source) {
    try {
      return ImportOrderer.reorderImports(
          RemoveUnusedImports.removeUnusedImports(FORMATTER.formatSource(source)),
          JavaFormatterOptions.Style.GOOGLE);
    } catch (FormatterException e) {
      throw new IllegalArgumentException(source, e);
    }
  }
}
