package thwartwise.shell;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.archive.Workspace;
import thwartwise.boat.AfloatProof.HeelMeasurement;
import thwartwise.boat.Boat;
import thwartwise.boat.HullCorrection;
import thwartwise.boat.KeptProof;
import thwartwise.boat.ObservedTrial;
import thwartwise.boat.Person;
import thwartwise.files.boat.BoatFile;
import thwartwise.inspection.PlainHulls;
import thwartwise.record.SampleRecords;
import thwartwise.spread.InputKind;

/** Boats that are there, whatever was stated of them, read with a tape to the millimetre. */
class ProveCommandTest {
  private static final String CAREFUL =
      "edge heights, bottom heights, half-breadths, hull balance, people's weights, kit weights";

  @TempDir Path temp;
  private final TestShell shell = TestShell.open();
  private Boat stated;
  private String file;

  @BeforeEach
  void keep_a_boat() throws IOException {
    Workspace workspace = new Workspace(temp);
    workspace.saveBoat(PlainHulls.pram());
    Path kept = workspace.boatPath("pram");
    // Its chambers were tested shortly before the day of the test.
    Files.writeString(kept, Files.readString(kept).replace("2026-09-25", "2026-05-02"));
    stated = BoatFile.read(kept);
    file = Files.readString(kept);
  }

  private int prove(List<String> lines) {
    lines.forEach(shell::typing);
    return shell.run("prove", "--boat", "pram", "--better", CAREFUL, "--folder", temp.toString());
  }

  private String screen() {
    return shell.out().substring(shell.out().indexOf("pram: proof afloat of"));
  }

  private void nothingIsKept() throws IOException {
    assertThat(Files.readString(new Workspace(temp).boatPath("pram"))).isEqualTo(file);
    assertThat(temp.resolve("records")).doesNotExist();
  }

  @Test
  void a_boat_that_is_as_stated_agrees_and_the_fit_is_told() throws IOException {
    int code = prove(new ReadAfloat(stated, TestShell.TODAY).lines());

    assertThat(shell.err()).isEmpty();
    assertThat(code).isZero();
    assertThat(screen())
        .isEqualTo(
            """
            pram: proof afloat of 1 June 2026, by Bea
            =========================================
            The boat floats as it was measured, within what its measurements may be off.

            Rail, mm: read (worked out)    Bow         Stern       Port        Starboard
            ------------------------------ ----------- ----------- ----------- -----------
            nobody aboard                  421 (421)   424 (424)   384 (384)   384 (384)
            people seated                  386 (386)   365 (365)   336 (336)   336 (336)
            weight to port                 -           -           345 (345)   400 (400)
            weight to starboard            -           -           400 (400)   345 (345)

            All together off by 0.1, of which the hull's weight explains 0.1; 95 of 100
            boats measured like this stay under 23.3 and 5.0.
            Bare hull, what fits best      Before                 After
            ------------------------------ ---------------------- ----------------------
            weight                         28 +- 1.4 kg           28 +- 1.4 kg
            its centre, from aft           1.17 +- 0.02 m         1.17 +- 0.02 m
            its centre, over the bottom    0.16 +- 0.05 m         0.16 +- 0.05 m
            +- is one standard deviation.
            The bare hull counts as 28 kg and its weight as high as measured or as afloat,
            whichever is more; only a second proof that agrees, on another day, can let more
            aboard. It is kept with the boat.
            """);
    KeptProof kept = kept();
    assertThat(kept.outcome().agrees()).isTrue();
    assertThat(kept.current()).isTrue();
    assertThat(kept.outcome().measured().mass()).isEqualTo(stated.hull().mass());
    assertThat(kept.outcome().corrected().orElseThrow().hull().mass()).isCloseTo(28, within(0.5));
    assertThat(kept.readings().people()).extracting(Person::name).containsExactly("Ann");
  }

  private KeptProof kept() {
    List<KeptProof> proofs = BoatFile.read(new Workspace(temp).boatPath("pram")).proofs();
    assertThat(proofs).hasSize(1);
    return proofs.get(0);
  }

  /** What is found is a straight line through what bends: nearer 30 kg than 40. */
  @Test
  void a_boat_forty_kilograms_heavier_withdraws_and_names_its_weight() throws IOException {
    Boat heavier = stated.withHullMass(stated.hull().mass() + 40);

    int code = prove(new ReadAfloat(heavier, TestShell.TODAY).lines());

    assertThat(shell.err()).isEmpty();
    assertThat(code).isEqualTo(1);
    assertThat(screen())
        .isEqualTo(
            """
            pram: proof afloat of 1 June 2026, by Bea
            =========================================
            The recommendation is withdrawn: the boat does not float as it was measured.
            Most likely wrong is the hull's weight: about 30 kg more than stated. That
            explains 96 of 100 parts of what was seen.

            Rail, mm: read (worked out)    Bow         Stern       Port        Starboard
            ------------------------------ ----------- ----------- ----------- -----------
            nobody aboard                  391 (421)   396 (424)   355 (384)   355 (384)
            people seated                  359 (386)   347 (365)   314 (336)   314 (336)
            weight to port                 -           -           323 (345)   368 (400)
            weight to starboard            -           -           368 (400)   323 (345)

            All together off by 27.2, of which the hull's weight explains 26.1; 95 of 100
            boats measured like this stay under 23.3 and 5.0.
            Nobody goes until it is measured again, or a later proof that reads as much
            agrees. It is kept with the boat. Records and pages made before still show the
            old answer, so tell all who use it.
            """);
    assertThat(kept().outcome().agrees()).isFalse();
    assertThat(kept().outcome().suspect().orElseThrow().kind())
        .isEqualTo(InputKind.HULL_MASS.name());
  }

  @Test
  void one_rail_misread_is_named_and_not_the_boat() {
    List<String> lines = new ReadAfloat(stated, TestShell.TODAY).lines();
    lines.set(0, lines.get(0).replaceFirst("^0.4", "0.5"));

    assertThat(prove(lines)).isEqualTo(1);

    assertThat(screen().replaceAll("\\s+", " "))
        .contains(
            "Most likely wrong is the rail read at the bow with nobody aboard: read about 10 cm too"
                + " high.");
  }

  /** The boat did not heel at all, and rose by 75 mm between two readings. */
  @Test
  void where_no_single_measurement_explains_it_none_is_blamed() {
    assertThat(
            prove(
                List.of(
                    "0.421; 0.424; 0.384; 0.384",
                    "",
                    "15; 1.1; 0.20",
                    "",
                    "0.3; 0.30; 0.30",
                    "0.3; 0.45; 0.45",
                    "",
                    "",
                    "Bea",
                    "")))
        .isEqualTo(1);

    assertThat(screen())
        .contains(
            "\nThe recommendation is withdrawn: the boat does not float as it was measured.\n"
                + "No single measurement explains it. Measure the boat again.\n");
  }

  @Test
  void where_no_rail_was_read_it_proves_nothing() throws IOException {
    assertThat(prove(List.of("", "", "", "10; 21", "", "Bea", ""))).isEqualTo(1);

    assertThat(screen())
        .isEqualTo(
            """
            pram: proof afloat of 1 June 2026, by Bea
            =========================================
            No rail was read, so nothing was compared. It proves nothing. Nothing is kept.
            """);
    nothingIsKept();
  }

  /** It is the trial that "today" asks for, kept the same way. */
  @Test
  void what_was_seen_full_of_water_is_kept_and_holds_where_it_went_badly() {
    List<String> lines = new ArrayList<>(new ReadAfloat(stated, TestShell.TODAY).lines());
    lines.remove(lines.size() - 1);
    lines.addAll(List.of("yes", "1", "none", "70", "12", "no", "yes", "Cleo"));

    assertThat(prove(lines)).isEqualTo(1);

    assertThat(screen().replaceAll("\\s+", " "))
        .contains(
            "It is kept with the boat. Trial in knee-deep water: it went badly, with one person");
    ObservedTrial seen =
        BoatFile.read(new Workspace(temp).boatPath("pram")).observedTrial().orElseThrow();
    assertThat(seen.failed()).isTrue();
    assertThat(seen.by()).isEqualTo("Cleo");
    assertThat(kept().outcome().agrees()).isTrue();
  }

  @Test
  void a_heel_is_read_by_a_plumb_line_or_by_a_level() {
    List<String> lines = new ArrayList<>(new ReadAfloat(stated, TestShell.TODAY).lines());
    int rails = lines.indexOf("rails");
    lines.subList(rails, rails + 3).clear();
    List<String> plumb = new ArrayList<>(lines);
    plumb.addAll(rails, List.of("plumb line", "1.0", "0.3; 0.046", "0.3; 0.046"));
    lines.addAll(rails, List.of("level", "0.3; 3.6", "0.3; 1.7"));

    assertThat(prove(plumb)).isZero();
    assertThat(screen())
        .contains("worked out): weight to port 2.6 (2.6), weight to starboard\n2.6 (2.6)");
    assertThat(kept().readings().moved().orElseThrow().toPort().heel())
        .isEqualTo(new HeelMeasurement.ByPendulum(1.0, 0.046));
    // A level that stood askew before shows it to both sides alike.
    assertThat(prove(lines)).isZero();
  }

  /** What was measured with care is remembered: otherwise 40 kg would hide in what is doubtful. */
  @Test
  void a_hull_weighed_again_lifts_the_hold_and_is_not_corrected_by_old_readings() {
    Boat heavier = stated.withHullMass(stated.hull().mass() + 40);
    prove(new ReadAfloat(heavier, TestShell.TODAY).lines());
    Path path = new Workspace(temp).boatPath("pram");

    assertThat(again()).isEqualTo(1);
    Workspace.rewrite(path, BoatFile.read(path).withHullMass(stated.hull().mass() + 0.1));
    assertThat(again()).as("nothing that matters").isEqualTo(1);
    assertThat(KeptProof.holding(BoatFile.read(path).proofs())).isPresent();
    Workspace.rewrite(path, BoatFile.read(path).withHullMass(stated.hull().mass() + 40));
    assertThat(KeptProof.holding(BoatFile.read(path).proofs())).isPresent();
    assertThat(again()).isZero();
    assertThat(shell.out().substring(shell.out().lastIndexOf("pram: proof afloat of")))
        .contains("The boat floats as it was measured")
        .doesNotContain("what fits best")
        .endsWith(
            """
            The readings are of that day. Whether the boat was measured again since or
            changed, they do not say, so they correct nothing of its hull.
            """);

    Boat now = BoatFile.read(path);
    assertThat(KeptProof.holding(now.proofs())).isEmpty();
    assertThat(HullCorrection.of(now)).isEmpty();
    assertThat(again()).isZero();
    assertThat(shell.out())
        .endsWith("No proof afloat holds the launch of this boat. Nothing was changed.\n");
  }

  /** Typed as by an owner who weighed the hull again and wrote it down in a walk of changes. */
  @Test
  void a_refit_with_the_hull_weighed_again_lifts_the_hold() {
    Boat heavier = stated.withHullMass(stated.hull().mass() + 40);
    prove(new ReadAfloat(heavier, TestShell.TODAY).lines());
    Path path = new Workspace(temp).boatPath("pram");

    refit("outfit", "rowlocks", "1.2", "");
    assertThat(KeptProof.holding(BoatFile.read(path).proofs())).isPresent();
    String mass = stated.hull().mass() + 40 + "";
    refit("weight", mass, "keep", "", "weighed twice, soaked");

    Boat now = BoatFile.read(path);
    assertThat(now.hull().mass()).isEqualTo(stated.hull().mass() + 40);
    assertThat(KeptProof.holding(now.proofs())).isEmpty();
    assertThat(HullCorrection.of(now)).isEmpty();
    assertThat(kept().outcome().agrees()).isTrue();
    assertThat(kept().outcome().corrected()).isEmpty();
  }

  private void refit(String... change) {
    TestShell walking = TestShell.whoseInspection((boat, rules, today) -> SampleRecords.report());
    walking.typing("pram", "").typing(change).typing("", "later");
    walking.run("refit", "--folder", temp.toString());
    assertThat(walking.err()).isEmpty();
    assertThat(walking.out()).contains("Record: ");
  }

  private int again() {
    return shell.run("prove", "--again", "--boat", "pram", "--folder", temp.toString());
  }

  @Test
  void stopping_on_the_way_compares_nothing() {
    assertThat(prove(List.of("0.421; 0.424; 0.384; 0.384", "stop"))).isEqualTo(1);

    assertThat(shell.out())
        .endsWith("\nStopped before the last question, so nothing was compared or kept.\n");
  }

  @Test
  void a_guess_proves_nothing_and_a_roll_is_timed_whole() {
    prove(List.of("about 0.42", "no", "no", "no", "10; 2", "10; 21", "today", "Bea", "no"));

    assertThat(shell.out().replaceAll("\\s+", " "))
        .contains(
            "\"about 0.42\" is a guess, and a guess proves nothing. Measure it, or leave this part"
                + " out: back, and no. ")
        .contains(
            "Value 2 of the row, \"2\" for Time for all of them: A boat like this takes 0.5 to 8"
                + " seconds for one whole swing. Type the seconds for all 10. Nothing of the row was taken. ");
  }

  @Test
  void back_list_and_why_work_as_in_the_walk() {
    prove(List.of("0.421; 0.424; 0.384; 0.384", "why", "list", "back", "0.385", "stop"));

    assertThat(shell.out())
        .contains("A boat that is loaded tells more than an empty one.")
        .contains("  5. Nobody aboard, to starboard: 0.384 m")
        .contains("Asked again. You had: Nobody aboard, to starboard: 0.384 m");
    assertThat(shell.out().lines()).allMatch(line -> line.length() <= 100);
  }
}
