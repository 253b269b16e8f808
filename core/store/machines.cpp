#include "core/store/machines.h"

#include "core/base/found.h"
#include "core/store/connection.h"
#include "core/store/database.h"

namespace cw {
namespace {

Machine machineOf(const SqlRows& row) {
  return {row.text(0), row.text(1), row.text(2), row.text(3)};
}

}  // namespace

Result<std::vector<Machine>> Machines::all() {
  return collect(m_database.connection(), "SELECT id, model, serial, hours FROM machine ORDER BY id", {},
                 machineOf);
}

Result<Machine> Machines::find(const std::string& id) {
  CW_TRY(machine, first(m_database.connection(), "SELECT id, model, serial, hours FROM machine WHERE id = ?",
                        {id}, machineOf));
  if (machine) return *machine;
  return fail(ErrorCode::NotFound, "machine", id, {"there is no machine “%1”", {shown(id)}},
              "write the id of a machine, or enter it first");
}

Result<void> Machines::add(const Machine& machine) {
  if (machine.id.find_first_not_of(' ') == std::string::npos)
    return fail(ErrorCode::InvalidInput, "machine", "", "the machine has no id",
                "write how the shop calls it");
  CW_TRY(known, ifFound(find(machine.id)));
  if (known)
    return fail(ErrorCode::AlreadyDone, "machine", machine.id,
                {"machine %1 is entered already", {machine.id}}, "change it, or choose another id");
  return m_database.connection().run("INSERT INTO machine(id, model, serial, hours) VALUES (?, ?, ?, ?)",
                                     {machine.id, machine.model, machine.serial, machine.hours});
}

Result<void> Machines::change(const Machine& machine) {
  CW_CHECK(find(machine.id));
  return m_database.connection().run("UPDATE machine SET model = ?, serial = ?, hours = ? WHERE id = ?",
                                     {machine.model, machine.serial, machine.hours, machine.id});
}

}  // namespace cw
