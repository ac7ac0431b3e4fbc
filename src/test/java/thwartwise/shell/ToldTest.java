package thwartwise.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.record.SampleBoats;
import thwartwise.record.SampleRecords;

class ToldTest {

  /** The page is shown all the same, and the exit code is that of the report. */
  @Test
  void a_list_that_could_not_be_written_is_a_note_under_the_page() {
    var report = MadeUpReports.with(Role.LIMITS_CREW, Outcome.MEETS);
    var inspection = SampleRecords.of(SampleBoats.plain(), report);
    StringWriter out = new StringWriter();

    Told.page(
        new Inspector.Kept(
            inspection,
            "The page.\n",
            Path.of("kept", "r-1.json"),
            List.of("kept/chain.list: cannot be \u001bwritten.")),
        new PrintWriter(out, true));

    assertThat(out.toString().replace("\r\n", "\n"))
        .startsWith(
            "The page.\n\nNote: kept/chain.list: cannot be ?written.\nRecord: "
                + Path.of("kept", "r-1.json")
                + "\n");
    assertThat(Exit.of(report)).isEqualTo(Exit.NOTHING_HOLDS_BACK);
  }
}
