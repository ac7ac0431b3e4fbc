package thwartwise.shell;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandOption;
import org.springframework.shell.core.command.ExitStatus;
import org.springframework.shell.core.command.ParsedInput;

class CommandLineParserTest {
  private static final OptionWord HEIGHT =
      new OptionWord("z", "METRES", "height above the baseline", false);

  private final CommandLineParser parser =
      new CommandLineParser(
          List.of(
              command("inspect", OptionWord.BOAT, OptionWord.JSON, OptionWord.BY),
              command("move", HEIGHT),
              command("seat", SeatsCommand.PEOPLE),
              new HelpCommand(List::of),
              new QuitCommand()));

  @Test
  void a_word_with_spaces_stays_whole() {
    ParsedInput read = parser.parse(List.of("inspect", "--boat", "my boat.json"));

    assertThat(value(read, "boat")).contains("my boat.json");
  }

  @Test
  void a_negative_number_is_a_value() {
    assertThat(value(parser.parse(List.of("move", "--z", "-0.3")), "z")).contains("-0.3");
  }

  @Test
  void a_value_may_follow_an_equals_sign() {
    assertThat(value(parser.parse(List.of("move", "--z=-0.3")), "z")).contains("-0.3");
    assertThat(value(parser.parse(List.of("inspect", "--boat=a=b.json")), "boat"))
        .contains("a=b.json");
  }

  @Test
  void a_switch_takes_no_word_with_it() {
    ParsedInput read = parser.parse(List.of("inspect", "--json", "--boat", "b.json"));

    assertThat(value(read, "json")).isPresent();
    assertThat(value(read, "boat")).contains("b.json");
  }

  @Test
  void what_was_not_given_is_not_there() {
    ParsedInput read = parser.parse(List.of("inspect", "--boat", "b.json"));

    assertThat(value(read, "json")).isEmpty();
    assertThat(value(read, "by")).isEmpty();
  }

  @Test
  void a_typed_line_is_read_like_an_argument_list() {
    assertThat(parser.parse("inspect --boat 'my boat.json' --by Ann"))
        .isEqualTo(parser.parse(List.of("inspect", "--boat", "my boat.json", "--by", "Ann")));
  }

  @Test
  void help_may_be_asked_for_anywhere() {
    for (List<String> words :
        List.of(
            List.of("inspect", "--help"),
            List.of("inspect", "-h"),
            List.of("inspect", "--boat", "--help"),
            List.of("help", "inspect"))) {
      ParsedInput read = parser.parse(words);
      assertThat(read.commandName()).isEqualTo("help");
      assertThat(read.arguments()).containsExactly(new CommandArgument(0, "inspect"));
    }
  }

  @Test
  void the_words_other_programs_use_for_help_and_leaving_are_understood() {
    assertThat(parser.parse(List.of("--help")).commandName()).isEqualTo("help");
    assertThat(parser.parse(List.of("-h")).commandName()).isEqualTo("help");
    assertThat(parser.parse(List.of("exit")).commandName()).isEqualTo("quit");
  }

  @Test
  void a_misspelt_command_names_the_nearest_known_one() {
    refused(
        "Unknown command \"inspct\". Did you mean \"inspect\"? \"help\" lists all commands.",
        "inspct");
  }

  @Test
  void a_command_unlike_any_other_gets_no_guess() {
    refused("Unknown command \"calibrate\". \"help\" lists all commands.", "calibrate");
  }

  @Test
  void the_beginning_of_a_command_is_not_taken_for_it() {
    refused("Unknown command \"ins\". \"help\" lists all commands.", "ins");
  }

  @Test
  void a_misspelt_option_names_the_nearest_known_one() {
    refused(
        "inspect: unknown option \"--jsn\". Did you mean \"--json\"? \"help inspect\" lists its options.",
        "inspect",
        "--jsn",
        "--boat",
        "b.json");
  }

  @Test
  void a_misspelt_option_with_a_value_is_named_without_it() {
    refused(
        "inspect: unknown option \"--baot\". Did you mean \"--boat\"? \"help inspect\" lists its options.",
        "inspect",
        "--baot=b.json");
  }

  @Test
  void a_single_dash_is_no_option_of_ours() {
    refused("inspect: unknown option \"-x\". \"help inspect\" lists its options.", "inspect", "-x");
  }

  @Test
  void an_option_at_the_end_misses_its_value() {
    refused(
        "inspect: --boat needs a value, BOAT: a boat kept here or a file; left out, the only one.",
        "inspect",
        "--boat");
  }

  @Test
  void an_option_is_no_value_for_another() {
    refused(
        "inspect: --boat needs a value, BOAT: a boat kept here or a file; left out, the only one.",
        "inspect",
        "--boat",
        "--json");
  }

  @Test
  void an_empty_value_is_none() {
    refused(
        "inspect: --boat needs a value, BOAT: a boat kept here or a file; left out, the only one.",
        "inspect",
        "--boat=");
    refused(
        "inspect: --boat needs a value, BOAT: a boat kept here or a file; left out, the only one.",
        "inspect",
        "--boat",
        " ");
  }

  @Test
  void a_missing_option_is_named_with_its_meaning() {
    refused(
        "seat: --people LIST is missing, who wants to come: \"Iris 62 kg, boy 12, adult\".",
        "seat");
  }

  @Test
  void a_switch_with_a_value_is_refused() {
    refused(
        "inspect: --json takes no value. Leave out everything from the \"=\".",
        "inspect",
        "--json=yes",
        "--boat",
        "b.json");
  }

  @Test
  void an_option_given_twice_is_refused() {
    refused(
        "inspect: --boat is given twice. Keep one.",
        "inspect",
        "--boat",
        "a.json",
        "--boat",
        "b.json");
  }

  @Test
  void a_word_too_many_is_refused() {
    refused(
        "inspect: \"boat.json\" is one word too many. Put quotes around a name or path that holds spaces.",
        "inspect",
        "--boat",
        "my",
        "boat.json");
    refused(
        "help: \"walk\" is one word too many. Put quotes around a name or path that holds spaces.",
        "help",
        "inspect",
        "walk");
  }

  @Test
  void a_name_that_did_not_come_through_is_refused_before_it_stands_in_a_record() {
    refused(
        "The letters of \"Bj\uFFFD\uFFFDrn\" do not come through in this language setting. Run it with LC_ALL=C.UTF-8, or type it at our own prompt.",
        "inspect",
        "--by",
        "Bj\uFFFD\uFFFDrn",
        "--boat",
        "b.json");
  }

  @Test
  void what_a_terminal_would_obey_is_not_repeated() {
    refused("Unknown command \"?[31m\". \"help\" lists all commands.", "\u001b[31m");
  }

  private void refused(String message, String... words) {
    assertThatThrownBy(() -> parser.parse(List.of(words)))
        .isInstanceOf(UsageError.class)
        .hasMessage(message);
  }

  private static Optional<String> value(ParsedInput read, String option) {
    return read.options().stream()
        .filter(o -> option.equals(o.longName()))
        .map(CommandOption::value)
        .findFirst();
  }

  private static ShellCommand command(String name, OptionWord... words) {
    return new ShellCommand() {
      @Override
      public List<OptionWord> words() {
        return List.of(words);
      }

      @Override
      public String details() {
        return "";
      }

      @Override
      public String getName() {
        return name;
      }

      @Override
      public String getDescription() {
        return "";
      }

      @Override
      public ExitStatus execute(CommandContext context) {
        return ExitStatus.OK;
      }
    };
  }

  @Test
  void a_shell_about_a_folder_takes_it_where_a_line_names_none() {
    CommandLineParser about =
        new CommandLineParser(List.of(new RecordsCommand()), Optional.of("my boats"));

    assertThat(value(about.parse("records"), "folder")).contains("my boats");
    assertThat(value(about.parse("records --folder other"), "folder")).contains("other");
    assertThat(value(about.parse("records --folder=other"), "folder")).contains("other");
  }

  @Test
  void a_folder_alone_opens_the_shell_and_with_a_command_does_not() {
    assertThat(Main.onlyFolder(List.of("--folder", "my boats"))).contains("my boats");
    assertThat(Main.onlyFolder(List.of("--folder=my boats"))).contains("my boats");
    assertThat(Main.onlyFolder(List.of("--folder"))).isEmpty();
    assertThat(Main.onlyFolder(List.of("--folder="))).isEmpty();
    assertThat(Main.onlyFolder(List.of("records", "--folder", "my boats"))).isEmpty();
    assertThat(Main.onlyFolder(List.of())).isEmpty();
  }
}
