package thwartwise.benchmark;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;
import thwartwise.afloat.FloatingBody;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Solid;
import thwartwise.geometry.WaterPlane;

/** The immersed part of a heeled and trimmed hull, and one bare pass over its triangles. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class ImmersionBenchmark {
  /** At once, so that reading the clock costs nothing beside it. */
  private static final int TIMES = 20;

  @Param({"10", "30", "60"})
  public double heelDeg;

  private final Immersion immersion = new Immersion();
  private Solid hull;
  private FlatTriangles triangles;

  /** Each a degree from the one before: under the same plane again hardly anything is computed. */
  private final WaterPlane[] planes = new WaterPlane[TIMES];

  @Setup
  public void putAfloat() {
    FloatingBody boat = SampleBoat.dry();
    hull = SampleBoat.outside();
    triangles = FlatTriangles.of(hull);
    for (int i = 0; i < TIMES; i++) {
      double heel = Math.toRadians(heelDeg + i % 2);
      planes[i] = SampleBoat.holding(hull, boat.neededVolume(), heel, Math.toRadians(1.5));
    }
  }

  @Benchmark
  @OperationsPerInvocation(TIMES)
  public void barePass(Blackhole sink) {
    for (int i = 0; i < TIMES; i++) {
      sink.consume(triangles.barePass());
    }
  }

  @Benchmark
  @OperationsPerInvocation(TIMES)
  public void immersedPart(Blackhole sink) {
    for (int i = 0; i < TIMES; i++) {
      sink.consume(immersion.at(planes[i]).add(hull, 1).part());
    }
  }
}
