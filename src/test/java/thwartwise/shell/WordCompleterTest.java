package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jline.reader.Candidate;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.impl.DefaultParser;
import org.jline.terminal.impl.DumbTerminal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.archive.Workspace;
import thwartwise.record.SampleBoats;
import thwartwise.shell.CommandLines.WordCompleter;

class WordCompleterTest {
  @TempDir Path temp;

  private WordCompleter completer() {
    return new WordCompleter(
        List.of(
            new HelpCommand(List::of),
            new QuitCommand(),
            new CompareCommand(),
            new FleetCommand(null),
            new SupposeCommand(null)),
        new Workspace(temp));
  }

  @Test
  void the_first_word_is_a_command() throws Exception {
    assertThat(proposals("")).containsExactly("help", "quit", "compare", "fleet", "suppose");
  }

  @Test
  void further_words_are_the_options_of_that_command() throws Exception {
    assertThat(proposals("quit ")).containsExactly("--folder");
  }

  @Test
  void an_option_already_on_the_line_is_not_proposed_again() throws Exception {
    assertThat(proposals("quit --folder here ")).isEmpty();
  }

  @Test
  void an_unknown_command_has_no_options() throws Exception {
    assertThat(proposals("inspct ")).isEmpty();
  }

  @Test
  void behind_an_option_that_wants_a_boat_stand_the_boats_that_are_kept() throws Exception {
    new Workspace(temp).saveBoat(SampleBoats.plain());
    assertThat(proposals("compare --boat ")).containsExactly("Soup Ladle");
    assertThat(proposals("compare 1 2 --boat \"Soup")).containsExactly("Soup Ladle");
  }

  @Test
  void kit_and_places_of_the_boats_that_are_kept_may_be_supposed() throws Exception {
    new Workspace(temp).saveBoat(SampleBoats.plain());
    assertThat(proposals("suppose ")).contains("battery", "motor", "stern", "without", "--boat");
    assertThat(proposals("suppose battery at the stern "))
        .containsExactlyInAnyOrder("seat", "--boat", "--rules", "--units", "--folder");
  }

  @Test
  void behind_an_option_that_wants_a_file_stand_the_files_there() throws Exception {
    Files.createFile(temp.resolve("boats.html"));
    Files.createDirectory(temp.resolve("old"));
    assertThat(proposals("fleet --html " + temp + "/"))
        .containsExactlyInAnyOrder(temp + "/boats.html", temp + "/old/");
  }

  private List<String> proposals(String line) throws Exception {
    List<Candidate> candidates = new ArrayList<>();
    try (var terminal =
        new DumbTerminal(
            java.io.InputStream.nullInputStream(), new java.io.ByteArrayOutputStream())) {
      LineReader reader = LineReaderBuilder.builder().terminal(terminal).build();
      completer().complete(reader, new DefaultParser().parse(line, line.length()), candidates);
    }
    return candidates.stream().map(Candidate::value).toList();
  }
}
