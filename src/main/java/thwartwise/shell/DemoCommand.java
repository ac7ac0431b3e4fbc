package thwartwise.shell;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.rules.RuleBook;

/** Writes the demo boat's file and inspects it. */
final class DemoCommand implements ShellCommand {
  private static final OptionWord FAULTS =
      new OptionWord("faults", "", "another boat instead, with twelve faults to find", false);

  private static final OptionWord PROOFS =
      new OptionWord("proofs", "", "two boats proved afloat instead", false);

  private final Inspector inspector;

  DemoCommand(Inspector inspector) {
    this.inspector = inspector;
  }

  @Override
  public String getName() {
    return "demo";
  }

  @Override
  public String getDescription() {
    return "write an invented boat's file and inspect it";
  }

  @Override
  public List<OptionWord> words() {
    return List.of(FAULTS, PROOFS, OptionWord.JSON, OptionWord.RULES, OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Shows the whole job on an invented boat: its file is written to the folder,
        under boats, inspected, and the record kept. Copy the file and change the
        numbers to begin a boat of your own without the walk.

        With --faults it is another invented boat, bought with battery, motor and
        panel, with twelve faults in chambers, wires and lines. Type wiring and range
        after it: not all of them are seen by one command.

        With --proofs two small boats are proved afloat: one floats as it was measured,
        the other weighs 30 kg more than its builder said. Their files are kept with
        the proofs; nothing is inspected.

        Exits with 0 when it ran, whatever the boat is like.
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    CommandInput given = new CommandInput(context);
    Workspace workspace = given.workspace();
    RuleBook book = RuleBooks.of(given);
    if (given.has(PROOFS)) {
      DemoProofs.print(workspace, inspector.today(), book.base(), context.outputWriter());
      return Exit.NOTHING_HOLDS_BACK.status();
    }
    Boat boat = given.has(FAULTS) ? faultyAsOf(inspector.today()) : asOf(inspector.today());
    InspectionOutput.inspecting(
        given,
        reader -> inspector.inspect(boat, Optional.empty(), book, reader),
        (inspection, reader) ->
            inspector.save(inspector.record(inspection, reader).withBoatFile(), workspace));
    return Exit.NOTHING_HOLDS_BACK.status();
  }

  // The invented boats that come with the program.
  private static final String RESOURCE = "/thwartwise/demo-boat.json";
  private static final String FAULTY = "/thwartwise/second-demo-boat.json";

  private static final String PROVED = "/thwartwise/proof-demo-boat.json";

  private static final String WRITTEN_NAME = "Mustard Spoon";
  private static final String WRITTEN_TEST_DATE = "2026-10-03";

  /**
   * The demo boat. Its leak tests were made some weeks before the day of the demo, so that it is
   * never out of date.
   */
  static Boat asOf(LocalDate today) {
    return asOf(today, RESOURCE);
  }

  /** The boat with twelve faults, looked over on the day of its leak tests. */
  static Boat faultyAsOf(LocalDate today) {
    return asOf(today, FAULTY);
  }

  /** One of the two boats with the same measurements. */
  static Boat provedAsOf(LocalDate today, String name) {
    String written = dated(today, PROVED);
    return BoatFile.parse(written.replace(WRITTEN_NAME, name), "the demo boat");
  }

  private static Boat asOf(LocalDate today, String resource) {
    return BoatFile.parse(dated(today, resource), "the demo boat");
  }

  private static String dated(LocalDate today, String resource) {
    return json(resource).replace(WRITTEN_TEST_DATE, today.minusWeeks(6).toString());
  }

  private static String json(String resource) {
    try (InputStream in = DemoCommand.class.getResourceAsStream(resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
