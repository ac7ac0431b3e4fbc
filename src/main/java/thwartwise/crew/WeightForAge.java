package thwartwise.crew;

import java.util.List;
import thwartwise.crew.NamedPerson.Sex;

/**
 * The mass of a child of an age, without clothes, by the growth reference CDC 2000 (file wtage.csv,
 * public domain, READ): the mass exceeded by a share of children follows from the normal score z,
 * with X = M (1 + L S z)^(1/L). Rows are for half a month after the birthday named; kg.
 *
 * <p>A youth whom nobody weighed is planned with the 95th percentile and not with the median. Half
 * of all children are heavier than the median, and the reference rests on old surveys: an average
 * boy of eleven weighed 6.1 kg more in 2011-14 than in 1988-94, a girl 3.4 kg (NCHS press release,
 * 3 August 2016, READ). Somebody called ten may turn eleven tomorrow, so the heaviest is read from
 * the row of the next birthday, the lightest (5th percentile) from the row of the last one. There
 * is no row for nineteen; the one for twenty is used, which is heavier.
 */
public final class WeightForAge {
  /** The normal score of the 95th percentile; that of the 5th is its negative. */
  private static final double FIVE_PERCENT = 1.6448536;

  public static final int YOUNGEST = 6;
  public static final int OLDEST = 19;

  private record Row(int age, double l, double m, double s) {
    double at(double z) {
      return m * Math.pow(1 + l * s * z, 1 / l);
    }
  }

  private static final List<Row> BOYS =
      List.of(
          new Row(6, -1.087471, 20.777696, 0.139143),
          new Row(7, -1.236497, 23.167419, 0.147337),
          new Row(8, -1.351813, 25.752565, 0.155974),
          new Row(9, -1.339405, 28.681300, 0.166659),
          new Row(10, -1.206688, 32.087991, 0.178929),
          new Row(11, -1.019277, 36.072626, 0.190030),
          new Row(12, -0.836962, 40.674437, 0.196592),
          new Row(13, -0.698166, 45.813362, 0.196662),
          new Row(14, -0.631877, 51.230963, 0.190808),
          new Row(15, -0.665609, 56.490959, 0.181666),
          new Row(16, -0.801993, 61.095368, 0.172459),
          new Row(17, -0.973245, 64.699614, 0.165640),
          new Row(18, -1.066224, 67.289926, 0.161923),
          new Row(20, -0.916488, 70.597615, 0.161477));

  private static final List<Row> GIRLS =
      List.of(
          new Row(6, -1.326764, 20.336360, 0.149590),
          new Row(7, -1.265549, 22.868043, 0.159693),
          new Row(8, -1.127684, 25.757017, 0.172147),
          new Row(9, -0.970686, 29.142912, 0.185201),
          new Row(10, -0.846873, 33.063923, 0.195947),
          new Row(11, -0.787374, 37.390887, 0.201971),
          new Row(12, -0.807600, 41.827980, 0.202299),
          new Row(13, -0.915514, 45.983687, 0.197363),
          new Row(14, -1.111606, 49.490754, 0.188560),
          new Row(15, -1.376478, 52.135682, 0.177947),
          new Row(16, -1.651248, 53.945437, 0.168125),
          new Row(17, -1.838092, 55.182168, 0.161753),
          new Row(18, -1.850946, 56.229696, 0.160370),
          new Row(20, -1.513362, 58.218973, 0.166645));

  private WeightForAge() {}

  /** Whether the table covers a youth of that age in whole years. */
  public static boolean covers(int age) {
    return age >= YOUNGEST && age <= OLDEST;
  }

  /** The 95th percentile a day before the next birthday. */
  public static double heaviest(Sex sex, int age) {
    return at(sex, age + 1, FIVE_PERCENT);
  }

  /** The 5th percentile on the last birthday. */
  public static double lightest(Sex sex, int age) {
    return rows(sex).stream()
        .filter(r -> r.age <= age)
        .reduce((a, b) -> b)
        .orElseThrow(() -> outside(age))
        .at(-FIVE_PERCENT);
  }

  /** The mass at a normal score, from the row of a birthday or the next one there is. */
  static double at(Sex sex, int birthday, double z) {
    return rows(sex).stream()
        .filter(r -> r.age >= birthday && birthday >= YOUNGEST)
        .findFirst()
        .orElseThrow(() -> outside(birthday))
        .at(z);
  }

  private static List<Row> rows(Sex sex) {
    return sex == Sex.BOY ? BOYS : GIRLS;
  }

  private static IllegalArgumentException outside(int age) {
    return new IllegalArgumentException("No weight for the age of " + age);
  }
}
