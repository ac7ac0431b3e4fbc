package thwartwise.archive;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.json.UnusableInput;

class AtomicFileTest {
  @TempDir Path folder;

  @Test
  void a_file_is_written_with_its_folders_and_nothing_beside_it() throws IOException {
    Path file = folder.resolve("a/b/boat.json");
    AtomicFile.write(file, "Größe\n");
    assertThat(file).hasContent("Größe\n");
    assertThat(names(file.getParent())).containsExactly("boat.json");
  }

  @Test
  void a_second_writing_replaces_the_first() {
    Path file = folder.resolve("boat.json");
    AtomicFile.write(file, "a much longer first text");
    AtomicFile.write(file, "second");
    assertThat(file).hasContent("second");
  }

  @Test
  void a_folder_that_is_a_link_is_written_through() throws IOException {
    Path real = Files.createDirectory(folder.resolve("real"));
    Path link = Files.createSymbolicLink(folder.resolve("link"), real);
    AtomicFile.write(link.resolve("boat.json"), "text");
    assertThat(real.resolve("boat.json")).hasContent("text");
  }

  @Test
  void a_file_where_a_folder_is_needed_is_named_in_one_line() throws IOException {
    Path blocked = Files.writeString(folder.resolve("boats"), "in the way");
    Path file = blocked.resolve("boat.json");
    assertThatThrownBy(() -> AtomicFile.write(file, "text"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(
            file
                + ": cannot be written: a file stands where a folder is needed."
                + " Free the folder or name another one.");
    assertThat(blocked).hasContent("in the way");
  }

  @Test
  void a_failed_writing_leaves_nothing_half_written_behind() throws IOException {
    Path file = folder.resolve("boat.json");
    Files.createDirectories(file.resolve("occupied"));
    assertThatThrownBy(() -> AtomicFile.write(file, "text"))
        .isInstanceOf(UnusableInput.class)
        .hasMessageStartingWith(file + ": cannot be written: ")
        .hasMessageEndingWith(". Free the folder or name another one.");
    assertThat(names(folder)).containsExactly("boat.json");
  }

  private static String[] names(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toArray(String[]::new);
    }
  }
}
