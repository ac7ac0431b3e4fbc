package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.springframework.shell.core.command.CommandExecutionException;
import thwartwise.hull.UnusableBoat;

class FailureTest {

  @Test
  void a_message_for_a_person_is_passed_on_as_it_is() {
    assertThat(Failure.of(new UnusableBoat("The rail lies under the keel. Measure again.")).line())
        .isEqualTo("The rail lies under the keel. Measure again.");
  }

  @Test
  void what_the_shell_library_wrapped_is_unwrapped() {
    var wrapped = new CommandExecutionException("Unable", new UnusableBoat("Too short."));

    assertThat(Failure.of(wrapped).line()).isEqualTo("Too short.");
  }

  @Test
  void our_own_fault_is_said_in_one_line() {
    assertThat(Failure.of(new IllegalStateException("two\n  lines")).line())
        .isEqualTo(
            "Something went wrong inside thwartwise: IllegalStateException (two lines); no record was written. Please report this with the boat file.");
  }

  @Test
  void our_own_fault_without_a_word_is_said_in_one_line() {
    assertThat(Failure.of(new IllegalStateException()).line())
        .isEqualTo(
            "Something went wrong inside thwartwise: IllegalStateException; no record was written. Please report this with the boat file.");
  }

  @Test
  void too_little_memory_says_how_to_give_more() {
    assertThat(Failure.of(new OutOfMemoryError("Java heap space")).line())
        .isEqualTo(
            "There is not enough memory for this boat; no record was written. Give Java more, as in"
                + " java -Xmx4g -jar thwartwise.jar, or give the boat fewer stations and places.");
  }

  @Test
  void too_many_parts_are_called_so() {
    assertThat(Failure.of(new StackOverflowError()).line())
        .isEqualTo(
            "This boat has too many parts to be worked out; no record was written. Give the boat"
                + " file fewer places, chambers or pieces of kit.");
  }

  @Test
  void work_given_up_is_no_fault() {
    assertThat(Failure.of(new CancellationException()).line())
        .isEqualTo("Stopped. Nothing was written.");
  }
}
