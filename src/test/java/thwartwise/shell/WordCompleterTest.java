package thwartwise.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.jline.reader.Candidate;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.impl.DefaultParser;
import org.jline.terminal.impl.DumbTerminal;
import org.junit.jupiter.api.Test;

class WordCompleterTest {
  private final WordCompleter completer =
      new WordCompleter(List.of(new HelpCommand(List::of), new QuitCommand()));

  @Test
  void the_first_word_is_a_command() throws Exception {
    assertThat(proposals("")).containsExactly("help", "quit");
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

  private List<String> proposals(String line) throws Exception {
    List<Candidate> candidates = new ArrayList<>();
    try (var terminal =
        new DumbTerminal(
            java.io.InputStream.nullInputStream(), new java.io.ByteArrayOutputStream())) {
      LineReader reader = LineReaderBuilder.builder().terminal(terminal).build();
      completer.complete(reader, new DefaultParser().parse(line, line.length()), candidates);
    }
    return candidates.stream().map(Candidate::value).toList();
  }
}
