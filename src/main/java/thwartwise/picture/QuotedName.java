package thwartwise.picture;

import thwartwise.measure.Quoted;

/** Names that somebody typed, in a caption. */
final class QuotedName {
  private QuotedName() {}

  /** In quotes, so that a comma within one does not make two of it, and cut short when long. */
  static String of(String typed) {
    return Quoted.of(typed);
  }
}
