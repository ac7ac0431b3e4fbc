package thwartwise.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads one of a few words. The beginning of a word is enough when only one word begins so; other
 * spellings may be added.
 */
public final class ChoiceReader<T> {

  /** A choice: the value, its word, its other spellings. */
  private record Choice<T>(T value, String word, List<String> spellings) {

    boolean matches(String typed) {
      return NormalizedInput.of(word).equals(typed) || spellings.contains(typed);
    }

    boolean begins(String typed) {
      return NormalizedInput.of(word).startsWith(typed);
    }
  }

  private final List<Choice<T>> choices;

  private ChoiceReader(List<Choice<T>> choices) {
    this.choices = List.copyOf(choices);
  }

  public static <T> ChoiceReader<T> of(T value, String word, String... spellings) {
    return new ChoiceReader<T>(List.of()).or(value, word, spellings);
  }

  /** A copy with one more choice; spellings in lower case. */
  public ChoiceReader<T> or(T value, String word, String... spellings) {
    List<Choice<T>> more = new ArrayList<>(choices);
    more.add(new Choice<>(value, word, List.of(spellings)));
    return new ChoiceReader<>(more);
  }

  public Reading<T> read(String typed) {
    String plain = NormalizedInput.isTooLong(typed) ? "" : NormalizedInput.of(typed);
    return exact(plain)
        .or(() -> onlyBeginning(plain))
        .map(choice -> Reading.understood(choice.value(), choice.word()))
        .orElseGet(
            () ->
                Reading.refused(
                    PrintableText.excerpt(typed)
                        + " is not one of these. Type one of: "
                        + words()
                        + "."));
  }

  /** The words, as they stand in a prompt. */
  public String words() {
    return listed(all());
  }

  /** Names in a row, with semicolons between them if a name contains a comma. */
  public static String listed(List<String> names) {
    return String.join(names.stream().anyMatch(n -> n.contains(",")) ? "; " : ", ", names);
  }

  /** The words one by one. */
  public List<String> all() {
    return choices.stream().map(Choice::word).toList();
  }

  private Optional<Choice<T>> exact(String plain) {
    return choices.stream().filter(choice -> choice.matches(plain)).findFirst();
  }

  private Optional<Choice<T>> onlyBeginning(String plain) {
    List<Choice<T>> candidates =
        plain.isEmpty() ? List.of() : choices.stream().filter(c -> c.begins(plain)).toList();
    return candidates.size() == 1 ? Optional.of(candidates.get(0)) : Optional.empty();
  }
}
