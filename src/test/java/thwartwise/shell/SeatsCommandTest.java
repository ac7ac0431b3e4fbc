package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.files.boat.BoatFile;
import thwartwise.inspection.PlainHulls;
import thwartwise.record.SampleBoats;

class SeatsCommandTest {
  @TempDir Path temp;
  private final TestShell shell = TestShell.open();
  private String boat;

  @BeforeEach
  void lay_out_the_demo_boat() throws IOException {
    Path file = temp.resolve("boat.json");
    Files.writeString(file, BoatFile.write(DemoCommand.asOf(TestShell.TODAY)));
    boat = file.toString();
  }

  @Test
  void all_of_them_may_go_and_each_has_a_seat() {
    assertThat(shell.run("seats", "--boat", boat, "--people", "Iris 59 kg, girl 9")).isZero();

    assertThat(shell.err()).isEmpty();
    assertThat(shell.out())
        .startsWith(
            """
            Custard Tart
            ============
            Nothing was found against all of them going, seated as shown here.

            Who sits where
            --------------
            * Bow seat: Iris (weighed, and 5 kg for clothes and life jacket: up to 64 kg).
            * Middle thwart: girl of 9 (a heavy girl of 9 and 5 kg for clothes: up to 54
              kg).

            Together they weigh 118 kg at most, dressed.
            Nobody reaches the motor while the stern bench is empty: somebody on the middle
            thwart rows and steers.
            """)
        .contains("A recommendation, not a capacity plate and not a builder's plate.")
        .doesNotContain("stays ashore");
    assertThat(shell.out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void whoever_stays_ashore_is_named_with_the_reason() {
    int code = shell.run("seats", "--boat", boat, "--people", "Iris 62, Tom 80, Max 95 dressed");

    assertThat(code).isEqualTo(1);
    assertThat(shell.out())
        .contains(
            "Not all of them may go: somebody stays ashore, or the boat makes two trips.",
            "* Max (weighed dressed, life jacket on: up to 95 kg).",
            "With all of them aboard:\n* ");
  }

  @Test
  void an_unusable_list_is_told_in_one_line() {
    assertThat(shell.run("seats", "--boat", boat, "--people", "boy 4")).isEqualTo(2);

    assertThat(shell.out()).isEmpty();
    assertThat(shell.err())
        .isEqualTo(
            "seats: \"boy 4\": weights by age are known from 6 to 19 years. Weigh them and type the"
                + " kilograms, such as \"boy 31 kg\".\n");
  }

  @Test
  void nothing_is_kept() throws IOException {
    shell.run("seats", "--boat", boat, "--people", "Iris 59 kg");

    try (var files = Files.list(temp)) {
      assertThat(files).containsExactly(Path.of(boat));
    }
  }

  /**
   * With 40 kg more in it the canoe carries two adults as measured and under one allowance, but
   * fewer than 95 of 100 canoes measured like this do, so its record says one.
   */
  @Test
  void a_seating_that_the_record_is_not_sure_of_is_not_allowed_here_either() throws IOException {
    Path file = laden(temp);
    String[] asked = {"seats", "--boat", file.toString(), "--people", "adult, adult"};

    assertThat(shell.run(asked)).as("by the screen alone").isZero();

    TestShell judged = TestShell.judged();
    assertThat(judged.run(asked)).isEqualTo(1);
    assertThat(judged.err()).isEmpty();
    assertThat(judged.out())
        .contains("Not all of them may go: somebody stays ashore, or the boat makes two trips.");
  }

  private static Path laden(Path folder) throws IOException {
    Path file = folder.resolve("canoe.json");
    String canoe = BoatFile.write(SampleBoats.withKit(PlainHulls.canoe(), "chest", 40.5));
    // Its chambers were tested shortly before the day of the test.
    Files.writeString(file, canoe.replace("2026-09-25", "2026-05-02"));
    return file;
  }
}
