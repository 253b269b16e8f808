#pragma once
#include <string>

#include "app/command_line/command_line.h"
#include "core/base/finding.h"
#include "core/fastener/thread.h"
#include "core/joint/working.h"
#include "core/units/stated.h"

namespace CLI {
class App;
}

namespace cw {

/// "22.1 ft·lbf = 30 N·m = 266 in·lbf": in `first`, then in what is left of the shop's three units.
std::string inShopUnits(Torque torque, const TorqueUnit& first);

/// The same for a stated torque, with its digits to the letter.
std::string inShopUnits(const StatedTorque& torque);

/// "16.4 kN = 3690 lbf".
std::string inShopUnits(Force load);

/// The unit a thread's torque is told in where nobody states one: ft·lbf for inch threads, else N·m.
const TorqueUnit& usualUnit(const Thread& thread);

Json toJson(const Working& working);
Json toJson(const Findings& findings);

/// Sets `working` in the JSON. Cautions always stand among the lines; the rest of the working if it is to.
void addWorking(Reply& reply, const Working& working, bool withLines);

/// Adds --working to a command: show how the result came about.
void addWorkingFlag(CLI::App& app, bool& into);

/// One line a finding, and whether the reply is yes.
void addFindings(Reply& reply, const Findings& findings);

}  // namespace cw
