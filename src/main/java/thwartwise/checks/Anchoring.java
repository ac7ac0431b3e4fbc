package thwartwise.checks;

import java.util.List;
import java.util.stream.Stream;
import thwartwise.loadcase.LineOut;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.StreamHead;
import thwartwise.rules.RuleSet;

/**
 * May the boat lie to a line while current and wind pull and snatch at it? By the stern the check
 * forbids an act; by the bow it informs. The pull is a range, and the end of the range that leaves
 * the smaller margin counts. The current raises the water at the end that meets it.
 */
public record Anchoring(RuleSet rules, boolean byTheStern) implements Check {
  @Override
  public Role role() {
    return byTheStern ? Role.FORBIDS_AN_ACT : Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    List<LoadedBoat> ways =
        LineOut.of(rules, boat, byTheStern).stream()
            .flatMap(
                line ->
                    Stream.of(line.towed(), line.expected(boat)).map(p -> pulled(boat, line, p)))
            .toList();
    StreamHead head = StreamHead.of(rules, boat.model().form(), byTheStern);
    return new HeelReadings(rules, head)
        .readings(byTheStern ? CheckId.ANCHORING_BY_THE_STERN : CheckId.ANCHORING_BY_THE_BOW, ways);
  }

  private LoadedBoat pulled(LoadedBoat boat, LineOut line, double newtons) {
    double pull = Math.ceil(newtons);
    LoadedBoat pulling = line.pulling(boat, pull);
    return pulling.called(
        new LoadCaseStep.LinePull(
            line.cleat().name(),
            pull,
            line.towed(),
            line.expected(boat),
            Lever.of(boat, line.cleat().at(), line.toward()),
            Math.toDegrees(line.downAngle(boat.model().boat().outfit()))),
        boat);
  }
}
