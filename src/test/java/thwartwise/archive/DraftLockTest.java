package thwartwise.archive;

import static thwartwise.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two programs at one draft: only one of them holds it. */
class DraftLockTest {
  private static final String HELD = "held";
  private static final String REFUSED = "refused";

  @TempDir private Path folder;

  /** The other program: tries for the lock, says what came of it, and keeps it until killed. */
  static final class Other {
    private Other() {}

    public static void main(String[] args) throws InterruptedException {
      Optional<DraftLock> lock = DraftLock.at(Path.of(args[0]));
      System.out.println(lock.isPresent() ? HELD : REFUSED);
      if (lock.isPresent()) {
        Thread.sleep(Duration.ofMinutes(2).toMillis());
      }
    }
  }

  private Path file() {
    return folder.resolve("drafts").resolve(".walk.lock");
  }

  private Process other() throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            Other.class.getName(),
            file().toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  private static String said(Process process) throws IOException {
    BufferedReader lines = process.inputReader();
    return lines.readLine();
  }

  @Test
  void what_another_program_holds_is_refused_until_that_one_is_killed() throws Exception {
    Process other = other();
    try {
      assertThat(said(other)).isEqualTo(HELD);
      assertThat(DraftLock.at(file())).isEmpty();
    } finally {
      other.destroyForcibly();
    }
    assertThat(other.waitFor(20, TimeUnit.SECONDS)).isTrue();
    Optional<DraftLock> freed = DraftLock.at(file());
    assertThat(freed).isPresent();
    freed.orElseThrow().close();
  }

  @Test
  void asking_twice_in_one_program_does_not_free_it_for_another() throws Exception {
    try (DraftLock held = DraftLock.at(file()).orElseThrow()) {
      assertThat(DraftLock.at(file())).isEmpty();
      assertThat(DraftLock.at(folder.resolve("drafts/../drafts/.walk.lock"))).isEmpty();
      Process other = other();
      try {
        assertThat(said(other)).isEqualTo(REFUSED);
      } finally {
        other.destroyForcibly();
      }
      assertThat(held).isNotNull();
    }
    Optional<DraftLock> again = DraftLock.at(file());
    assertThat(again).isPresent();
    again.orElseThrow().close();
  }
}
