package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The launcher that README's commands begin with, and the archive that the build leaves beside it.
 */
class LauncherIT {
  private static final Path JAR = Path.of(System.getProperty("thwartwise.jar"));
  private static final Path LAUNCHER = JAR.resolveSibling("thwartwise");

  @TempDir Path folder;

  @Test
  void it_starts_the_jar_beside_it_from_anywhere_and_through_a_link() throws Exception {
    Path link = Files.createSymbolicLink(folder.resolve("boats"), LAUNCHER);

    assertThat(printed(LAUNCHER.toString(), "version")).matches("thwartwise \\d+\\.\\d+\\.\\d+\n");
    assertThat(printed(link.toString(), "version")).matches("thwartwise \\d+\\.\\d+\\.\\d+\n");
  }

  @Test
  void it_starts_with_an_archive_of_another_jar_and_says_nothing_of_it() throws Exception {
    Path jar = Files.copy(JAR, folder.resolve("thwartwise.jar"));
    Path launcher = Files.copy(LAUNCHER, folder.resolve("thwartwise"));
    Files.copy(JAR.resolveSibling("thwartwise.jsa"), folder.resolve("thwartwise.jsa"));

    assertThat(jar).exists();
    assertThat(printed("sh", launcher.toString(), "version")).matches("thwartwise [\\d.]+\n");
  }

  @Test
  void the_classes_of_a_start_come_from_the_archive() throws Exception {
    String loaded =
        printed(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:SharedArchiveFile=" + JAR.resolveSibling("thwartwise.jsa"),
            "-Xlog:class+load",
            "-jar",
            JAR.toString(),
            "version");

    assertThat(loaded).contains("thwartwise.shell.Main source: shared objects file (top)");
  }

  private String printed(String... words) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(List.of(words))
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .start();
    process.getOutputStream().close();
    String printed = new String(process.getInputStream().readAllBytes());
    assertThat(process.waitFor()).as(printed).isZero();
    return printed;
  }
}
