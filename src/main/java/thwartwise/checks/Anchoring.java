package thwartwise.checks;

import java.util.List;
import java.util.stream.Stream;
import thwartwise.loadcase.LineOut;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.StreamHead;
import thwartwise.rules.RuleSet;

/**
 * May the boat lie to a line, with current and wind pulling and snatching at it? By the stern it is
 * an act to forbid; by the bow it is for the reader to know. The pull is known as a range, and the
 * end of it that leaves the boat poorer counts; the stream stands up at the end that meets it.
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
