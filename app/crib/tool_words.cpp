#include "app/crib/tool_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <map>

#include "app/common/wording.h"
#include "core/base/clock.h"
#include "core/report/describe.h"
#include "core/report/record_words.h"
#include "core/units/format.h"
#include "core/units/percent.h"

namespace cw {
namespace {

struct ToolText {
  Q_DECLARE_TR_FUNCTIONS(ToolWords)
};

/// What an event of the history is called; the store's word is its key.
QString eventText(const std::string& event) {
  static const std::map<std::string, const char*> kWords{
      {"entered", QT_TRANSLATE_NOOP("ToolWords", "Entered")},
      {"changed", QT_TRANSLATE_NOOP("ToolWords", "Changed")},
      {"calibrated", QT_TRANSLATE_NOOP("ToolWords", "Calibrated")},
      {"dropped", QT_TRANSLATE_NOOP("ToolWords", "Dropped or doubted")},
      {"quarantined", QT_TRANSLATE_NOOP("ToolWords", "Put in quarantine")},
      {"released", QT_TRANSLATE_NOOP("ToolWords", "Released")},
      {"retired", QT_TRANSLATE_NOOP("ToolWords", "Retired")}};
  const auto found = kWords.find(event);
  return found == kWords.end() ? toQt(event) : ToolText::tr(found->second);
}

Facts markings(const TorqueTool& tool, std::chrono::year_month_day today) {
  Facts out;
  const auto add = [&](const QString& label, const std::string& value) {
    if (!value.empty()) out.rows.push_back({fromQt(label), value});
  };
  add(ToolText::tr("Standing"), fromQt(standingOf(tool, today)));
  for (const Scale& scale : tool.scales)
    add(ToolText::tr("Scale"),
        fromQt(ToolText::tr("%1, marked every %2")
                   .arg(toQt(rangeText(scale.low, scale.high)), toQt(text(scale.graduation)))));
  add(ToolText::tr("Deviation"), "±" + percentOf(tool.deviation));
  add(ToolText::tr("Kind"), tool.type == ToolType::Setting ? fromQt(ToolText::tr("is set, and signals"))
                                                           : fromQt(ToolText::tr("shows the torque")));
  add(ToolText::tr("ISO 6789 class"), tool.isoClass);
  add(ToolText::tr("Serial"), tool.serial);
  add(ToolText::tr("Left hand"),
      tool.leftHand ? fromQt(ToolText::tr("also calibrated anticlockwise")) : std::string());
  if (tool.cyclesDue > 0)
    add(ToolText::tr("Cycles"), fromQt(ToolText::tr("%1 of %2").arg(tool.cycles).arg(tool.cyclesDue)));
  return out;
}

Table calibrations(const TorqueTool& tool) {
  Table out{{{fromQt(ToolText::tr("Date")), 16},
             {fromQt(ToolText::tr("Due")), 16},
             {fromQt(ToolText::tr("Certificate")), 30},
             {fromQt(ToolText::tr("Uncertainty, %")), 18, true}},
            {}};
  for (auto each = tool.calibrations.rbegin(); each != tool.calibrations.rend(); ++each)
    out.rows.push_back({{isoDate(each->date)},
                        {isoDate(each->due)},
                        {each->certificate},
                        {significant(each->uncertainty * 100, 3)}});
  return out;
}

/// The points of the last calibration, as found and as left.
Table points(const Calibration& last) {
  Table out{{{fromQt(ToolText::tr("Setting")), 1, true},
             {fromQt(ToolText::tr("As found")), 1, true},
             {fromQt(ToolText::tr("As left")), 1, true}},
            {}};
  for (const CalibrationPoint& point : last.points)
    out.rows.push_back({{text(point.setting)}, {text(point.found)}, {text(point.left)}});
  return out;
}

Table events(const std::vector<ToolEvent>& history) {
  Table out{{{fromQt(ToolText::tr("When")), 28},
             {fromQt(ToolText::tr("What")), 24},
             {fromQt(ToolText::tr("Who")), 14},
             {fromQt(ToolText::tr("Remark")), 34}},
            {}};
  for (auto each = history.rbegin(); each != history.rend(); ++each)
    out.rows.push_back(
        {{timeText(each->deed.at)}, {fromQt(eventText(each->event))}, {each->deed.by}, {each->deed.remark}});
  return out;
}

}  // namespace

QString rangeOf(const TorqueTool& tool) {
  QStringList out;
  for (const Scale& scale : tool.scales) out << toQt(rangeText(scale.low, scale.high));
  return out.join(QLatin1Char('\n'));
}

QString standingOf(const TorqueTool& tool, std::chrono::year_month_day today) {
  const auto fit = checkInService(tool, today);
  return fit ? ToolText::tr("in date") : worded(fit.error().problem);
}

Document toolDocument(const TorqueTool& tool, const std::vector<ToolEvent>& history,
                      std::chrono::year_month_day today) {
  Document out;
  out.title = tool.id;
  out.subtitle = tool.kind;
  out.sections.push_back({"", {markings(tool, today)}, false});
  Section calibration{fromQt(ToolText::tr("Calibrations")), {}, false};
  if (tool.calibrations.empty())
    calibration.blocks.push_back(
        Paragraph{fromQt(ToolText::tr("It was never calibrated, so no final pass may use it."))});
  else
    calibration.blocks.push_back(calibrations(tool));
  if (const Calibration* last = tool.lastCalibration(); last != nullptr && !last->points.empty())
    calibration.blocks.push_back(points(*last));
  out.sections.push_back(std::move(calibration));
  out.sections.push_back({fromQt(ToolText::tr("History")), {events(history)}, false});
  return out;
}

}  // namespace cw
