package thwartwise.boat;

import java.util.Optional;

/** Waters described piece by piece; for tests. */
public record SomeWaters(Waters waters) {
  public static SomeWaters sheltered() {
    return new SomeWaters(Waters.NOT_STATED);
  }

  public SomeWaters waves(double metres) {
    Waters w = waters;
    return of(Optional.of(metres), w.breaking(), w.wind(), w.weir(), w.wash(), w.temperature());
  }

  public SomeWaters breaking() {
    Waters w = waters;
    return of(w.waves(), Optional.of(true), w.wind(), w.weir(), w.wash(), w.temperature());
  }

  public SomeWaters wind(double speed) {
    Waters w = waters;
    return of(w.waves(), w.breaking(), Optional.of(speed), w.weir(), w.wash(), w.temperature());
  }

  public SomeWaters weir() {
    Waters w = waters;
    return of(w.waves(), w.breaking(), w.wind(), Optional.of(true), w.wash(), w.temperature());
  }

  public SomeWaters wash() {
    Waters w = waters;
    return of(w.waves(), w.breaking(), w.wind(), w.weir(), Optional.of(true), w.temperature());
  }

  public SomeWaters celsius(double degrees) {
    Waters w = waters;
    return of(w.waves(), w.breaking(), w.wind(), w.weir(), w.wash(), Optional.of(degrees));
  }

  public SomeWaters current(double speed) {
    Waters w = waters;
    return new SomeWaters(
        new Waters(
            w.waves(),
            w.breaking(),
            w.wind(),
            Optional.of(speed),
            w.weir(),
            w.wash(),
            w.temperature(),
            w.offshore()));
  }

  public SomeWaters offshore(double metres) {
    Waters w = waters;
    return new SomeWaters(
        new Waters(
            w.waves(),
            w.breaking(),
            w.wind(),
            w.current(),
            w.weir(),
            w.wash(),
            w.temperature(),
            Optional.of(metres)));
  }

  private SomeWaters of(
      Optional<Double> waves,
      Optional<Boolean> breaking,
      Optional<Double> wind,
      Optional<Boolean> weir,
      Optional<Boolean> wash,
      Optional<Double> temperature) {
    return new SomeWaters(
        new Waters(
            waves, breaking, wind, waters.current(), weir, wash, temperature, waters.offshore()));
  }
}
