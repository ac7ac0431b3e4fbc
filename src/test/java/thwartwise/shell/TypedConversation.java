package thwartwise.shell;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Queue;

/** Somebody who types what was noted beforehand, and keeps every line said and asked. */
final class TypedConversation implements Conversation {
  private final List<String> said = new ArrayList<>();
  private final List<String> prompts = new ArrayList<>();
  private final Queue<String> typed;

  TypedConversation(Collection<String> typed) {
    this.typed = new ArrayDeque<>(typed);
  }

  @Override
  public void print(String text) {
    text.lines().forEach(said::add);
  }

  @Override
  public Optional<String> ask(String prompt) {
    prompts.add(prompt);
    return Optional.ofNullable(typed.poll());
  }

  @Override
  public boolean isAtTerminal() {
    return true;
  }

  List<String> said() {
    return said;
  }

  List<String> prompts() {
    return prompts;
  }

  boolean isAllTyped() {
    return typed.isEmpty();
  }
}
