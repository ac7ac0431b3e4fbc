package thwartwise;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.api.AbstractBooleanAssert;
import org.assertj.core.api.AbstractByteArrayAssert;
import org.assertj.core.api.AbstractDoubleArrayAssert;
import org.assertj.core.api.AbstractDoubleAssert;
import org.assertj.core.api.AbstractFloatAssert;
import org.assertj.core.api.AbstractIntArrayAssert;
import org.assertj.core.api.AbstractIntegerAssert;
import org.assertj.core.api.AbstractLocalDateAssert;
import org.assertj.core.api.AbstractLongAssert;
import org.assertj.core.api.AbstractPathAssert;
import org.assertj.core.api.AbstractStringAssert;
import org.assertj.core.api.AbstractThrowableAssert;
import org.assertj.core.api.AtomicIntegerAssert;
import org.assertj.core.api.IterableAssert;
import org.assertj.core.api.ListAssert;
import org.assertj.core.api.MapAssert;
import org.assertj.core.api.ObjectArrayAssert;
import org.assertj.core.api.ObjectAssert;
import org.assertj.core.api.OptionalAssert;
import org.assertj.core.api.OptionalDoubleAssert;
import org.assertj.core.api.OptionalIntAssert;

/**
 * AssertJ for the types that the tests have. At each call the compiler weighs every method of the
 * name; with AssertJ's own hundred of them, half the time to compile the tests went there.
 */
public final class Assertions {
  private Assertions() {}

  public static AbstractBooleanAssert<?> assertThat(boolean actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static AbstractIntegerAssert<?> assertThat(int actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static AbstractIntegerAssert<?> assertThat(Integer actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static AbstractLongAssert<?> assertThat(long actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static AbstractFloatAssert<?> assertThat(float actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static AbstractDoubleAssert<?> assertThat(double actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static AbstractDoubleAssert<?> assertThat(Double actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static AbstractStringAssert<?> assertThat(String actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static AbstractLocalDateAssert<?> assertThat(LocalDate actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static AbstractPathAssert<?> assertThat(Path actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static AbstractThrowableAssert<?, ? extends Throwable> assertThat(Throwable actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static AtomicIntegerAssert assertThat(AtomicInteger actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static AbstractByteArrayAssert<?> assertThat(byte[] actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static AbstractIntArrayAssert<?> assertThat(int[] actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static AbstractDoubleArrayAssert<?> assertThat(double[] actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static <T> ObjectArrayAssert<T> assertThat(T[] actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static OptionalIntAssert assertThat(OptionalInt actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static OptionalDoubleAssert assertThat(OptionalDouble actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static <T> OptionalAssert<T> assertThat(Optional<T> actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static ListAssert<Integer> assertThat(IntStream actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static <T> ListAssert<T> assertThat(Stream<? extends T> actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static <T> ListAssert<T> assertThat(List<? extends T> actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static <T> IterableAssert<T> assertThat(Iterable<? extends T> actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static <K, V> MapAssert<K, V> assertThat(Map<K, V> actual) {
    return org.assertj.core.api.Assertions.assertThat(actual);
  }

  public static <T> ObjectAssert<T> assertThat(T actual) {
    return org.assertj.core.api.Assertions.assertThatObject(actual);
  }
}
