package thwartwise.json;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/**
 * JSON laid out for people: what fits on a line stands on one line, so that a measured point is one
 * line and not five.
 */
public final class Layout {
  private static final int WIDTH = 96;

  private Layout() {}

  public static String of(JsonNode tree) {
    return laidOut(tree, 0, 0) + "\n";
  }

  private static String laidOut(JsonNode node, int depth, int column) {
    String line = inline(node);
    if (!node.isContainer() || node.isEmpty() || 2 * depth + column + line.length() <= WIDTH) {
      return line;
    }
    List<String> parts = new ArrayList<>();
    if (node.isArray()) {
      node.forEach(item -> parts.add(laidOut(item, depth + 1, 0)));
    } else {
      node.forEachEntry((key, value) -> parts.add(entry(key, value, depth + 1)));
    }
    String indent = "\n" + "  ".repeat(depth + 1);
    String body = indent + String.join("," + indent, parts) + "\n" + "  ".repeat(depth);
    return node.isArray() ? "[" + body + "]" : "{" + body + "}";
  }

  private static String entry(String key, JsonNode value, int depth) {
    String start = JsonText.quoted(key) + ": ";
    return start + laidOut(value, depth, start.length());
  }

  private static String inline(JsonNode node) {
    if (!node.isContainer()) {
      return JsonText.scalar(node);
    }
    if (node.isEmpty()) {
      return node.isArray() ? "[]" : "{}";
    }
    List<String> parts = new ArrayList<>();
    if (node.isArray()) {
      node.forEach(item -> parts.add(inline(item)));
      return "[" + String.join(", ", parts) + "]";
    }
    node.forEachEntry((key, value) -> parts.add(JsonText.quoted(key) + ": " + inline(value)));
    return "{ " + String.join(", ", parts) + " }";
  }
}
