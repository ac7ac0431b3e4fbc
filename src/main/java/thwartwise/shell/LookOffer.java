package thwartwise.shell;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.boat.PointAnswer;
import thwartwise.checklist.Checklist;
import thwartwise.checklist.PointQuestion;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.ChecklistFile;

/**
 * At the end of a walk the fittings can be looked over at once. Who puts it off has them stand as
 * not looked at, and "look" goes through them another day.
 */
record LookOffer(Conversation conversation, LocalDate today, Workspace workspace) {
  /** Points a minute, with the boat at hand (judgement). */
  private static final int A_MINUTE = 2;

  private static final String LATER =
      "  Later, then: until somebody looks, each of them stands as not looked at.";

  /** The boat as it was found, or empty where nothing grave can have been found. */
  Optional<Boat> made(Path file) {
    List<Checklist> lists = ChecklistFile.shippedAnd(workspace.checklistFiles());
    Boat boat = BoatFile.read(file);
    long due = PointQuestion.of(lists, boat).stream().filter(q -> q.isDue(boat, today)).count();
    if (due == 0) {
      return Optional.empty();
    }
    conversation.print("");
    Optional<String> answer = conversation.ask(question(due));
    if (answer.isEmpty()) {
      return Optional.empty();
    }
    if (!answer.get().strip().toLowerCase(Locale.ROOT).matches("y|yes|now")) {
      conversation.print(LATER);
      return Optional.empty();
    }
    return Optional.of(
        new LookConversation(conversation, today, file, lists, false)
            .asked(boat, boat.measuredBy()));
  }

  private static String question(long due) {
    return "Look over the fittings now? "
        + (due == 1 ? "1 point" : due + " points")
        + ", about "
        + Math.max(1, due / A_MINUTE)
        + " min (yes, later) [Enter: later]:";
  }

  /** Whether something was found that holds the boat back. */
  static boolean isGrave(Boat boat) {
    return boat.pointAnswers().stream().anyMatch(PointAnswer::isGrave);
  }
}
