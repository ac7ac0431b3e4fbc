package thwartwise.files.boat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Cases of boat files gone wrong: one piece of a good file replaced, and the message expected. */
public record WrongBoats(String name, String replace, String by, String says) {
  public static String goodFile() {
    return text("soup-ladle.json");
  }

  /** The good file with the piece replaced; blanks between words do not matter. */
  String json() {
    String plain = goodFile().replaceAll("\\s+", " ");
    String found = replace.replaceAll("\\s+", " ");
    if (!plain.contains(found)) {
      throw new IllegalStateException("Case " + name + " replaces what is not there: " + found);
    }
    int at = plain.indexOf(found);
    return plain.substring(0, at) + by + plain.substring(at + found.length());
  }

  static List<WrongBoats> all() {
    List<WrongBoats> cases = new ArrayList<>();
    for (String block : text("wrong-boats.txt").split("\n\n")) {
      if (block.startsWith("case ")) {
        cases.add(
            new WrongBoats(
                line(block, "case "),
                line(block, "replace "),
                line(block, "by").replaceFirst("^ ", ""),
                line(block, "says ")));
      }
    }
    return cases;
  }

  private static String line(String block, String start) {
    return block
        .lines()
        .filter(line -> line.startsWith(start))
        .map(line -> line.substring(start.length()))
        .findFirst()
        .orElse("");
  }

  public static String text(String resource) {
    try (InputStream in = WrongBoats.class.getResourceAsStream("/thwartwise/files/" + resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(resource, e);
    }
  }

  @Override
  public String toString() {
    return name;
  }
}
