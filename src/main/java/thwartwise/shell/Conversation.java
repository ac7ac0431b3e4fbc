package thwartwise.shell;

import java.util.Optional;

/** Somebody to talk to: at a terminal, through a pipe, or in a test. */
interface Conversation {

  void say(String text);

  /** The line typed at the prompt; empty when the other side wants to leave or is gone. */
  Optional<String> ask(String prompt);
}
