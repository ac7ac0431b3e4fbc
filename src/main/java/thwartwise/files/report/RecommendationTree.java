package thwartwise.files.report;

import thwartwise.checks.Margin;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.QuestionMargin;
import thwartwise.json.Figures;
import thwartwise.json.JsonText;
import thwartwise.measure.UnitFormat;
import tools.jackson.databind.node.ObjectNode;

/** The recommendation as a tree. */
final class RecommendationTree {
  /** Said wherever a number stands. */
  static final String CAUTION =
      "A recommendation, not a capacity plate and not a builder's plate. Local rules come first.";

  private RecommendationTree() {}

  static ObjectNode of(Recommendation recommendation, UnitFormat words) {
    ObjectNode node = JsonText.object().put("people", recommendation.people());
    Figures.put(node, "crewKg", recommendation.crew());
    Figures.put(node, "loadKg", recommendation.load());
    Figures.put(node, "extraKg", recommendation.extra());
    Figures.put(node, "adultKg", recommendation.adult());
    node.put("staysUpWith", recommendation.staysUpWith())
        .put("holdsUpWhenSwamped", recommendation.holdsUpWhenSwamped())
        .put("ifClaimedChambersProve", recommendation.ifClaimedChambersProve());
    QuestionCodec.write(node, "governedBy", recommendation.governedBy());
    WordedListCodec.putRefusals(node, "nextPersonBreaks", recommendation.nextPersonBreaks(), words);
    node.set(
        "excludedSeatings", ReportTree.list(recommendation.excludedSeatings(), JsonText::texts));
    node.set(
        "crewLimits", ReportTree.list(recommendation.crewLimits(), RecommendationTree::crewLimit));
    node.put("withheld", recommendation.withheld()).put("caution", CAUTION);
    WordedListCodec.putRefusals(node, "reasons", recommendation.reasons(), words);
    node.set("margins", ReportTree.list(recommendation.margins(), RecommendationTree::margin));
    if (recommendation.heldOnTo()) {
      node.put("heldOnTo", true);
    }
    return node;
  }

  private static ObjectNode margin(QuestionMargin left) {
    Margin margin = left.margin();
    ObjectNode node = QuestionCodec.write(left.question());
    Figures.put(node, "value", margin.unit().shown(margin.value().orElse(Double.NaN)));
    Figures.put(node, "limit", margin.unit().shown(margin.limit()));
    node.put("atLeast", margin.atLeast()).put("unit", margin.unit().symbol());
    Figures.put(node, "shareOfLimit", margin.share());
    return node;
  }

  private static ObjectNode crewLimit(Recommendation.CrewLimit crew) {
    ObjectNode node = JsonText.object().put("people", crew.people());
    Figures.put(node, "eachUpToKg", crew.eachUpTo());
    // Records kept before there were such figures are written again as they were.
    if (!Double.isNaN(crew.extra())) {
      Figures.put(node, "extraKg", crew.extra());
    }
    if (!crew.besidesLike().isEmpty()) {
      node.set("besidesLike", JsonText.texts(crew.besidesLike()));
    }
    node.set("excludedSeatings", ReportTree.list(crew.excludedSeatings(), JsonText::texts));
    if (!crew.lighter().isEmpty()) {
      node.set("lighter", ReportTree.list(crew.lighter(), RecommendationTree::lighter));
    }
    return node;
  }

  private static ObjectNode lighter(Recommendation.Lighter seating) {
    ObjectNode node = JsonText.object();
    Figures.put(node, "eachUpToKg", seating.eachUpTo());
    node.set("places", JsonText.texts(seating.places()));
    return node;
  }
}
