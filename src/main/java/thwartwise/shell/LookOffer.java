package thwartwise.shell;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.boat.PointAnswer;
import thwartwise.checklist.Checklist;
import thwartwise.checklist.PointQuestion;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.ChecklistFile;
import thwartwise.measure.PrintableText;
import thwartwise.measure.Reading;
import thwartwise.measure.YesOrNo;

/**
 * Offers a look at the fittings at the end of a walk. A person who declines has them entered as not
 * looked at, and "look" asks for them another day. Through a pipe nobody is asked, because the next
 * line there is a command and its writer did not stand at the boat.
 */
record LookOffer(Conversation conversation, LocalDate today, Workspace workspace) {
  /** Points for each minute, with the boat at hand (judgement). */
  private static final int A_MINUTE = 2;

  private static final String LATER =
      "  Later, then: until somebody looks, each of them counts as not looked at.";
  private static final String NOT_UNDERSTOOD =
      " is neither yes nor later. Type yes, or Enter for later.";

  /** The boat with what was found, or empty where nobody looked. */
  Optional<Boat> made(Path file) {
    List<Checklist> lists = ChecklistFile.bundledWith(workspace.checklistFiles());
    Boat boat = BoatFile.read(file);
    long due = PointQuestion.of(lists, boat).stream().filter(q -> q.isDue(boat, today)).count();
    if (due == 0) {
      return Optional.empty();
    }
    conversation.print("");
    if (!conversation.isAtTerminal()) {
      conversation.print("Not looked at by hand and eye: " + points(due) + ". Type look.");
      return Optional.empty();
    }
    return isTaken(due)
        ? Optional.of(
            new LookConversation(conversation, today, file, lists, false)
                .asked(boat, boat.measuredBy()))
        : Optional.empty();
  }

  /** Asks until it is answered; a person who leaves has declined. */
  private boolean isTaken(long due) {
    while (true) {
      Optional<String> typed = conversation.ask(question(due)).map(String::strip);
      if (typed.isEmpty()) {
        return false;
      }
      if (typed.get().isEmpty() || typed.get().equalsIgnoreCase("later")) {
        conversation.print(LATER);
        return false;
      }
      if (YesOrNo.read(typed.get()) instanceof Reading.Understood<Boolean> said) {
        if (!said.value()) {
          conversation.print(LATER);
        }
        return said.value();
      }
      conversation.print(PrintableText.excerpt(typed.get()) + NOT_UNDERSTOOD);
    }
  }

  private static String question(long due) {
    return "Look over the fittings now, about "
        + Math.max(1, due / A_MINUTE)
        + " min? (yes, later) [Enter: later]:";
  }

  private static String points(long due) {
    return due == 1 ? "1 point" : due + " points";
  }

  /** Whether a fault was found that holds the boat back. */
  static boolean isGrave(Boat boat) {
    return boat.pointAnswers().stream().anyMatch(PointAnswer::isGrave);
  }
}
