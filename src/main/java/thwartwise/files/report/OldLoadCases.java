package thwartwise.files.report;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.loadcase.Crew;
import thwartwise.loadcase.LoadCase;
import thwartwise.loadcase.LoadCase.Kind;
import thwartwise.loadcase.LoadCaseStep;

/**
 * Load cases of reports of version 1, by their words: the loading, and after a semicolon what is
 * done to it. A person's name may hold a semicolon too, so the report's own two loadings are tried
 * first.
 */
final class OldLoadCases {
  private static final String DONE = "; ";
  private static final Pattern ALIKE =
      Pattern.compile("([0-9]{1,4}) of ([0-9]{1,4}) kg at (.*)", Pattern.DOTALL);
  private static final List<Ending> ENDINGS =
      List.of(
          new Ending(", all at the aft end of their places", Packing.AFT),
          new Ending(", all at the fore end of their places", Packing.FORE));

  private final List<String> loadings;

  /** The load cases of a report with these loadings. */
  OldLoadCases(String... loadings) {
    this.loadings = Arrays.stream(loadings).filter(words -> !words.isBlank()).toList();
  }

  private record Ending(String words, Packing packing) {}

  /** A loading with what is done to it. */
  LoadCase read(String words) {
    Optional<String> own =
        loadings.stream().filter(l -> words.equals(l) || words.startsWith(l + DONE)).findFirst();
    String loading = own.orElseGet(() -> words.split(DONE, 2)[0]);
    String deeds = words.equals(loading) ? "" : words.substring(loading.length() + DONE.length());
    return of(loading).with(deeds.isEmpty() ? List.of() : List.of(new LoadCaseStep.Stated(deeds)));
  }

  /** A loading alone. */
  static LoadCase of(String words) {
    return Stream.of(
            entry("as loaded", Kind.AS_LOADED),
            entry("at the limit", Kind.AT_LIMIT),
            entry("as measured", Kind.AS_MEASURED))
        .flatMap(named -> named.of(words).stream())
        .findFirst()
        .orElseGet(() -> LoadCase.of(Kind.UNNAMED, crew(words)));
  }

  private static Named entry(String name, Kind kind) {
    return new Named(name, kind);
  }

  private record Named(String name, Kind kind) {
    Optional<LoadCase> of(String words) {
      if (words.equals(name)) {
        return Optional.of(LoadCase.of(kind, new Crew.NotStated()));
      }
      return words.startsWith(name + ": ")
          ? Optional.of(LoadCase.of(kind, crew(words.substring(name.length() + 2))))
          : Optional.empty();
    }
  }

  static Crew crew(String words) {
    if (words.isEmpty()) {
      return new Crew.NotStated();
    }
    if (words.equals("nobody aboard")) {
      return new Crew.Nobody();
    }
    Matcher alike = ALIKE.matcher(words);
    return alike.matches()
        ? alike(Integer.parseInt(alike.group(1)), alike.group(2), alike.group(3))
        : new Crew.Stated(words);
  }

  private static Crew alike(int people, String each, String places) {
    Optional<Ending> ending = ENDINGS.stream().filter(e -> places.endsWith(e.words)).findFirst();
    String names =
        ending.map(e -> places.substring(0, places.length() - e.words.length())).orElse(places);
    return new Crew.Alike(
        people,
        Double.parseDouble(each),
        List.of(names.split(", ", -1)),
        ending.map(Ending::packing).orElse(Packing.SPREAD));
  }
}
