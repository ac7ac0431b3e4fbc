package thwartwise.files.boat;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.json.InputFile;
import thwartwise.json.UnusableInput;

class InputFileTest {
  @TempDir Path folder;

  @Test
  void a_missing_file_is_said_to_be_missing() {
    refuses(folder.resolve("none.json"), "there is no such file. Check the name and the folder.");
  }

  @Test
  void a_folder_is_not_a_boat() {
    refuses(folder, "this is a folder, wanted a boat file. Name a file inside it.");
  }

  @Test
  void an_empty_file_is_said_to_be_empty() throws IOException {
    refuses(
        file(new byte[0]), "the file is empty, wanted a boat file. Check the name of the file.");
    refuses(
        file(" \n".getBytes(StandardCharsets.UTF_8)),
        "the file is empty, wanted a boat file. Check the name of the file.");
  }

  @Test
  void ten_megabytes_of_garbage_are_refused_by_size() throws IOException {
    byte[] garbage = new byte[10_000_000];
    new Random(1).nextBytes(garbage);
    refuses(
        file(garbage),
        "the file is larger than 1000 kB, wanted a boat file. Check the name of the file.");
  }

  @Test
  void binary_garbage_is_not_text() throws IOException {
    refuses(
        file(new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1}),
        "this is not text in UTF-8, wanted a boat file. Check the file.");
  }

  @Test
  void the_largest_allowed_size_is_still_read() throws IOException {
    byte[] blanks = new byte[InputFile.BOAT_BYTES];
    Arrays.fill(blanks, (byte) ' ');
    blanks[0] = '{';
    blanks[1] = '}';
    refuses(
        file(blanks),
        "the key \"format\" is missing."
            + " If this is a boat file, add \"format\": \"thwartwise/boat/1\".");
  }

  @Test
  void a_byte_order_mark_is_passed_over() throws IOException {
    Path file = file(("\uFEFF" + WrongBoats.goodFile()).getBytes(StandardCharsets.UTF_8));
    assertThat(BoatFile.read(file).name()).isEqualTo("Soup Ladle");
  }

  private Path file(byte[] bytes) throws IOException {
    return Files.write(folder.resolve("boat.json"), bytes);
  }

  private static void refuses(Path file, String says) {
    assertThatThrownBy(() -> BoatFile.read(file))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(file + ": " + says);
  }
}
