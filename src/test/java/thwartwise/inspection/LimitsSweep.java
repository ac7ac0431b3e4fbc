package thwartwise.inspection;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.crew.Recommendation;
import thwartwise.sampleboats.OrdinaryBoats;

/**
 * Holds the properties of {@link LimitsProperties} against all forty ordinary boats and prints
 * where they do not hold. Run by hand; an hour or more.
 *
 * <p>Arguments: the letters of what is held (h for hair's breadths, l for less known, p for people
 * and w for weights below the limit), and the numbers of the boats, all of them where none is
 * given.
 */
final class LimitsSweep {
  private LimitsSweep() {}

  public static void main(String[] args) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    List<Boat> forty = OrdinaryBoats.forty();
    String what = args.length > 0 ? args[0] : "hlpw";
    List<Boat> boats =
        args.length > 1
            ? Arrays.stream(args).skip(1).map(Integer::valueOf).map(forty::get).toList()
            : forty;
    for (Boat boat : boats) {
      Recommendation r = LimitsProperties.of(boat);
      out.println(boat.name() + ": " + r.people() + " adults, load " + r.load());
      if (what.contains("h")) {
        print(out, "hair's breadths", LimitsProperties.hairsBreadths(boat, r));
      }
      if (what.contains("l")) {
        print(out, "less known", LimitsProperties.lessKnown(boat, r));
      }
      if (what.contains("p")) {
        print(out, "people", LimitsProperties.peopleBelowTheLimit(boat, r, 1));
      }
      if (what.contains("w")) {
        print(out, "weights", LimitsProperties.weightsBelowTheLimit(boat, r));
      }
    }
  }

  private static void print(PrintStream out, String what, List<String> wrong) {
    out.println("  " + what + ": " + (wrong.isEmpty() ? "hold" : wrong.size() + " do not"));
    wrong.forEach(w -> out.println("    " + w));
  }
}
