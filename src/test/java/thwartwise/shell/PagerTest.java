package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PagerTest {
  @TempDir Path folder;

  @Test
  void what_pager_names_comes_before_less_and_more() throws Exception {
    String path = folder.toString();
    assertThat(Pager.command(Map.of("PATH", path))).isEmpty();

    assertThat(program("more")).exists();
    assertThat(Pager.command(Map.of("PATH", path))).contains(List.of("more"));
    assertThat(program("less")).exists();
    assertThat(Pager.command(Map.of("PATH", path))).contains(List.of("less"));
    assertThat(Pager.command(Map.of("PATH", path, "PAGER", "less -S")))
        .contains(List.of("sh", "-c", "less -S"));
  }

  @Test
  void a_terminal_that_can_only_print_gets_it_as_it_is() {
    StringWriter out = new StringWriter();

    Pager.ofTerminal(Map.of("TERM", "dumb", "PAGER", "false"))
        .show("The page.", new PrintWriter(out, true));

    assertThat(out.toString().strip()).isEqualTo("The page.");
  }

  private Path program(String name) throws Exception {
    Path file = Files.createFile(folder.resolve(name));
    assertThat(file.toFile().setExecutable(true)).isTrue();
    return file;
  }
}
