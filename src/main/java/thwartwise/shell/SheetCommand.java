package thwartwise.shell;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.measure.NumberReader;
import thwartwise.measure.PrintableText;
import thwartwise.measure.Reading;
import thwartwise.sheet.MeasuringSheet;
import thwartwise.sheet.PrintedSheet.Paper;
import thwartwise.sheet.ProofSheet;
import thwartwise.sheet.SheetTopic;
import thwartwise.walk.PreviousBoats;
import thwartwise.walk.Walk;

/** Prints the sheet to fill in with a pencil before the walk. */
final class SheetCommand implements ShellCommand {
  private static final OptionWord BOAT =
      new OptionWord(
          "boat", "BOAT", "a boat kept here, or a boat file; left out, a blank sheet", false);
  private static final OptionWord PAPER =
      new OptionWord("paper", "SIZE", "A4 or letter; without it A4", false);
  private static final OptionWord POINTS =
      new OptionWord("points", "N", "points at each station, 2 to 12; without it 3", false);

  private static final OptionWord FITTINGS =
      new OptionWord("fittings", "", "the sheet for rowlocks, anchor, battery and wires", false);

  private static final OptionWord PROOF =
      new OptionWord("proof", "", "the sheet for a proof afloat of a boat", false);

  private static final int USUAL_POINTS = 3;
  private static final int MOST_POINTS = 12;

  private final Inspector inspector;

  SheetCommand(Inspector inspector) {
    this.inspector = inspector;
  }

  @Override
  public String getName() {
    return "sheet";
  }

  @Override
  public String getDescription() {
    return "print a measuring sheet to fill in with a pencil";
  }

  @Override
  public List<OptionWord> words() {
    return List.of(BOAT, FITTINGS, PROOF, PAPER, UnitsChoice.UNITS, POINTS, OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Writes a blank sheet as PDF and as HTML into the folder: what to measure
        where, with drawings, and room for every answer in the order in which "walk"
        asks for them. Print it, take it to the boat with a tape, scales and a jug,
        and type it in afterwards.

          sheet
          sheet --units feet --paper letter
          sheet --points 5            for a round side
          sheet --boat custard-tart   with what is known of that boat
          sheet --fittings            rowlocks, anchor line, leaks, wires, how measured
          sheet --proof --boat custard-tart   for "prove", beside the landing

        Of a known boat the sheet has what the boat file says, and room for what it
        does not say and for leak tests older than twelve months.
        Exits with 0 when it was written, with 2 when the boat cannot be read.
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    CommandInput given = new CommandInput(context);
    Paper paper = paper(given);
    if (given.has(PROOF)) {
      return proof(given, paper, context.outputWriter());
    }
    Walk walk = Walk.on(inspector.today(), PreviousBoats.NONE, RuleSetFile.cautiousDefault());
    MeasuringSheet sheet = sheet(given, walk);
    Workspace workspace = given.workspace();
    String name =
        topic(given).fileName() + sheet.boat().map(boat -> " " + boat).orElse("") + paper.ending();
    PrintWriter out = context.outputWriter();
    out.println("The walk asks in the order of this sheet.");
    save(workspace, name, sheet.pdf(paper, inspector.moment()), sheet.html(paper), out);
    if (topic(given) == SheetTopic.BOAT) {
      out.println("Rowlocks, cleats, anchor, leaks, battery or wires? Print: sheet --fittings");
    }
    return Exit.NOTHING_HOLDS_BACK.status();
  }

  private static void save(
      Workspace workspace, String name, byte[] pdf, String html, PrintWriter out) {
    Path toPrint = workspace.saveSheet(name, ".pdf", pdf);
    Path toSee = workspace.saveSheet(name, ".html", html.getBytes(StandardCharsets.UTF_8));
    out.println("To print: " + PrintableText.of(toPrint.toString()));
    out.println("To see:   " + PrintableText.of(toSee.toString()));
  }

  private ExitStatus proof(CommandInput given, Paper paper, PrintWriter out) {
    Boat boat = UnitsChoice.of(BoatFile.read(BoatChoice.of(given, this)), given, this);
    ProofSheet sheet = ProofSheet.of(boat);
    String name = ProofSheet.FILE_NAME + " " + boat.name() + paper.ending();
    out.println("\"prove\" asks in the order of this sheet.");
    save(given.workspace(), name, sheet.pdf(paper, inspector.moment()), sheet.html(paper), out);
    return Exit.NOTHING_HOLDS_BACK.status();
  }

  private MeasuringSheet sheet(CommandInput given, Walk walk) {
    int points = points(given);
    if (given.has(BOAT)) {
      Boat boat = UnitsChoice.of(BoatFile.read(BoatChoice.of(given, this)), given, this);
      return MeasuringSheet.of(topic(given), walk, boat, inspector.today());
    }
    return MeasuringSheet.blank(topic(given), walk, UnitsChoice.defaultSystem(given, this), points);
  }

  private static SheetTopic topic(CommandInput given) {
    return given.has(FITTINGS) ? SheetTopic.FITTINGS : SheetTopic.BOAT;
  }

  private Paper paper(CommandInput given) {
    String typed = given.text(PAPER).orElse("A4");
    return switch (typed.toLowerCase(Locale.ROOT)) {
      case "a4" -> Paper.A4;
      case "letter" -> Paper.LETTER;
      default ->
          throw UsageError.refused(
              this, "--paper is A4 or letter, not " + PrintableText.excerpt(typed) + ".");
    };
  }

  private int points(CommandInput given) {
    String typed = given.text(POINTS).orElse(Integer.toString(USUAL_POINTS));
    if (NumberReader.whole(typed) instanceof Reading.Understood<Integer> number
        && number.value() >= 2
        && number.value() <= MOST_POINTS) {
      return number.value();
    }
    throw UsageError.refused(
        this,
        "--points is a whole number from 2 to %s, not %s."
            .formatted(MOST_POINTS, PrintableText.excerpt(typed)));
  }
}
