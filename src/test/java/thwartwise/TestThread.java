package thwartwise;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.junit.jupiter.api.extension.DynamicTestInvocationContext;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.InvocationInterceptor;
import org.junit.jupiter.api.extension.ReflectiveInvocationContext;

/**
 * Runs each test on a thread of its own, in a pool of that thread alone. Where classes run in
 * parallel, JUnit's threads are those of a fork-join pool: a search that spreads over the pool of
 * its thread would leave parts of itself among tests that wait there, and wait for those tests. In
 * the common pool the processors are busy with other tests already, and on two of them two waiting
 * tests share one queue and look into it over and over.
 */
public final class TestThread implements InvocationInterceptor {
  @Override
  public <T> T interceptTestClassConstructor(
      Invocation<T> invocation,
      ReflectiveInvocationContext<Constructor<T>> constructor,
      ExtensionContext test)
      throws Throwable {
    return onItsOwn(invocation);
  }

  @Override
  public void interceptBeforeAllMethod(
      Invocation<Void> invocation,
      ReflectiveInvocationContext<Method> method,
      ExtensionContext test)
      throws Throwable {
    onItsOwn(invocation);
  }

  @Override
  public void interceptBeforeEachMethod(
      Invocation<Void> invocation,
      ReflectiveInvocationContext<Method> method,
      ExtensionContext test)
      throws Throwable {
    onItsOwn(invocation);
  }

  @Override
  public void interceptTestMethod(
      Invocation<Void> invocation,
      ReflectiveInvocationContext<Method> method,
      ExtensionContext test)
      throws Throwable {
    onItsOwn(invocation);
  }

  @Override
  public <T> T interceptTestFactoryMethod(
      Invocation<T> invocation, ReflectiveInvocationContext<Method> method, ExtensionContext test)
      throws Throwable {
    return onItsOwn(invocation);
  }

  @Override
  public void interceptTestTemplateMethod(
      Invocation<Void> invocation,
      ReflectiveInvocationContext<Method> method,
      ExtensionContext test)
      throws Throwable {
    onItsOwn(invocation);
  }

  @Override
  public void interceptDynamicTest(
      Invocation<Void> invocation, DynamicTestInvocationContext dynamic, ExtensionContext test)
      throws Throwable {
    onItsOwn(invocation);
  }

  /**
   * What a source of parameters works out before any test, and what several tests ask for; on a
   * thread whose searches spread over the common pool, as in the program.
   */
  public static <T> T of(Supplier<T> work) {
    return CompletableFuture.supplyAsync(work, task -> new Thread(task, "test").start()).join();
  }

  private static <T> T onItsOwn(Invocation<T> invocation) throws Throwable {
    AtomicReference<T> result = new AtomicReference<>();
    AtomicReference<Throwable> thrown = new AtomicReference<>();
    CountDownLatch done = new CountDownLatch(1);
    ForkJoinPool pool = new ForkJoinPool(1);
    pool.execute(
        () -> {
          try {
            result.set(invocation.proceed());
          } catch (Throwable any) {
            thrown.set(any);
          }
          done.countDown();
        });
    done.await();
    pool.shutdown();
    if (thrown.get() != null) {
      throw thrown.get();
    }
    return result.get();
  }
}
