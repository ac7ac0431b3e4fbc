package thwartwise.shell;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.hull.UnusableBoat;
import thwartwise.json.UnusableInput;
import thwartwise.measure.NearestWord;
import thwartwise.measure.PrintableText;

/**
 * The choice of a boat: by the name of a saved boat, as its file is called, or by any file; left
 * out, the only saved boat.
 */
final class BoatChoice {
  private static final String ENDING = ".json";

  private BoatChoice() {}

  /**
   * The boat file. An existing file comes before a name.
   *
   * @throws UnusableInput when it is neither, with the nearest name
   * @throws UsageError when none is named and there is not exactly one
   */
  static Path of(CommandInput given, ShellCommand command) {
    Workspace workspace = given.workspace();
    return given
        .text(OptionWord.BOAT)
        .map(typed -> typed(typed, workspace))
        .orElseGet(() -> only(workspace, command));
  }

  private static Path only(Workspace workspace, ShellCommand command) {
    List<String> kept = kept(workspace);
    if (kept.size() != 1) {
      throw missing(command, kept);
    }
    return workspace.boatPath(kept.get(0));
  }

  private static Path typed(String typed, Workspace workspace) {
    Path file = CommandInput.asPath(typed);
    Optional<Path> named = named(typed, workspace);
    if (Files.isRegularFile(file) || named.isEmpty() && Files.exists(file)) {
      return file;
    }
    if (named.isPresent()) {
      return named.get();
    }
    throw new UnusableInput(
        PrintableText.of(file.toString())
            + ": there is no such file, and no boat of that name is kept here."
            + nearest(typed, file, workspace)
            + " Check the name and the folder.");
  }

  /** The file of the boat with that name, even if it is damaged, or the file called so. */
  private static Optional<Path> named(String typed, Workspace workspace) {
    Path byName = workspace.boatPath(typed);
    return Files.exists(byName)
        ? Optional.of(byName)
        : kept(workspace).stream()
            .map(workspace::boatPath)
            .filter(path -> fileName(path).equalsIgnoreCase(typed.strip() + ENDING))
            .findFirst();
  }

  /** The name of the boat whose records are meant: as typed, or that of the file typed. */
  static String name(String typed) {
    Path file = CommandInput.asPath(typed);
    return Files.isRegularFile(file) ? BoatFile.read(file).name() : typed;
  }

  private static UsageError missing(ShellCommand command, List<String> kept) {
    return kept.isEmpty()
        ? UsageError.refused(
            command, "--boat BOAT is missing, and no boat is kept here yet. \"walk\" measures one.")
        : UsageError.refused(
            command,
            "--boat BOAT is missing. Kept here: "
                + kept.stream().map(PrintableText::excerpt).collect(Collectors.joining(", "))
                + ". Name one of them, or a boat file.");
  }

  private static List<String> kept(Workspace workspace) {
    return workspace.boats().stream().map(Boat::name).toList();
  }

  private static String nearest(String typed, Path file, Workspace workspace) {
    List<String> names = new ArrayList<>(kept(workspace));
    List<String> slugs =
        names.stream()
            .map(name -> InspectionOutput.recordNumber(workspace.boatPath(name)))
            .toList();
    names.addAll(slugs);
    return NearestWord.nearest(typed, names)
        .map(name -> " Did you mean " + PrintableText.excerpt(name) + "?")
        .or(
            () ->
                NearestWord.nearest(fileName(file), siblings(file))
                    .map(name -> " Did you mean " + PrintableText.excerpt(name) + " next to it?"))
        .orElse("");
  }

  private static String fileName(Path file) {
    return file.getFileName() == null ? "" : file.getFileName().toString();
  }

  /** A folder that cannot be read has nothing to offer. */
  private static List<String> siblings(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    List<String> names = new ArrayList<>();
    if (folder == null || !Files.isDirectory(folder)) {
      return names;
    }
    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, "[!.]*" + ENDING)) {
      all.forEach(found -> names.add(fileName(found)));
    } catch (IOException unreadable) {
      names.clear();
    }
    return names;
  }

  /**
   * The result of some work on a boat. Some contradictions appear only once the hull is built;
   * they, too, are reported with the name of its file.
   *
   * @throws UnusableInput when the measurements contradict each other
   */
  static <T> T consistent(Path file, Supplier<T> work) {
    try {
      return work.get();
    } catch (UnusableBoat contradiction) {
      throw new UnusableInput(file + ": " + contradiction.getMessage());
    }
  }
}
