package thwartwise.files.report;

import java.util.List;
import thwartwise.inspection.QuestionMargin;
import thwartwise.inspection.Recommendation;
import thwartwise.json.Fields;
import thwartwise.json.Quantity;
import thwartwise.json.Value;

/** The recommendation, read back. */
final class RecommendationFields {
  private RecommendationFields() {}

  static Recommendation read(Fields report) {
    Fields fields = report.freeObject("recommendation", ReportValues.REMEDY);
    return new Recommendation(
        count(fields, "people"),
        Figures.read(fields, "crewKg"),
        Figures.read(fields, "loadKg"),
        Figures.read(fields, "extraKg"),
        Figures.read(fields, "adultKg"),
        count(fields, "staysUpWith"),
        count(fields, "holdsUpWhenSwamped"),
        count(fields, "ifClaimedChambersProve"),
        QuestionCodec.readFactor(fields, "governedBy"),
        fields.value("nextPersonBreaks", ReportValues.REMEDY).texts(),
        seatings(fields),
        ReportValues.list(fields, "crewLimits", "crew limit").stream()
            .map(RecommendationFields::crewLimit)
            .toList(),
        ReportValues.flag(fields, "withheld"),
        fields.value("reasons", ReportValues.REMEDY).texts(),
        margins(fields),
        fields.has("heldOnTo") && ReportValues.flag(fields, "heldOnTo"));
  }

  /** Records older than the margins have none. */
  private static List<QuestionMargin> margins(Fields fields) {
    return fields.says("margins")
        ? ReportValues.list(fields, "margins", "margin").stream()
            .map(RecommendationFields::margin)
            .toList()
        : List.of();
  }

  private static QuestionMargin margin(Fields margin) {
    return new QuestionMargin(QuestionCodec.read(margin), ReportValues.margin(margin, "value"));
  }

  private static Recommendation.CrewLimit crewLimit(Fields crew) {
    return new Recommendation.CrewLimit(
        count(crew, "people"),
        Figures.read(crew, "eachUpToKg"),
        crew.has("extraKg") ? Figures.read(crew, "extraKg") : Double.NaN,
        crew.has("besidesLike")
            ? crew.value("besidesLike", ReportValues.REMEDY).texts()
            : List.of(),
        seatings(crew),
        crew.has("lighter")
            ? ReportValues.list(crew, "lighter", "seating").stream()
                .map(RecommendationFields::lighter)
                .toList()
            : List.of());
  }

  private static Recommendation.Lighter lighter(Fields seating) {
    return new Recommendation.Lighter(
        seating.value("places", ReportValues.REMEDY).texts(), Figures.read(seating, "eachUpToKg"));
  }

  private static List<List<String>> seatings(Fields fields) {
    return fields.value("excludedSeatings", ReportValues.REMEDY).list().stream()
        .map(Value::texts)
        .toList();
  }

  private static int count(Fields fields, String key) {
    return fields.whole(key, Quantity.COUNT, ReportValues.REMEDY);
  }
}
