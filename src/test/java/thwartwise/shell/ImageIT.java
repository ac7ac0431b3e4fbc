package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.archive.Workspace;

/** The zipped image, unpacked somewhere and run as where there is no Java. */
@EnabledIfSystemProperty(named = "thwartwise.image", matches = ".+")
class ImageIT {
  @TempDir Path folder;
  private Path bin;

  @BeforeEach
  void unpack() throws IOException {
    Path zip = Path.of(System.getProperty("thwartwise.image"));
    try (FileSystem packed =
            FileSystems.newFileSystem(zip, Map.of("enablePosixFileAttributes", true));
        Stream<Path> all = Files.walk(packed.getPath("/thwartwise"))) {
      for (Path from : (Iterable<Path>) all::iterator) {
        Path to = folder.resolve(from.toString().substring(1));
        Files.copy(from, to);
        Set<PosixFilePermission> may = Files.getPosixFilePermissions(from);
        may.add(PosixFilePermission.OWNER_WRITE);
        Files.setPosixFilePermissions(to, may);
      }
    }
    bin = folder.resolve("thwartwise/bin");
  }

  @Test
  void it_inspects_a_boat_and_keeps_every_page_without_another_java() throws Exception {
    Path boat = new Workspace(folder).saveBoat(new WalkSheet().boat());

    String screen =
        printed(1, "thwartwise", "inspect", "--boat", "" + boat, "--folder", "" + folder);

    assertThat(screen).contains("\nRecord: ").doesNotContain("no PDF");
    try (Stream<Path> kept = Files.walk(folder.resolve("records"))) {
      assertThat(kept).anyMatch(file -> file.toString().endsWith("-card.pdf"));
    }
    assertThat(printed(0, "thwartwise", "version")).matches("thwartwise \\d+\\.\\d+\\.\\d+\n");
    assertThat(printed(0, "thwartwise", "records", "check", "--folder", "" + folder))
        .contains("Bath Mat");
  }

  @Test
  void the_classes_of_a_start_come_from_its_archive_wherever_it_lies() throws Exception {
    String loaded =
        printed(
            0,
            "java",
            "-XX:SharedArchiveFile=" + bin.resolve("../lib/thwartwise.jsa"),
            "-Xlog:class+load",
            "-m",
            "thwartwise/thwartwise.shell.Main",
            "version");

    assertThat(loaded).contains("thwartwise.shell.Main source: shared objects file (top)");
  }

  private String printed(int code, String program, String... words) throws Exception {
    List<String> command = new ArrayList<>(List.of(bin.resolve(program).toString()));
    command.addAll(List.of(words));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().keySet().removeIf(Set.of("JAVA_HOME", "PATH")::contains);
    Process process = builder.start();
    process.getOutputStream().close();
    String printed = new String(process.getInputStream().readAllBytes());
    assertThat(process.waitFor()).as(printed).isEqualTo(code);
    return printed;
  }
}
