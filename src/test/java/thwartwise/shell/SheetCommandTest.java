package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.page.PdfPage;
import thwartwise.sheet.MeasuringSheet;
import thwartwise.sheet.SheetTopic;
import thwartwise.walk.PreviousBoats;
import thwartwise.walk.Walk;

class SheetCommandTest {
  @TempDir Path folder;

  private final TestShell shell =
      TestShell.whoseInspection((b, r, d) -> MadeUpReports.with(Role.LIMITS_CREW, Outcome.MEETS));

  private int run(String... words) {
    return shell.run(words);
  }

  @ParameterizedTest
  @CsvSource({
    "A4,metric,measuring-sheet,A4 portrait",
    "A4,feet,measuring-sheet,A4 portrait",
    "letter,metric,measuring-sheet-letter,letter portrait",
    "letter,feet,measuring-sheet-letter,letter portrait"
  })
  void it_writes_a_pdf_of_at_most_three_sheets_and_a_page(
      String paper, String units, String name, String size) throws IOException {
    assertThat(run("sheet", "--paper", paper, "--units", units, "--folder", folder.toString()))
        .isZero();
    Path pdf = folder.resolve("sheets").resolve(name + ".pdf");
    assertThat(PdfPage.sheets(Files.readAllBytes(pdf))).isBetween(2, 3);
    String page = Files.readString(folder.resolve("sheets").resolve(name + ".html"));
    assertThat(page).contains(size, "sheet --fittings").doesNotContain("ampere-hours");
    assertThat(shell.out())
        .isEqualTo(
            """
            The walk asks in the order of this sheet.
            To print: %s
            To see:   %s
            Rowlocks, cleats, anchor, leaks, battery or wires? Print: sheet --fittings
            """
                .formatted(pdf, pdf.toString().replace(".pdf", ".html")));
  }

  /** Most boats have no wires: who has some prints this one, too. */
  @ParameterizedTest
  @CsvSource({"A4,measuring-sheet-fittings", "letter,measuring-sheet-fittings-letter"})
  void what_is_bolted_on_or_electric_is_a_sheet_by_itself(String paper, String name)
      throws IOException {
    assertThat(run("sheet", "--fittings", "--paper", paper, "--folder", folder.toString()))
        .isZero();
    Path pdf = folder.resolve("sheets").resolve(name + ".pdf");
    assertThat(PdfPage.sheets(Files.readAllBytes(pdf))).isBetween(1, 2);
    String page = Files.readString(folder.resolve("sheets").resolve(name + ".html"));
    assertThat(page)
        .contains("Rowlocks, cleats, anchor line, leaks", "Battery and motor")
        .contains("A solar panel", "Wires from the battery")
        .doesNotContain("The boat and its hull", "And also");
    assertThat(shell.out()).doesNotContain("Print: ");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
      --paper  | A5   | sheet: --paper is A4 or letter, not "A5".
      --points | many | sheet: --points is a whole number from 2 to 12, not "many".
      --units  | cubits | sheet: --units is metric or feet, not "cubits".
      """)
  void a_wrong_word_is_told(String option, String value, String message) {
    assertThat(run("sheet", option, value, "--folder", folder.toString())).isEqualTo(2);
    assertThat(shell.err()).startsWith(message);
    assertThat(folder.resolve("sheets")).doesNotExist();
  }

  /** What is written on the sheet, typed at the walk cell by cell. */
  @Test
  void a_filled_sheet_typed_at_the_walk_ends_in_a_record() {
    Boat boat = new WalkSheet().boat();
    WalkSheet pencil = new WalkSheet();
    MeasuringSheet.of(SheetTopic.BOAT, WALK, boat, TestShell.TODAY)
        .cells()
        .forEach(cell -> pencil.with(cell.question(), cell.written()));
    shell.typing(pencil.lines());

    assertThat(run("walk", "--folder", folder.toString())).isZero();

    Workspace workspace = new Workspace(folder);
    Boat typed = BoatFile.read(workspace.boatPath(boat.name()));
    assertThat(typed.hull().stations()).isEqualTo(boat.hull().stations());
    assertThat(typed.places()).isEqualTo(boat.places());
    assertThat(workspace.records().of(boat.name()).entries()).hasSize(1);
  }

  private static final Walk WALK =
      Walk.on(TestShell.TODAY, PreviousBoats.NONE, RuleSetFile.cautiousDefault());
}
