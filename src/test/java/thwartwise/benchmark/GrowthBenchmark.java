package thwartwise.benchmark;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Solid;
import thwartwise.geometry.WaterPlane;

/** The same round-bottomed hull measured at more and more stations. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class GrowthBenchmark {
  @Param({"5", "10", "20", "40", "80", "160"})
  public int stations;

  private final Immersion immersion = new Immersion();
  private Solid hull;
  private WaterPlane plane;

  @Setup
  public void build() {
    hull = RoundHull.of(stations);
    plane = SampleBoat.holding(hull, 0.4 * hull.volume(), Math.toRadians(15), Math.toRadians(1.5));
  }

  @Benchmark
  public ImmersedPart immersedPart() {
    return immersion.at(plane).add(hull, 1).part();
  }
}
