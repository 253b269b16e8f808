#include "core/report/csv.h"

#include "core/base/csv.h"
#include "core/units/format.h"

namespace cw {
namespace {

const std::vector<std::string> kHeader{
    "job",   "work_order", "machine",  "serial",       "joint",     "position", "order",
    "pass",  "low",        "target",   "high",         "unit",      "setting",  "tool_unit",
    "known", "reading",    "within",   "tool",         "person",    "time",     "done",
    "late",  "entry",      "corrects", "corrected_by", "overtaken", "hash"};

/// Free text, safe to open in a spreadsheet.
std::string guarded(const std::string& text) {
  const bool risky =
      !text.empty() && std::string_view("=+-@\t\r").find(text.front()) != std::string_view::npos;
  return risky ? "'" + text : text;
}

/// The stated digits, or the value in `unit` where the sheet mixes units.
std::string digitsIn(const StatedTorque& torque, const TorqueUnit* unit) {
  if (torque.empty() || torque.unit == unit) return torque.digits;
  return significant(in(*unit, torque.value()), 6);
}

std::string numberOrNone(const std::optional<int>& number) {
  return number ? std::to_string(*number) : std::string();
}

std::string yesOrNo(bool is) {
  return is ? "yes" : "no";
}

/// RFC 4180 ends lines with CR LF.
std::string line(const std::vector<std::string>& cells) {
  std::string out = csvLine(cells);
  out.insert(out.size() - 1, "\r");
  return out;
}

std::vector<std::string> cellsOf(const RecordContent& content, const JointContent& joint,
                                 const TighteningLine& row) {
  const TorqueUnit* unit = row.target.unit;
  return {content.jobId,
          guarded(content.workOrder),
          guarded(content.machine),
          guarded(content.serial),
          guarded(joint.name),
          guarded(row.position),
          std::to_string(row.order),
          std::to_string(row.pass),
          digitsIn(row.low, unit),
          row.target.digits,
          digitsIn(row.high, unit),
          std::string(unit->code),
          row.setting.digits,
          std::string(row.setting.unit->code),
          std::string(wordOf(row.known)),
          row.reading ? row.reading->digits : std::string(),
          yesOrNo(row.within),
          guarded(row.tool),
          guarded(row.person),
          rfc3339(row.time),
          row.done ? rfc3339(*row.done) : std::string(),
          yesOrNo(row.done.has_value()),
          std::to_string(row.entry),
          numberOrNone(row.corrects),
          numberOrNone(row.correctedBy),
          yesOrNo(row.overtaken),
          row.hash};
}

}  // namespace

std::string csvOfTightenings(const RecordContent& content) {
  std::string out = line(kHeader);
  for (const JointContent& joint : content.joints)
    for (const TighteningLine& row : joint.lines) out += line(cellsOf(content, joint, row));
  return out;
}

}  // namespace cw
