package thwartwise.report;

import static thwartwise.report.ElectricalFigures.duration;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import thwartwise.electrics.UsableCharge;
import thwartwise.measure.Rounding;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.page.Table;
import thwartwise.passage.MotorSpeed;
import thwartwise.passage.PassagePlan;

/** The yield of the solar panel in a dull month, month by month. */
final class PanelYieldSection {
  /** A tenth of an ampere-hour, C; less would show as 0.0. */
  private static final double LEAST_SHOWN = 360;

  private final Page page;
  private final PassagePlan plan;

  private PanelYieldSection(Page page, PassagePlan plan) {
    this.page = page;
    this.plan = plan;
  }

  static void write(Page page, PassagePlan plan) {
    new PanelYieldSection(page, plan).write();
  }

  private void write() {
    if (plan.boat().electrics().panel().isEmpty()) {
      return;
    }
    page.heading("What the panel gives back in a dull month");
    if (plan.boat().electrics().latitude().isEmpty()) {
      page.paragraph(
          "Nothing counts: nobody said at which latitude the boat is kept",
          ElectricalFigures.entered("panel"));
      return;
    }
    double used = plan.usedADay();
    page.paragraph(
        used > 0
            ? "Lamps, sockets and the rest take "
                + ElectricalFigures.taken(used)
                + " a day, each for the hours stated or 8 (judgement)"
            : "No lamps or sockets are stated",
        plan.speeds().isEmpty() ? "" : "What is left drives the motor for the minutes shown");
    List<List<String>> rows = new ArrayList<>();
    for (Month month : Month.values()) {
      rows.add(month(month, used));
    }
    page.gap().table(Table.close(monthColumns(), rows));
    page.gap()
        .paragraph(
            "A day on average, lying flat, in no shade; three tenths of the sun outside the air, and"
                + " half of the label comes out of the battery again (judgement: a plain controller,"
                + " heat, dirt, the battery's own loss)",
            "A day of thick cloud gives far less",
            "No sun counts on the way itself: people and clouds stand in it");
  }

  private List<Table.Column> monthColumns() {
    List<Table.Column> columns = new ArrayList<>();
    columns.add(new Table.Column("Month", 10));
    columns.add(new Table.Column("Gives a day", 18));
    columns.add(new Table.Column("Is left", 12));
    ends().forEach(speed -> columns.add(new Table.Column("At " + RangePage.called(speed), 18)));
    return columns;
  }

  /** The fastest and the slowest setting, if there are any. */
  private List<MotorSpeed> ends() {
    List<MotorSpeed> all = plan.speeds();
    return all.size() < 3 ? all : List.of(all.get(0), all.get(all.size() - 1));
  }

  private List<String> month(Month month, double used) {
    double gives = plan.givenBack(month).orElseThrow();
    double over = gives - used < LEAST_SHOWN ? 0 : gives - used;
    double volts = plan.boat().electrics().volts();
    List<String> row = new ArrayList<>();
    row.add(Sentence.capital(month.name().toLowerCase(Locale.ROOT)));
    row.add(
        Rounding.down(gives * volts / 3600, 0) + " Wh, " + Rounding.down(gives / 3600, 1) + " Ah");
    row.add(over > 0 ? Rounding.down(over / 3600, 1) + " Ah" : "nothing");
    ends().forEach(speed -> row.add(runs(speed, over)));
    return row;
  }

  /** Running times with the same loss to the current as the whole charge has. */
  private String runs(MotorSpeed speed, double charge) {
    UsableCharge usable = plan.usable().orElseThrow();
    return charge > 0
        ? duration(speed.time() * charge / (usable.charge() * usable.fraction()))
        : "nothing";
  }
}
