package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PromptTest {
  private static final String GREETING =
      """
      thwartwise 9.9: how much a small open boat can carry.
      "walk" measures a boat, "demo" shows an example, "help" lists the rest.
      """;

  private final TestShell shell = TestShell.open();

  @Test
  void it_greets_runs_what_is_typed_and_leaves_on_quit() {
    shell.typing("version", "  ", "inspct", "quit", "version").openPrompt();

    assertThat(shell.out())
        .isEqualTo(
            GREETING
                + """
                thwartwise> version
                thwartwise unpackaged
                thwartwise>  \s
                thwartwise> inspct
                Unknown command "inspct". Did you mean "inspect"? "help" lists all commands.
                thwartwise> quit
                """);
  }

  @Test
  void exit_leaves_too_and_so_does_the_end_of_the_input() {
    shell.typing("exit", "version").openPrompt();
    assertThat(shell.out()).isEqualTo(GREETING + "thwartwise> exit\n");

    TestShell ended = TestShell.open();
    ended.openPrompt();
    assertThat(ended.out()).isEqualTo(GREETING + "thwartwise> ");
  }

  @Test
  void ctrl_c_gives_up_the_line_and_says_how_to_leave() {
    shell.typing(TestShell.CTRL_C, "version").openPrompt();

    assertThat(shell.out())
        .contains("Type \"quit\", or press Ctrl-D, to leave.\n")
        .contains("thwartwise unpackaged\n");
  }

  @Test
  void a_quotation_that_never_ends_does_not_end_the_shell() {
    shell.typing("inspect --by \"Ann", "version").openPrompt();

    assertThat(shell.out())
        .contains("A quotation mark (\") is opened and never closed.")
        .contains("thwartwise unpackaged\n");
  }

  @Test
  void at_a_terminal_an_error_is_broken_between_words_and_for_a_script_it_is_one_line() {
    shell.typing("wiring --boat no_such_boat_of_ours").openPrompt();

    assertThat(shell.out())
        .contains(
            """
            no_such_boat_of_ours: there is no such file, and no boat of that name is kept
            here. Check the name and the folder.
            """);

    shell.run("wiring", "--boat", "no_such_boat_of_ours");
    assertThat(shell.err())
        .isEqualTo(
            "no_such_boat_of_ours: there is no such file, and no boat of that name is kept here."
                + " Check the name and the folder.\n");
  }
}
