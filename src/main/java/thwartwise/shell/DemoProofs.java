package thwartwise.shell;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thwartwise.archive.Workspace;
import thwartwise.boat.AfloatProof;
import thwartwise.boat.AfloatProof.HeelMeasurement;
import thwartwise.boat.AfloatProof.MovedWeight;
import thwartwise.boat.AfloatProof.RailHeights;
import thwartwise.boat.AfloatProof.TimedRoll;
import thwartwise.boat.AfloatProof.WeightToSide;
import thwartwise.boat.Boat;
import thwartwise.boat.Person;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.measure.PrintableText;
import thwartwise.proof.ProofAssessment;
import thwartwise.report.ProofPage;
import thwartwise.rules.RuleSet;

/**
 * Two invented boats with the same measurements, proved afloat: one is as it was measured, the
 * other weighs 30 kg more than its builder said. Their files say that they were measured with care;
 * otherwise 30 kg are within the tolerance of the edge heights. The readings are fixed here; the
 * result is computed.
 */
final class DemoProofs {
  private static final String OPENING =
      """
      Two small boats of one builder's drawing, each proved afloat beside the landing.
      Edges, bottom and half-breadths were measured with a steel tape from a taut
      line, and people and the weight were weighed on good scales.
      """;

  private DemoProofs() {}

  /** The readings of one boat, in the order in which they are typed. */
  private record Read(
      String boat,
      RailHeights empty,
      RailHeights seated,
      HeelMeasurement toPort,
      HeelMeasurement toStarboard,
      TimedRoll roll) {

    AfloatProof on(LocalDate day) {
      return new AfloatProof(
          day,
          "Imelda Quarrie",
          false,
          Optional.of(empty),
          List.of(new Person("Otto", 70, "middle thwart", 0, Optional.empty())),
          Optional.of(seated),
          Optional.of(
              new MovedWeight(
                  15,
                  1.25,
                  0.15,
                  new WeightToSide(0.35, toPort),
                  new WeightToSide(0.35, toStarboard))),
          Optional.of(roll));
    }
  }

  private static final List<Read> PROOFS =
      List.of(
          new Read(
              "Mustard Spoon",
              new RailHeights(0.463, 0.423, 0.391, 0.393),
              new RailHeights(0.423, 0.380, 0.352, 0.354),
              new HeelMeasurement.ByRails(0.363, 0.404),
              new HeelMeasurement.ByRails(0.403, 0.357),
              new TimedRoll(10, 6.1)),
          new Read(
              "Salt Spoon",
              new RailHeights(0.442, 0.404, 0.372, 0.375),
              new RailHeights(0.403, 0.370, 0.338, 0.336),
              new HeelMeasurement.ByRails(0.345, 0.389),
              new HeelMeasurement.ByRails(0.385, 0.346),
              new TimedRoll(10, 6.2)));

  static void print(Workspace workspace, LocalDate today, RuleSet rules, PrintWriter out) {
    out.println(OPENING);
    for (Read read : PROOFS) {
      Boat boat = DemoCommand.provedAsOf(today, read.boat);
      AfloatProof proof = read.on(today);
      Optional<ProofAssessment> assessed =
          ProofAssessment.of(boat, proof, rules, RuleSetFile.measuringSpreads(), Set.of(), today);
      Boat proved = assessed.map(a -> ProveCommand.withProof(boat, a)).orElse(boat);
      out.println(
          ProofPage.of(boat, proof, assessed, Optional.empty(), Optional.of(proved))
              .stripTrailing());
      out.println("Boat: " + PrintableText.of(workspace.saveBoat(proved).toString()));
      out.println();
    }
    out.println("\"inspect\" works out what counts of either now.");
  }
}
