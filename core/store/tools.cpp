#include "core/store/tools.h"

#include "core/base/found.h"
#include "core/shop/shop_json.h"
#include "core/store/cached.h"
#include "core/store/database.h"
#include "core/store/people.h"
#include "core/store/register_pages.h"

namespace cw {
Tools::Tools(Database& database, People& people)
    : m_database(database), m_people(people), m_cache(std::make_unique<Cached<TorqueTool>>()) {}
Tools::~Tools() = default;

Result<std::vector<TorqueTool>> Tools::read() {
  CW_TRY(pages, collect(m_database.connection(), "SELECT id, page FROM tool ORDER BY id", {},
                        [](const SqlRows& row) { return std::pair(row.text(0), row.text(1)); }));
  std::vector<TorqueTool> out;
  for (const auto& [id, page] : pages) {
    CW_TRY(tool, toolOfPage(id, page));
    out.push_back(std::move(tool));
  }
  return out;
}

Result<std::span<const TorqueTool>> Tools::all() {
  CW_TRY(tools, m_cache->get(m_database.connection(), [&] { return read(); }));
  return std::span<const TorqueTool>(*tools);
}

Result<TorqueTool> Tools::find(const std::string& id) {
  CW_TRY(tools, all());
  for (const TorqueTool& tool : tools)
    if (tool.id == id) return tool;
  return fail(ErrorCode::NotFound, "tool", id, {"there is no tool “%1” in the crib", {shown(id)}},
              "write the id marked on the tool");
}

Result<std::vector<ToolEvent>> Tools::history(const std::string& id) {
  struct Logged {
    std::string event, by, at, remark, page;
  };
  CW_TRY(lines, collect(m_database.connection(),
                        "SELECT event, by, at, remark, page FROM tool_history WHERE tool = ? ORDER BY number",
                        {id}, [](const SqlRows& row) {
                          return Logged{row.text(0), row.text(1), row.text(2), row.text(3), row.text(4)};
                        }));
  std::vector<ToolEvent> out;
  for (const Logged& line : lines) {
    CW_TRY(at, parseRfc3339(line.at));
    CW_TRY(tool, toolOfPage(id, line.page));
    out.push_back({line.event, {line.by, at, line.remark}, std::move(tool)});
  }
  return out;
}

Result<void> Tools::write(const TorqueTool& tool, std::string_view event, const Deed& deed) {
  CW_CHECK(check(tool));
  Connection& connection = m_database.connection();
  const std::string page = canonical(toolToJson(tool));
  CW_TRY(transaction, Transaction::begin(connection));
  CW_CHECK(connection.run(
      "INSERT INTO tool(id, page) VALUES (?, ?) ON CONFLICT(id) DO UPDATE SET page = excluded.page",
      {tool.id, page}));
  CW_CHECK(
      connection.run("INSERT INTO tool_history(tool, at, by, event, remark, page) VALUES (?, ?, ?, ?, ?, ?)",
                     {tool.id, rfc3339(deed.at), deed.by, event, deed.remark, page}));
  m_cache->forget();
  return transaction.commit();
}

Result<void> Tools::add(const TorqueTool& tool, const Deed& deed) {
  CW_TRY(known, ifFound(find(tool.id)));
  if (known)
    return fail(ErrorCode::AlreadyDone, "tool", tool.id, {"tool %1 is in the crib already", {tool.id}},
                "change it, or mark the tool otherwise");
  return write(tool, "entered", deed);
}

Result<void> Tools::change(const TorqueTool& tool, const Deed& deed) {
  CW_CHECK(find(tool.id));
  return write(tool, "changed", deed);
}

Result<void> Tools::calibrate(const std::string& id, const Calibration& calibration, const Deed& deed) {
  CW_TRY(tool, find(id));
  const Calibration* last = tool.lastCalibration();
  if (last != nullptr && std::chrono::sys_days{calibration.date} < std::chrono::sys_days{last->date})
    return fail(ErrorCode::InvalidInput, id + ".date", isoDate(calibration.date),
                {"%1 is before the last calibration, %2", {isoDate(calibration.date), isoDate(last->date)}},
                "enter calibrations in their order");
  if (std::chrono::sys_days{calibration.due} < std::chrono::sys_days{calibration.date})
    return fail(ErrorCode::InvalidInput, id + ".due", isoDate(calibration.due),
                {"it would be due on %1, before it was made", {isoDate(calibration.due)}},
                "write the date until which it holds");
  tool.calibrations.push_back(calibration);
  tool.dueNow.reset();
  tool.cycles = 0;
  return write(tool, "calibrated", deed);
}

Result<void> Tools::drop(const std::string& id, const Deed& deed) {
  CW_TRY(tool, find(id));
  tool.dueNow = localDate(deed.at);
  return write(tool, "dropped", deed);
}

Result<void> Tools::quarantine(const std::string& id, const Deed& deed) {
  CW_TRY(tool, find(id));
  tool.status = ToolStatus::Quarantined;
  return write(tool, "quarantined", deed);
}

Result<void> Tools::release(const std::string& id, const Deed& deed) {
  CW_CHECK(m_people.require(deed.by, {Role::ShopLead}));
  CW_TRY(tool, find(id));
  if (tool.status != ToolStatus::Quarantined)
    return fail(ErrorCode::OutOfTurn, "tool", id, {"tool %1 is not in quarantine", {shown(id)}},
                "release one that is");
  tool.status = ToolStatus::InUse;
  return write(tool, "released", deed);
}

Result<void> Tools::retire(const std::string& id, const Deed& deed) {
  CW_TRY(tool, find(id));
  tool.status = ToolStatus::Retired;
  return write(tool, "retired", deed);
}

}  // namespace cw
