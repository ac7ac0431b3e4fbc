package thwartwise.benchmark;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Equilibrium;
import thwartwise.afloat.FloatingBody;

/**
 * A dry, loaded boat brought to rest from a cold start, nudges to all four sides included, and the
 * one pose found once with section polygons and a general solver. What either needs of the hull
 * (triangles, polygons) is made beforehand.
 *
 * <p>Counted in processor time: the sections take so long that the clock would count the machine's
 * other guests too, and hold it against them.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class EquilibriumBenchmark {
  private FloatingBody boat;
  private SectionedHull sections;

  /** Processor time of the benchmark's own thread over one stretch of measuring. */
  @AuxCounters(AuxCounters.Type.EVENTS)
  @State(Scope.Thread)
  public static class Spent {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    public long nanos;
    public long times;
    private long from;

    @Setup(Level.Iteration)
    public void start() {
      from = THREADS.getCurrentThreadCpuTime();
    }

    void once() {
      times++;
      nanos = THREADS.getCurrentThreadCpuTime() - from;
    }
  }

  @Setup
  public void load() {
    boat = LoadedPunt.dry();
    sections = SectionedHull.of(LoadedPunt.outside(), LoadedPunt.PIECES);
  }

  @Benchmark
  public Equilibria ours(Spent spent) {
    Equilibria found = Equilibrium.from(boat);
    spent.once();
    return found;
  }

  @Benchmark
  public RestBySections sectionsAndSolver(Spent spent) {
    RestBySections found = RestBySections.of(sections, boat.neededVolume(), boat.centre());
    spent.once();
    return found;
  }
}
