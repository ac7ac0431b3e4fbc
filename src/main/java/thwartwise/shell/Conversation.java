package thwartwise.shell;

import java.util.List;
import java.util.Optional;

/** Somebody to talk to: at a terminal, through a pipe, or in a test. */
interface Conversation {

  void say(String text);

  /** The line typed at the prompt; empty when the other side wants to leave or is gone. */
  Optional<String> ask(String prompt);

  /** The same, where some words are likely; a terminal completes them. */
  default Optional<String> ask(String prompt, List<String> likely) {
    return ask(prompt);
  }
}
