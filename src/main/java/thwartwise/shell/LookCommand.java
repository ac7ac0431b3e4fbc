package thwartwise.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.boat.Boat;
import thwartwise.checklist.Checklist;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.ChecklistFile;

/** Asks what hand and eye find at each system of a boat, and saves the answers in its file. */
final class LookCommand implements ShellCommand {
  private static final OptionWord BY = new OptionWord("by", "NAME", "who looks", false);
  private static final OptionWord ALL =
      new OptionWord("all", "", "ask again what was answered already", false);

  private final Inspector inspector;

  LookCommand(Inspector inspector) {
    this.inspector = inspector;
  }

  @Override
  public String getName() {
    return "look";
  }

  @Override
  public String getDescription() {
    return "go through the systems of a boat by hand and eye";
  }

  @Override
  public List<OptionWord> words() {
    return List.of(OptionWord.BOAT, BY, ALL, PreparedAnswers.ANSWERS, OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Asks the points of the checklists that concern this boat, a system at a
        time: chambers, battery, motor, oars and so on. Each is answered with
          yes    as it should be
          no     not as it should be
          Enter  not looked at, which the record says
          n/a    does not apply
        and a note behind a comma. "why" tells the reason, "back" goes back, "list"
        shows the systems, "leave" stops; every answer is kept in the boat file at
        once, so "look" goes on where it was left. What was answered is asked again
        after the time its point names, or when the thing was changed.

        What is not as it should be counts at the next inspection: a pocket left
        open opens its chamber, kit that can slide is loose. No answer lets more
        people aboard. A club's own lists lie in the folder, under checklists: a
        point with the id of one of ours stands in its place. Such a list is asked
        here and not printed with the page ("help checklists").

        Exit codes, for scripts:
          0  nothing grave was found
          1  something must be put right first, or holds the launch
          2  the boat file or a checklist cannot be used; nothing was written
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    CommandInput given = new CommandInput(context);
    Path file = BoatChoice.of(given, this);
    Boat boat = BoatFile.read(file);
    List<Checklist> lists = ChecklistFile.bundledWith(given.workspace().checklistFiles());
    LookConversation look =
        new LookConversation(
            PreparedAnswers.conversation(context, given),
            inspector.today(),
            file,
            lists,
            given.has(ALL));
    Optional<String> by = given.text(BY).or(boat::measuredBy);
    Boat found = look.asked(boat, by);
    return (LookOffer.isGrave(found) ? Exit.HOLDS_BACK : Exit.NOTHING_HOLDS_BACK).status();
  }
}
