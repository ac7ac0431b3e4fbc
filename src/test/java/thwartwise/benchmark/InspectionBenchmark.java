package thwartwise.benchmark;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import thwartwise.inspection.Report;

/** The demo boat inspected again and again, its hull's solids built anew each time. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.SECONDS)
public class InspectionBenchmark {
  @Benchmark
  public Report withAdvice() {
    return DemoInspected.withAdvice();
  }

  @Benchmark
  public Report withoutAdvice() {
    return DemoInspected.withoutAdvice();
  }

  @Benchmark
  public Report judged() {
    return DemoInspected.judged();
  }
}
