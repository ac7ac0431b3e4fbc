package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.archive.Workspace;
import thwartwise.boat.KeptProof;
import thwartwise.files.boat.BoatFile;

/** Two proofs afloat: one agrees and narrows, one names the weight its builder did not tell. */
class DemoProofsTest {
  @TempDir Path temp;
  private final TestShell shell = TestShell.open();

  private List<KeptProof> kept(String boat) {
    return BoatFile.read(new Workspace(temp).boatPath(boat)).proofs();
  }

  @Test
  void one_agrees_and_the_other_is_withdrawn_for_the_hulls_weight() {
    assertThat(shell.run("demo", "--proofs", "--folder", temp.toString())).isZero();

    String agrees = shell.out().substring(0, shell.out().indexOf("Salt Spoon: proof"));
    String differs = shell.out().substring(agrees.length());
    assertThat(agrees)
        .contains("The boat floats as it was measured, within what its measurements may be off.")
        .contains("its centre, from aft           1.31 +- 0.10 m         1.28 +- 0.03 m");
    assertThat(differs)
        .contains(
            """
            The recommendation is withdrawn: the boat does not float as it was measured.
            Most likely wrong is the hull's weight: about 23 kg more than stated. That
            explains 77 of 100 parts of what was seen.
            """);
    assertThat(KeptProof.holding(kept("Mustard Spoon"))).isEmpty();
    assertThat(kept("Mustard Spoon")).allMatch(KeptProof::current);
    assertThat(KeptProof.holding(kept("Salt Spoon"))).isPresent();
    assertThat(shell.err()).isEmpty();
  }

  @Test
  void range_says_first_that_a_proof_holds_the_launch() {
    shell.run("demo", "--proofs", "--folder", temp.toString());
    int before = shell.out().length();

    assertThat(shell.run("range", "--boat", "Salt Spoon", "--folder", temp.toString())).isOne();

    assertThat(shell.out().substring(before).replaceAll("\\s+", " "))
        .contains(
            "Read afloat on 2026-06-01 by Imelda Quarrie, the boat did not float as it was"
                + " measured");
  }
}
