package thwartwise.shell;

import java.util.ArrayList;
import java.util.List;

/**
 * Splits a typed line into words at spaces. A quotation mark at the start of a word, or after its
 * {@code =}, keeps everything up to the next one together; anywhere else it is a letter like any
 * other, so that {@code O'Dell} and {@code C:\boats} stay as typed.
 */
final class TypedLine {
  private static final char NO_QUOTE = 0;

  private final List<String> words = new ArrayList<>();
  private final StringBuilder word = new StringBuilder();
  private boolean inWord;
  private char quote = NO_QUOTE;

  private TypedLine() {}

  static List<String> words(String line) {
    TypedLine typed = new TypedLine();
    line.chars().forEach(letter -> typed.take((char) letter));
    typed.endLine();
    return List.copyOf(typed.words);
  }

  private void take(char letter) {
    if (quote != NO_QUOTE) {
      takeQuoted(letter);
    } else if (opensQuote(letter)) {
      quote = letter;
      inWord = true;
    } else if (Character.isWhitespace(letter)) {
      endWord();
    } else {
      word.append(letter);
      inWord = true;
    }
  }

  private void takeQuoted(char letter) {
    if (letter == quote) {
      quote = NO_QUOTE;
    } else {
      word.append(letter);
    }
  }

  private boolean opensQuote(char letter) {
    boolean atStart = !inWord || (word.length() > 0 && word.charAt(word.length() - 1) == '=');
    return atStart && (letter == '"' || letter == '\'');
  }

  private void endWord() {
    if (inWord) {
      words.add(word.toString());
    }
    word.setLength(0);
    inWord = false;
  }

  private void endLine() {
    if (quote != NO_QUOTE) {
      throw UsageError.openQuote(quote);
    }
    endWord();
  }
}
