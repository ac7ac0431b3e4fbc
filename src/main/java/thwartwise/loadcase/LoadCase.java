package thwartwise.loadcase;

import java.util.List;
import java.util.stream.Stream;

/**
 * A loading together with what is done to it.
 *
 * @param kind of loading
 * @param crew the people aboard, and their places
 * @param deeds what is done to it, in order; none while everybody stays as they are
 */
public record LoadCase(Kind kind, Crew crew, List<LoadCaseStep> deeds) {

  /** A loading without a name: only the boat matters. */
  public static final LoadCase UNNAMED = of(Kind.UNNAMED, new Crew.NotStated());

  /** No loading: the measurements. */
  public static final LoadCase AS_MEASURED = of(Kind.AS_MEASURED, new Crew.NotStated());

  /** The kind of loading. */
  public enum Kind {
    AS_LOADED,
    AT_LIMIT,
    AS_MEASURED,
    UNNAMED
  }

  public LoadCase {
    deeds = List.copyOf(deeds);
  }

  public static LoadCase of(Kind kind, Crew crew) {
    return new LoadCase(kind, crew, List.of());
  }

  public LoadCase with(List<LoadCaseStep> more) {
    return more.isEmpty()
        ? this
        : new LoadCase(kind, crew, Stream.concat(deeds.stream(), more.stream()).toList());
  }

  /** The loading before anything was done to it. */
  public LoadCase before() {
    return of(kind, crew);
  }
}
