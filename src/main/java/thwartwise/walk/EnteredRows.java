package thwartwise.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.ReplayResult;
import thwartwise.walk.engine.ReplayResult.AcceptedAnswer;
import thwartwise.walk.engine.Reply;

/**
 * The rows of one list as they were typed. {@code list kit} shows them; {@code again kit 2} asks
 * for the second one again.
 *
 * @param word what the list is called
 * @param list as in {@link AnswerGroup}
 */
record EnteredRows(ReplayResult replay, String word, String list) {
  private static final Map<String, String> LISTS =
      Map.of(
          "station", "hull.station.",
          "deck", "hull.decked.",
          "opening", "opening.",
          "chamber", "chamber.",
          "place", "place.",
          "kit", "kit.",
          "person", "person.");

  private static final Pattern SHOWN = Pattern.compile("list ([a-z]+?)s?");
  private static final Pattern AGAIN = Pattern.compile("again(?: ([a-z]+?)s?)?(?: (\\d{1,2}))?");

  /** The reply to a typed line, or empty if the line is neither of these commands. */
  static Optional<Reply> reply(ReplayResult played, String word) {
    Matcher shown = SHOWN.matcher(word);
    if (shown.matches()) {
      return named(played, shown.group(1)).map(rows -> new Reply.Listed(rows.table()));
    }
    Matcher again = AGAIN.matcher(word);
    return again.matches()
        ? Optional.of(
            Optional.ofNullable(again.group(1))
                .map(name -> named(played, name))
                .orElseGet(() -> open(played))
                .map(rows -> rows.again(again.group(2)))
                .orElse(new Reply.Refused(HOW)))
        : Optional.empty();
  }

  private static final String HOW =
      "Type again with what and which, as in again kit 2; one of: "
          + LISTS.keySet().stream().sorted().collect(Collectors.joining(", "))
          + ". list kit shows the numbers.";

  /** The rows of a list that the last answer finished, or empty. */
  static Optional<String> finishedList(ReplayResult played, String question) {
    return AnswerGroup.of(question)
        .filter(group -> question.endsWith(RepeatedQuestion.ANY) && group.number() > 2)
        .flatMap(group -> ofList(played, group.list()))
        .map(EnteredRows::table);
  }

  private static Optional<EnteredRows> named(ReplayResult played, String word) {
    return Optional.ofNullable(LISTS.get(word)).map(list -> new EnteredRows(played, word, list));
  }

  /** The list to which the open question belongs. */
  private static Optional<EnteredRows> open(ReplayResult played) {
    return played
        .open()
        .flatMap(open -> AnswerGroup.of(open.entry().key()))
        .flatMap(group -> ofList(played, group.list()));
  }

  private static Optional<EnteredRows> ofList(ReplayResult played, String list) {
    return LISTS.entrySet().stream()
        .filter(known -> known.getValue().equals(list))
        .map(known -> new EnteredRows(played, known.getKey(), list))
        .findFirst();
  }

  private Reply again(String digits) {
    List<Answer> these =
        digits == null ? List.of() : rows().getOrDefault(Integer.parseInt(digits), List.of());
    if (these.isEmpty()) {
      return new Reply.Refused(
          "There is no %s of that number. list %s shows them; then again %s and its number."
              .formatted(word, word, word));
    }
    List<Answer> left = new ArrayList<>();
    replay.accepted().stream().map(AcceptedAnswer::answer).forEach(left::add);
    left.addAll(replay.rest());
    left.removeAll(these);
    return new Reply.WentBack(left, "Asked again. You had: " + row(these));
  }

  private String table() {
    SortedMap<Integer, List<Answer>> rows = rows();
    if (rows.isEmpty()) {
      return "There is no %s yet.".formatted(word);
    }
    return rows.entrySet().stream()
        .map(e -> String.format(Locale.ROOT, "%3d. %s", e.getKey(), row(e.getValue())))
        .collect(
            Collectors.joining(
                "\n",
                "",
                "\nagain %s %d asks for one of them again.".formatted(word, rows.lastKey())));
  }

  /** One row in the form in which it can be typed again. */
  private static String row(List<Answer> these) {
    // The row of a station without a name begins with its first figure.
    return these.stream()
        .map(Answer::typed)
        .dropWhile(String::isEmpty)
        .collect(Collectors.joining("; "));
  }

  private SortedMap<Integer, List<Answer>> rows() {
    SortedMap<Integer, List<Answer>> rows = new TreeMap<>();
    for (AcceptedAnswer given : replay.accepted()) {
      Answer answer = given.answer();
      AnswerGroup.of(answer.question())
          .filter(
              group ->
                  group.list().equals(list) && !answer.question().endsWith(RepeatedQuestion.ANY))
          .ifPresent(
              group -> rows.computeIfAbsent(group.number(), n -> new ArrayList<>()).add(answer));
    }
    return rows;
  }
}
