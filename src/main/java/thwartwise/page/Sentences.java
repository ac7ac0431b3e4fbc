package thwartwise.page;

import java.util.List;
import java.util.Optional;

/**
 * Sentences that belong together, each with its capital and its stop. Blank ones are left out.
 *
 * @param sentences in the order they are reported
 */
public record Sentences(List<String> sentences) {
  public Sentences {
    sentences = sentences.stream().map(Sentence::of).filter(s -> !s.isEmpty()).toList();
  }

  static Sentences of(String... sentences) {
    return new Sentences(List.of(sentences));
  }

  public String joined() {
    return String.join(" ", sentences);
  }

  boolean isEmpty() {
    return sentences.isEmpty();
  }

  /** The first sentence, if others explain it; empty when there is only one. */
  Optional<String> first() {
    return sentences.size() > 1 ? Optional.of(sentences.get(0)) : Optional.empty();
  }

  /** All sentences after {@link #first()}. */
  String rest() {
    return String.join(" ", sentences.subList(first().isPresent() ? 1 : 0, sentences.size()));
  }

  /** Whether it introduces what stands below it. */
  boolean opens() {
    return joined().endsWith(":");
  }
}
