package thwartwise.loadcase;

import java.util.List;
import thwartwise.afloat.Gravity;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.FloodPoint;
import thwartwise.hull.HullForm;
import thwartwise.rules.RuleSet;

/**
 * The rise of the water at the end of a boat that meets a current: water brought to rest there
 * rises by v²/2g (Bernoulli), over a length of the boat next to that end (judgement).
 *
 * @param height m
 * @param along the stretch of the boat, m from its aft end
 */
public record StreamHead(double height, Span along) {
  public static final StreamHead NONE = new StreamHead(0, Span.ALL);

  /** At the stern or at the bow of a boat that lies end on to the current of a rule set. */
  public static StreamHead of(RuleSet rules, HullForm form, boolean astern) {
    double speed = rules.value("current");
    double stretch = rules.value("stream-end-share") * form.length();
    Span whole = form.outside().extent(Vector3.of(1, 0, 0));
    return new StreamHead(
        speed * speed / (2 * Gravity.STANDARD),
        astern
            ? new Span(whole.from(), whole.from() + stretch)
            : new Span(whole.to() - stretch, whole.to()));
  }

  /** The edges, lowered by the rise of the water, for this direction of up. */
  List<FloodPoint> lowered(List<FloodPoint> edges, Vector3 up) {
    if (height == 0) {
      return edges;
    }
    return edges.stream().map(e -> meets(e) ? lowered(e, up) : e).toList();
  }

  public boolean meets(FloodPoint edge) {
    return along.contains(edge.at().x());
  }

  private FloodPoint lowered(FloodPoint edge, Vector3 up) {
    return new FloodPoint(edge.name(), edge.at().minus(up.times(height)));
  }
}
