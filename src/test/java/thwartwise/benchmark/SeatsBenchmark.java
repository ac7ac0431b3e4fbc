package thwartwise.benchmark;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Place;
import thwartwise.crew.CrewAnswer;
import thwartwise.crew.CrewSeating;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.NamedPerson.PlannedMasses;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.rules.RuleSet;

/**
 * Eight people and eight single places on the demo hull: unnamed adults, and named young people who
 * were weighed. Everything is worked out anew each time, the hull's solids too.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.SECONDS)
public class SeatsBenchmark {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final double[][] PLACES = {
    {0.45, 0.2},
    {0.8, 0.2},
    {1.25, 0.3},
    {1.7, 0.3},
    {2.0, 0.3},
    {2.3, 0.3},
    {2.6, 0.25},
    {2.85, 0.2}
  };
  private static final double[] KILOGRAMS = {35, 38, 41.5, 45, 48, 52, 56, 60};

  private final RuleSet rules = RuleSetFile.cautiousDefault();
  private final List<Place> places = new ArrayList<>();
  private final List<NamedPerson> adults = new ArrayList<>();
  private final List<NamedPerson> young = new ArrayList<>();

  @Setup
  public void gather() {
    for (int i = 0; i < PLACES.length; i++) {
      places.add(new Place("seat " + (i + 1), PLACES[i][0], 0.28, PLACES[i][1], 1));
      adults.add(NamedPerson.adult("adult " + (i + 1), PlannedMasses.of(rules)));
      young.add(NamedPerson.weighed("youth " + (i + 1), KILOGRAMS[i]));
    }
  }

  @Benchmark
  public CrewAnswer adults() {
    return seated(adults);
  }

  @Benchmark
  public CrewAnswer young() {
    return seated(young);
  }

  private CrewAnswer seated(List<NamedPerson> members) {
    return CrewSeating.of(BoatModel.of(SampleBoat.withPlaces(places), TODAY), rules, members);
  }
}
