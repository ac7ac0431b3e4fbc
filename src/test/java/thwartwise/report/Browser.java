package thwartwise.report;

import static org.junit.jupiter.api.Assumptions.abort;
import static thwartwise.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/**
 * A browser without a window, as far as this machine has one: what it makes of a page is not ours
 * to say.
 *
 * @param program the file that starts it
 * @param folder where it may keep what it likes
 */
record Browser(Path program, Path folder) {
  private static final List<String> NAMES =
      List.of("chromium", "chromium-browser", "google-chrome");
  private static final int SECONDS = 180;

  /** Skips the test, with the reason, where there is none. */
  static Browser in(Path folder) {
    return found()
        .map(program -> new Browser(program, folder))
        .orElseGet(() -> abort("no " + String.join(", ", NAMES) + " on this machine"));
  }

  private static Optional<Path> found() {
    return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
        .flatMap(dir -> NAMES.stream().map(name -> Path.of(dir, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** The markup of the page after its scripts ran. */
  String after(String page) {
    Path out = folder.resolve("out.html");
    run(page, out, List.of("--dump-dom"));
    return text(out);
  }

  /** What it looks like in a window of that size. */
  BufferedImage seen(String page, int width, int height) {
    Path picture = folder.resolve("seen.png");
    run(
        page,
        folder.resolve("out.html"),
        List.of("--screenshot=" + picture, "--window-size=" + width + "," + height));
    try {
      return ImageIO.read(picture.toFile());
    } catch (IOException e) {
      throw new AssertionError("no picture was taken", e);
    }
  }

  private void run(String page, Path out, List<String> more) {
    List<String> command =
        new ArrayList<>(
            List.of(
                program.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + folder.resolve("profile")));
    command.addAll(more);
    try {
      command.add(Files.writeString(folder.resolve("page.html"), page).toUri().toString());
      Process process =
          new ProcessBuilder(command)
              .redirectOutput(out.toFile())
              .redirectError(folder.resolve("err.txt").toFile())
              .start();
      assertThat(process.waitFor(SECONDS, TimeUnit.SECONDS))
          .as("the browser came to an end")
          .isTrue();
    } catch (IOException e) {
      throw new AssertionError("the browser did not start", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(e);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
