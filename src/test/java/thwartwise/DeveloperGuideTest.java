package thwartwise;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the guide for developers names is there: whoever looks a class up is to find it. */
class DeveloperGuideTest {
  private static final Path GUIDE = Path.of("DEVELOPERS.md");

  /** A type between back quotes, with or without its package before it and a member behind it. */
  private static final Pattern NAMED =
      Pattern.compile("`((?:[a-z]+/)*)([A-Z][A-Za-z0-9]*[a-z][A-Za-z0-9]*)(?:[.(#][^`]*)?`");

  private static final Pattern DECLARED =
      Pattern.compile(
          "^ *(?:[a-z-]+ )*@?(?:class|record|interface|enum) (\\w+)", Pattern.MULTILINE);

  /** Of the JDK and of the shell library. */
  private static final Set<String> NOT_OURS = Set.of("Command", "Locale", "ServiceLoader");

  private static final Pattern ROOM = Pattern.compile("^[ │]*[├└]─ ([a-z.]+) ", Pattern.MULTILINE);

  @Test
  void every_class_named_in_the_guide_exists_where_it_says() throws IOException {
    Map<String, Set<String>> packages = declared();
    Set<String> missing = new TreeSet<>();
    Matcher named = NAMED.matcher(Files.readString(GUIDE));
    int seen = 0;
    while (named.find()) {
      seen++;
      Set<String> in = packages.getOrDefault(named.group(2), Set.of());
      boolean there = in.stream().anyMatch(p -> p.endsWith("/" + named.group(1)));
      if (!there && !NOT_OURS.contains(named.group(2))) {
        missing.add(named.group(1) + named.group(2));
      }
    }
    assertThat(missing).isEmpty();
    assertThat(seen).isGreaterThan(100);
  }

  @Test
  void every_test_that_begins_before_the_others_exists() throws IOException {
    assertThat(declared().keySet()).containsAll(LongTestsFirst.names());
  }

  @Test
  void the_tree_in_the_guide_is_that_of_the_packages() throws IOException {
    List<String> drawn =
        ROOM.matcher(Files.readString(GUIDE)).results().map(room -> room.group(1)).toList();
    assertThat(drawn)
        .as("the tree drawn in DEVELOPERS.md, in the order of ArchitectureTest")
        .isEqualTo(ArchitectureTest.packages());
  }

  /** Where each type of ours is declared, the classes inside others among them. */
  private static Map<String, Set<String>> declared() throws IOException {
    Map<String, Set<String>> packages = new HashMap<>();
    try (Stream<Path> files = Files.walk(Path.of("src"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        String folder = file.getParent().toString().replace('\\', '/') + "/";
        Matcher type = DECLARED.matcher(Files.readString(file));
        while (type.find()) {
          packages.computeIfAbsent(type.group(1), unused -> new TreeSet<>()).add(folder);
        }
      }
    }
    return packages;
  }
}
