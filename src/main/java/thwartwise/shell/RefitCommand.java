package thwartwise.shell;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.files.boat.BoatFile;
import thwartwise.json.UnusableInput;
import thwartwise.measure.PrintableText;
import thwartwise.walk.engine.Answer;

/** The walk that asks only what has changed on a boat measured before. */
final class RefitCommand implements ShellCommand {
  private static final OptionWord BOAT =
      new OptionWord("boat", "BOAT", "a boat kept here; left out, it is asked", false);

  private final WalkCommand walk;

  RefitCommand(WalkCommand walk) {
    this.walk = walk;
  }

  @Override
  public String getName() {
    return "refit";
  }

  @Override
  public String getDescription() {
    return "tell what has changed on a boat, inspect it again, compare";
  }

  @Override
  public List<OptionWord> words() {
    return List.of(BOAT, OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Asks which boat of the folder it is, unless --boat says it, then what has
        changed: kit added, taken out or moved, a chamber opened, sealed or tested, a
        new cut or hole, the hull weighed again, other people. Leak tests older than
        twelve months are asked for again. All else is taken from the boat file.
        Then the boat is inspected, and what came of the changes is set beside the
        last record.

        The words of "walk" work here too, and answers are kept as they are there.
        Exit codes are those of "inspect"; 2 when it was left before its end, or when
        no boat was measured yet.
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    CommandInput given = new CommandInput(context);
    if (given.workspace().boats().isEmpty()) {
      throw UsageError.refused(this, "no boat was measured here yet. \"walk\" measures one.");
    }
    Answer way = new Answer("way", "changed");
    return walk.execute(
        context,
        given.has(BOAT) ? List.of(way, new Answer("changed.boat", kept(given))) : List.of(way));
  }

  /** The name of the boat, which must be saved here, because its record is the one before. */
  private String kept(CommandInput given) {
    Path file = BoatChoice.of(given, this);
    String name = BoatFile.read(file).name();
    if (!Files.exists(given.workspace().boatPath(name))) {
      throw new UnusableInput(
          PrintableText.of(file.toString())
              + ": "
              + PrintableText.excerpt(name)
              + " is not kept in this folder, so there is no record to set the changes beside."
              + " Inspect it first: \"inspect --boat\" and the file.");
    }
    return name;
  }
}
